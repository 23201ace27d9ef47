import { boxOf, middle } from '../geometry/box'
import { offset, quarterTurn, shift, type Motion } from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { PartId } from '../model/ids'
import { kindOf } from '../parts/index'
import type { RackRow } from '../parts/rack-row/schema'
import { onTick } from '../units/length'
import { nameAfter, nextId } from './names'
import { MOST_PARTS, partSchema, type Layout, type Part } from './schema'
import { withTowerToggled } from './takenOut'

/**
 * Edits of parts: each takes a layout and gives a layout that shares every object it did not touch. Nobody writes an
 * undo; history.ts keeps the difference. An edit that would leave the schema's bounds leaves that part as it was.
 */

/** A part as a file would give it back: on the tick, keys in order. The part as it was where the schema refuses. */
const settled = <P extends Part>(changed: P, before: P): Part => {
  const checked = partSchema.safeParse(changed)
  return checked.success ? checked.data : before
}

const withParts = (layout: Layout, parts: Part[]): Layout => ({ ...layout, parts })

/** The layout with some parts changed; the very same layout where none is. */
const withEach = (layout: Layout, ids: readonly PartId[], change: (part: Part) => Part): Layout => {
  const chosen = new Set(ids)
  const parts = layout.parts.map((part) => (chosen.has(part.id) ? change(part) : part))
  return parts.every((part, index) => part === layout.parts[index]) ? layout : withParts(layout, parts)
}

/** Changes what is not locked in place. */
const withEachLoose = (layout: Layout, ids: readonly PartId[], change: (part: Part) => Part): Layout =>
  withEach(layout, ids, (part) => (part.locked ? part : settled(change(part), part)))

/** Adds parts at the end; the same layout where they are more than a file holds. Throws where an id is taken: ids come from `nextId`. */
export const addParts = (layout: Layout, added: readonly Part[]): Layout => {
  const parts = [...layout.parts, ...added.map((part) => partSchema.parse(part))]
  const ids = new Set(parts.map(({ id }) => id))
  if (ids.size < parts.length)
    throw new RangeError(`${parts.length - ids.size} of ${added.length} new parts bring an id that is taken.`)
  return added.length === 0 || parts.length > MOST_PARTS ? layout : withParts(layout, parts)
}

/** Takes loose parts out, and with them the acceptance of findings about them: an id may come again for another part. */
export const removeParts = (layout: Layout, ids: readonly PartId[]): Layout => {
  const loose = layout.parts.filter(({ id, locked }) => !locked && ids.includes(id))
  const gone = new Set(loose.map(({ id }) => id))
  const parts = layout.parts.filter(({ id }) => !gone.has(id))
  if (parts.length === layout.parts.length) return layout
  const { accepted } = layout.settings
  const kept = accepted.filter(({ key }) => !key.split(' ').some((word) => gone.has(word)))
  const settings = kept.length === accepted.length ? layout.settings : { ...layout.settings, accepted: kept }
  return { ...layout, parts, settings }
}

/** Puts a changed part in the place of the part with its id. */
export const replacePart = (layout: Layout, changed: Part): Layout =>
  withEach(layout, [changed.id], (part) => (part === changed ? part : settled(changed, part)))

const moved = (part: Part, motion: Motion): Part => kindOf(part).move(part, motion)

export const movePartsBy = (layout: Layout, ids: readonly PartId[], dxMm: number, dyMm: number): Layout => {
  const motion = shift(onTick(dxMm), onTick(dyMm))
  if (motion.dxMm === 0 && motion.dyMm === 0) return layout
  return withEachLoose(layout, ids, (part) => moved(part, motion))
}

/** Points that stand for the extent of a part: what can be dragged, or else its own place. */
const extentOf = (part: Part): readonly Point[] => {
  const handles = kindOf(part).handles(part)
  if (handles.length > 0) return handles.map(({ at }) => at)
  return 'points' in part ? part.points : [part.at]
}

/** Middle of the loose ones among these parts, on the tick, so that turning keeps every part on it. */
const commonMiddle = (layout: Layout, ids: readonly PartId[]): Point => {
  const loose = layout.parts.filter(({ id, locked }) => ids.includes(id) && !locked)
  const { x, y } = middle(boxOf(loose.flatMap(extentOf)))
  return { x: onTick(x), y: onTick(y) }
}

/** Turns parts a quarter anticlockwise, or several, about their common middle. */
export const turnParts = (layout: Layout, ids: readonly PartId[], quarterTurns: 1 | 2 | 3 = 1): Layout => {
  const motion = quarterTurn(commonMiddle(layout, ids), quarterTurns)
  return withEachLoose(layout, ids, (part) => moved(part, motion))
}

/** Mirrors parts about their common middle: `x` swaps east and west, `y` north and south. */
export const mirrorParts = (layout: Layout, ids: readonly PartId[], axis: 'x' | 'y'): Layout => {
  const mirror = { axis, atMm: commonMiddle(layout, ids)[axis] }
  return withEachLoose(layout, ids, (part) => kindOf(part).mirror(part, mirror))
}

const withCopy = (layout: Layout, part: Part, dxMm: number, dyMm: number): Layout => {
  const copy = { ...part, id: nextId(layout, part.kind), name: nameAfter(layout, part), locked: false }
  return addParts(layout, [moved(copy, shift(onTick(dxMm), onTick(dyMm)))])
}

/** Lays `times` further sets of the same parts, each a step on from the last, with ids and names of their own. */
export const repeatParts = (
  layout: Layout,
  ids: readonly PartId[],
  times: number,
  dxMm: number,
  dyMm: number,
): Layout => {
  const originals = layout.parts.filter(({ id }) => ids.includes(id))
  let repeated = layout
  for (let set = 1; set <= times; set += 1)
    for (const part of originals) repeated = withCopy(repeated, part, dxMm * set, dyMm * set)
  return repeated
}

export const copyParts = (layout: Layout, ids: readonly PartId[], dxMm: number, dyMm: number): Layout =>
  repeatParts(layout, ids, 1, dxMm, dyMm)

const withRow = (layout: Layout, id: PartId, change: (row: RackRow) => RackRow): Layout =>
  withEach(layout, [id], (part) => {
    if (part.kind !== 'rack-row') return part
    const row = change(part)
    return row === part ? part : settled(row, part)
  })

/** Takes one tower of a row out, or puts it back; station and line count from 1, from the row's start and its left. */
export const toggleTower = (layout: Layout, id: PartId, station: number, line: number): Layout =>
  withRow(layout, id, (row) => withTowerToggled(row, station, line))

const extended = (row: RackRow, racks: number, end: 'start' | 'end'): RackRow => {
  const kind = kindOf(row)
  const handle = kind.handles(row).find((h) => h.id === end)
  const outMm = row.rackLengthMm * (end === 'end' ? racks : -racks)
  return handle ? kind.drag(row, end, offset(handle.at, row.heading, outMm, 0)) : row
}

/** Chains racks on to one end of a row, or takes them away where `racks` is negative, as dragging that end would. */
export const extendRow = (layout: Layout, id: PartId, racks: number, end: 'start' | 'end' = 'end'): Layout =>
  withRow(layout, id, (row) => (row.locked ? row : extended(row, racks, end)))
