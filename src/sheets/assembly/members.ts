import type { Place } from '../../geometry/point'
import type { Built, CutRule, Stick } from '../../model/built'
import { toTicks } from '../../units/length'
import type { RowAxes, RowPlace } from '../rowAxes'

/** A stick where it stands: u from a rack's high line, or from the row's. */
export interface Member {
  readonly stick: Stick
  readonly from: RowPlace
  readonly to: RowPlace
}

/** How often each counted thing fixes or ends members of one mark: `SB` -> `screw` -> 12. */
export type Fixings = ReadonlyMap<string, ReadonlyMap<string, number>>

/** What is built of the same members with the same fixings, whichever row it stands in. */
export interface Assembled {
  readonly members: readonly Member[]
  readonly fixings: Fixings
}

export const memberOf = (stick: Stick, { placeOf }: RowAxes, fromU: number): Member => {
  const shifted = (at: Place): RowPlace => {
    const { u, v, z } = placeOf(at)
    return { u: u - fromU, v, z }
  }
  return { stick, from: shifted(stick.from), to: shifted(stick.to) }
}

/** Runs along the row, whether level or as the gutters fall. */
const isAlong = ({ from, to }: Stick, { placeOf }: RowAxes): boolean => {
  const [a, b] = [placeOf(from), placeOf(to)]
  return Math.abs(b.u - a.u) > Math.abs(b.v - a.v)
}

/**
 * What lies on the floor along a whole row: its pieces end where boards end, not where racks do. Gutters are hung by another
 * crew, from a card of their own, and are of neither.
 */
export const belongsTo = (stick: Stick, axes: RowAxes): 'rack' | 'base' | 'gutters' => {
  if (stick.mark === 'GT') return 'gutters'
  if (stick.mark === 'SP' || stick.mark === 'GB') return 'base'
  return stick.mark === 'BR' && isAlong(stick, axes) ? 'base' : 'rack'
}

/** A tower is no fixing, nor is anything that hangs, drains or flows. */
const FIXINGS = /^(?:screw|sleeve-screw|end-cap|bar-stop|rail-stop|rail-clamp|foot-plate|ground-anchor)/

const onFloor = ({ x, y }: Place): string => `${x} ${y}`

/** Which stick something is fixed to: it stands at one of its ends, a foot plate or an anchor at the foot of its riser. */
const stickFinder = (sticks: readonly Stick[]) => {
  const ends = new Map<Place, Stick>()
  const feet = new Map<string, Stick>()
  for (const stick of sticks) {
    ends.set(stick.from, stick)
    ends.set(stick.to, stick)
    if (stick.holes.length > 0) feet.set(onFloor(stick.from), stick)
  }
  return (item: string, at: Place): Stick | undefined =>
    item === 'foot-plate' || item === 'ground-anchor' ? feet.get(onFloor(at)) : ends.get(at)
}

export type CountedFixings = Map<string, Map<string, number>>

/** Counts every fixing of a row under its stick, in the tally that its stick is given. */
export const countFixings = (
  { sticks, fittings }: Built,
  tallyFor: (stick: Stick) => CountedFixings | undefined,
): void => {
  const stickAt = stickFinder(sticks)
  for (const { item, at } of fittings) {
    const stick = FIXINGS.test(item) ? stickAt(item, at) : undefined
    const tally = stick && tallyFor(stick)
    if (!stick || !tally) continue
    const items = tally.get(stick.mark) ?? new Map<string, number>()
    tally.set(stick.mark, items.set(item, (items.get(item) ?? 0) + 1))
  }
}

/** Places nearer than this are one place to whoever builds. */
const STEP_MM = 0.2

/** Off the steps on which typed lengths stand, so that the rounding of sums never tells two like places apart. */
const OFF_STEP = 0.37

const placed = (mm: number): number => Math.floor(mm / STEP_MM + OFF_STEP)

const ruleWords = (cut: CutRule): string => Object.values(cut).join(' ')

const memberSign = ({ stick, from, to }: Member): string =>
  [
    stick.mark,
    stick.stock,
    toTicks(stick.lengthMm),
    ruleWords(stick.cut),
    ...stick.holes.flatMap(({ centreMm, diameterMm }) => [toTicks(centreMm), toTicks(diameterMm)]),
    ...[from, to].flatMap(({ u, v, z }) => [placed(u), placed(v), placed(z)]),
  ].join(' ')

/** Two things with the same sign are built alike, to the last screw. */
export const signOf = ({ members, fixings }: Assembled): string =>
  [
    ...members.map(memberSign).toSorted(),
    ...[...fixings]
      .flatMap(([mark, items]) => [...items].map(([item, count]) => `${mark} ${item} ${count}`))
      .toSorted(),
  ].join('\n')

/** Things that are built alike together, in the order in which the first of each comes. */
export const alike = <T extends Assembled>(things: readonly T[]): readonly (readonly [T, ...T[]])[] => {
  const kinds = new Map<string, [T, ...T[]]>()
  for (const thing of things) {
    const sign = signOf(thing)
    const kind = kinds.get(sign)
    if (kind) kind.push(thing)
    else kinds.set(sign, [thing])
  }
  return [...kinds.values()]
}
