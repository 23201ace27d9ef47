import { joined } from '../geometry/box'
import { copyParts, mirrorParts, movePartsBy, removeParts, replacePart, turnParts } from '../layout/edits'
import type { Layout } from '../layout/schema'
import type { PartId } from '../model/ids'
import type { Planner } from '../store/planner'
import { panned, zoomedAt } from '../store/view'
import { writerFor } from '../units/writer'
import type { KeyDeed } from './keys'
import { namesOf } from './partNames'
import { movedWords } from './spoken'
import { standBoxOf } from './standing'

const lockedAs = (layout: Layout, ids: readonly PartId[], locked: boolean): Layout =>
  layout.parts
    .filter(({ id }) => ids.includes(id))
    .reduce((changed, part) => replacePart(changed, { ...part, locked }), layout)

/** How far east a copy is laid: just past the original, leaf to leaf. */
const copyShift = (planner: Planner, ids: readonly PartId[]): number => {
  const { bay } = planner.store.getState().evaluation
  const boxes = ids.flatMap((id) => {
    const built = bay.builtOf.get(id)
    return (built && standBoxOf(built, null)) ?? []
  })
  if (boxes.length === 0) return 0
  const { x0, x1 } = boxes.reduce(joined)
  return x1 - x0
}

const copy = (planner: Planner, ids: readonly PartId[]): void => {
  const { layout } = planner.store.getState()
  const byMm = copyShift(planner, ids)
  const copied = copyParts(layout, ids, byMm, 0)
  const added = copied.parts.slice(layout.parts.length).map(({ id }) => id)
  planner.commit(`Copy ${namesOf(layout, ids)}`, (before) => copyParts(before, ids, byMm, 0), added)
}

const nudge = (planner: Planner, ids: readonly PartId[], dxMm: number, dyMm: number): string => {
  const { layout, units } = planner.store.getState()
  planner.commit(`Move ${namesOf(layout, ids)}`, (before) => movePartsBy(before, ids, dxMm, dyMm))
  const after = planner.store.getState()
  if (after.layout === layout) return `${namesOf(layout, ids)} cannot move`
  return movedWords(after.evaluation, ids, dxMm, dyMm, writerFor(units))
}

/** The part after or before the one that is selected, in the order of the layout, round and round. */
const step = (planner: Planner, by: 1 | -1): string => {
  const { layout, selection } = planner.store.getState()
  const count = layout.parts.length
  const now = layout.parts.findIndex(({ id }) => id === selection.at(-1))
  const start = now < 0 && by < 0 ? 0 : now
  const part = layout.parts[(start + by + count) % count]
  if (!part) return ''
  planner.select([part.id])
  return namesOf(layout, [part.id])
}

const toggleLock = (planner: Planner, ids: readonly PartId[]): void => {
  const { layout } = planner.store.getState()
  const locked = !layout.parts.every((part) => part.locked || !ids.includes(part.id))
  planner.commit(`${locked ? 'Lock' : 'Unlock'} ${namesOf(layout, ids)}`, (before) =>
    lockedAs(before, ids, locked),
  )
}

const zoom = (planner: Planner, factor: number): void => {
  const { view, size } = planner.store.getState()
  planner.set({ view: zoomedAt(view, { x: size.width / 2, y: size.height / 2 }, factor) })
}

/** Deeds on what is selected; each says what was done. */
const onSelection = (planner: Planner, deed: KeyDeed): string | undefined => {
  const { layout, selection: ids } = planner.store.getState()
  if (ids.length === 0) return undefined
  const names = namesOf(layout, ids)
  switch (deed.does) {
    case 'nudge':
      return nudge(planner, ids, deed.dxMm, deed.dyMm)
    case 'turn':
      planner.commit(`Turn ${names}`, (before) => turnParts(before, ids))
      return `${names} turned a quarter`
    case 'mirror':
      planner.commit(`Mirror ${names}`, (before) => mirrorParts(before, ids, deed.axis))
      return `${names} mirrored`
    case 'copy':
      copy(planner, ids)
      return `${names} copied`
    case 'remove':
      planner.commit(`Take out ${names}`, (before) => removeParts(before, ids), [])
      return `${names} taken out`
    case 'lock':
      toggleLock(planner, ids)
      return `${names} locked or unlocked`
    default:
      return undefined
  }
}

/** Does what a key asks of the planner, and gives the words for a screen reader; undefined where the key did nothing. */
export const perform = (planner: Planner, deed: KeyDeed): string | undefined => {
  const { layout, view } = planner.store.getState()
  switch (deed.does) {
    case 'pan':
      planner.set({ view: panned(view, deed.dxPx, deed.dyPx) })
      return ''
    case 'zoom':
      zoom(planner, deed.factor)
      return ''
    case 'fit':
      planner.fit()
      return 'The whole house is shown'
    case 'tool':
      planner.set({ tool: deed.tool, placing: undefined })
      return ''
    case 'all':
      planner.select(layout.parts.map(({ id }) => id))
      return `${layout.parts.length} parts selected`
    case 'next':
      return step(planner, 1)
    case 'previous':
      return step(planner, -1)
    case 'cancel':
      planner.select([])
      return ''
    case 'drop':
      return undefined
    default:
      return onSelection(planner, deed)
  }
}
