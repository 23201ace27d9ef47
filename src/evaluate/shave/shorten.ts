import type { Layout, Part } from '../../layout/schema'
import { setFields, type FieldChanges } from '../../layout/setFields'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { inches, toTicks, fromTicks, type Units } from '../../units/length'
import { derive } from '../1-derive'
import { offTicks, type NearMiss } from './nearMisses'

/** A field set so that all pieces of a near miss are short enough, in the bay with it set. */
export interface Shortened {
  readonly changes: readonly FieldChanges[]
  readonly layout: Layout
}

/** Why a field does not make them short enough; a sentence where the schema refuses what it would take. */
export interface NotShortened {
  readonly sentence: string | undefined
}

/** A typed length ends on a step that the reader can type again: 1/64 in, or 1/10 mm. */
const stepTicks = (units: Units): number => toTicks(units === 'metric' ? 0.1 : inches(1 / 64))

/** The next step beyond a value, away from where it started. */
const awayTo = (ticks: number, sign: number, step: number): number =>
  sign < 0 ? Math.floor(ticks / step) * step : Math.ceil(ticks / step) * step

/** Where the pieces in question stand among the sticks of each part. */
type Places = ReadonlyMap<PartId, { readonly count: number; readonly at: readonly number[] }>

const builtOf = (layout: Layout, built: readonly Built[], id: PartId): Built | undefined =>
  built[layout.parts.findIndex((part) => part.id === id)]

const placesOf = (layout: Layout, { members }: NearMiss): Places => {
  const { built } = derive(layout)
  return new Map(
    members.parts.map((id) => {
      const sticks = builtOf(layout, built, id)?.sticks ?? []
      const at = sticks.flatMap(({ stock, mark, lengthMm }, index) =>
        stock === members.stock && members.marks.includes(mark) && toTicks(lengthMm) === members.lengthTicks
          ? [index]
          : [],
      )
      return [id, { count: sticks.length, at }]
    }),
  )
}

/** The longest of the pieces in question, ticks; undefined where the parts are no longer made of the same sticks. */
const longestNow = (layout: Layout, places: Places): number | undefined => {
  const { built } = derive(layout)
  let longest = 0
  for (const [id, { count, at }] of places) {
    const sticks = builtOf(layout, built, id)?.sticks ?? []
    if (sticks.length !== count) return undefined
    for (const index of at) longest = Math.max(longest, toTicks(sticks[index]?.lengthMm ?? Infinity))
  }
  return longest
}

const numberIn = (part: Part, field: string): number | undefined => {
  const value: unknown = Reflect.get(part, field)
  return typeof value === 'number' ? value : undefined
}

/** The changes that move a field of all the parts by so many ticks, to a step; undefined where one of them holds no number. */
const changesBy = (
  layout: Layout,
  { members }: NearMiss,
  field: string,
  byTicks: number,
): FieldChanges[] | undefined => {
  const step = stepTicks(layout.settings.units)
  const changes = members.parts.flatMap((id): FieldChanges[] => {
    const part = layout.parts.find((each) => each.id === id)
    const now = part && numberIn(part, field)
    if (now === undefined) return []
    const ticks = awayTo(toTicks(now) + byTicks, Math.sign(byTicks), step)
    return [{ part: id, values: { [field]: fromTicks(ticks) } }]
  })
  return changes.length === members.parts.length ? changes : undefined
}

/** Probes along one way; a linear field is there at the second. */
const MOST_PROBES = 8

/** No probe goes this many times as far as the last. */
const FURTHEST = 4

/** How far the next probe goes: in proportion to what the last took off, and one step further at least. */
const nextProbe = (movedTicks: number, taken: number, off: number, step: number): number => {
  const times = taken > 0 ? Math.min(FURTHEST, off / taken) : 2
  const further = Math.abs(movedTicks) + step
  return Math.sign(movedTicks) * Math.max(further, Math.round(Math.abs(movedTicks) * times))
}

/** How far a change moved the field of its first part, ticks. */
const movedBy = (layout: Layout, [change]: readonly FieldChanges[], field: string): number => {
  const part = layout.parts.find(({ id }) => id === change?.part)
  return toTicks(Number(change?.values[field])) - toTicks((part && numberIn(part, field)) ?? 0)
}

/**
 * Moves a field one way until the pieces are short enough: from a first small step on in proportion to what that step took off, as
 * is exact where the length follows the field; rounding to halves and sixteenths is met by going on.
 */
function* walk(
  layout: Layout,
  near: NearMiss,
  field: string,
  sign: 1 | -1,
): Generator<undefined, Shortened | NotShortened> {
  const places = placesOf(layout, near)
  const off = offTicks(near)
  const step = stepTicks(layout.settings.units)
  let by = sign * Math.max(1, Math.round(off / FURTHEST))
  for (let probe = 0; probe < MOST_PROBES; probe += 1) {
    yield
    const changes = changesBy(layout, near, field, by)
    if (!changes) return { sentence: undefined }
    const edited = setFields(layout, changes)
    if (!edited.ok) return { sentence: edited.sentence }
    const longest = longestNow(edited.layout, places)
    if (longest === undefined || longest > near.members.lengthTicks) return { sentence: undefined }
    if (longest <= near.targetTicks) return { changes, layout: edited.layout }
    by = nextProbe(movedBy(layout, changes, field), near.members.lengthTicks - longest, off, step)
  }
  return { sentence: undefined }
}

/** Sets a field of all the parts of a near miss so that their pieces are just short enough, or tells why that can't be. */
export function* shorten(
  layout: Layout,
  near: NearMiss,
  field: string,
): Generator<undefined, Shortened | NotShortened> {
  const down = yield* walk(layout, near, field, -1)
  if ('layout' in down) return down
  const up = yield* walk(layout, near, field, 1)
  return 'layout' in up ? up : { sentence: down.sentence ?? up.sentence }
}
