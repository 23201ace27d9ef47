import { boxOf, corners, joined, middle } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import type { BodyRole, Built } from '../../model/built'
import type { Judged } from '../evaluation'
import { partChanges } from './partChanges'

/** Where a part lay and where it lies, for a drawing of what differs between two plans; mm of floor. */
export interface PlaceChange {
  readonly part: PartId
  readonly name: string
  /** `changed`: it lies where it lay, and is another in something else. */
  readonly what: 'moved' | 'added' | 'removed' | 'changed'
  /** Empty for a part that is new, or that takes the room that it took. */
  readonly from: readonly (readonly Point[])[]
  /** Empty for a part that is gone. */
  readonly to: readonly (readonly Point[])[]
  /** The middles of both, of a part that has moved. */
  readonly arrow?: readonly [Point, Point]
  /** How far, east and north, mm. */
  readonly by?: Point
}

/** A bent run is outlined leg by leg: one box round it all would take in half the floor. */
const RUNS: ReadonlySet<BodyRole> = new Set(['trench', 'main'])
/** What may lie over, in or under other things without standing there. */
const NOT_STANDING: ReadonlySet<BodyRole> = new Set(['keep-clear', 'door-swing', 'footing'])

const outlinesOf = (built: Built | undefined): readonly (readonly Point[])[] => {
  if (!built) return []
  const runs = built.bodies.filter(({ role }) => RUNS.has(role))
  if (runs.length > 0) return runs.map(({ outline }) => outline)
  const boxes = built.bodies
    .filter(({ role }) => !NOT_STANDING.has(role))
    .map(({ outline }) => boxOf(outline))
  return boxes.length > 0 ? [corners(boxes.reduce(joined))] : []
}

const middleOf = (outlines: readonly (readonly Point[])[]): Point | undefined => {
  const points = outlines.flat()
  return points.length > 0 ? middle(boxOf(points)) : undefined
}

const isSameRoom = (a: readonly (readonly Point[])[], b: readonly (readonly Point[])[]): boolean =>
  JSON.stringify(a) === JSON.stringify(b)

/** What lies elsewhere, is new, is gone or is another in one plan than in the other, with its place in both. */
export const placeChanges = (before: Judged, after: Judged): readonly PlaceChange[] =>
  partChanges(before.layout, after.layout).flatMap((change): readonly PlaceChange[] => {
    const { part, name } = change
    const from = outlinesOf(before.bay.builtOf.get(part))
    const to = outlinesOf(after.bay.builtOf.get(part))
    if (change.what !== 'changed')
      return [{ part, name, what: change.what, from: change.what === 'added' ? [] : from, to }]
    const [was, is] = [middleOf(from), middleOf(to)]
    const { move } = change
    if (!move || !was || !is)
      return [{ part, name, what: 'changed', from: isSameRoom(from, to) ? [] : from, to }]
    return [{ part, name, what: 'moved', from, to, arrow: [was, is], by: move.by }]
  })
