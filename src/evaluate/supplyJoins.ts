import { CLOSE_MM } from '../checks/found'
import { nearestFromAbove, nearestInSpace, pathLength } from '../geometry/path'
import { distance, length3, type Place } from '../geometry/point'
import type { Built, Mouth } from '../model/built'
import type { PartId } from '../model/ids'
import type { Join } from '../model/levels'
import { rememberEach } from '../model/remember'
import { feet } from '../units/length'
import { joiner, joinNearest, mouthsOf, type Receiver, type Receivers } from './joiner'

/** Mains that begin or end this near to a pump or a head box are its own, however many they are. Common practice, no source. */
const OWN_MAIN_MM = feet(4)

/** An end of a main may stop this far short of another main: the last fitting reaches over. */
const MAIN_END_REACH_MM = 50

interface MainEnd {
  readonly at: Place
  readonly alongMm: number
}

/** A main: `alongMm` is measured along its pipe in space, so that the foot and the head of a rise are two places. */
interface MainReceiver extends Receiver {
  readonly path: readonly Place[]
  readonly ends: readonly MainEnd[]
}

const endsOf = (built: Built, path: readonly Place[]): MainEnd[] =>
  mouthsOf(built, 'main-end').map(({ at }, index) => ({ at, alongMm: index === 0 ? 0 : pathLength(path) }))

const mainsOf = rememberEach<Built, null, readonly MainReceiver[]>((built) =>
  built.tubes
    .filter(({ role }) => role === 'main')
    .map(({ path }) => ({
      part: built.part,
      path,
      ends: endsOf(built, path),
      reach: (at) => nearestFromAbove(path, at),
    })),
)

/** The head of the riser pipe of a row that has valves of its own. */
const valveHeadsOf = rememberEach<Built, null, readonly Receiver[]>(({ part, feed }) => {
  const head = feed?.valves && feed.joints[feed.shareJoint]
  return head ? [{ part, reach: (at) => ({ gapMm: distance(head, at), alongMm: 0 }) }] : []
})

const mains = (built: Built) => mainsOf(built, null)

/** The one receiver that a builder chose, wherever it is; all of them where nothing, or nothing that is there, was chosen. */
const chosenOf = <R extends Receiver>(receivers: Receivers<R>, chosen: PartId | undefined): Receivers<R> => {
  if (chosen === undefined) return receivers
  const all = receivers.all.filter(({ part }) => part === chosen)
  return all.length > 0 ? { ...receivers, all } : receivers
}

const rowJoins =
  (kind: Join['kind'], role: Mouth['role']) =>
  (built: Built, receivers: Receivers): readonly Join[] =>
    mouthsOf(built, role).map((mouth) =>
      joinNearest(kind, built.part, mouth, chosenOf(receivers, built.feed?.waterFrom)),
    )

/** Every row with valves of its own to the main that its builder chose, or the nearest within a reach, mm. */
export const joinZones = joiner(mains, rowJoins('zone-to-main', 'zone-inlet'))

/**
 * Every other row to the row with valves that its builder chose, or the nearest. Rows without valves give no water on, so
 * that each comes to a valve and none round to itself.
 */
export const joinSharedZones = joiner(
  (built) => valveHeadsOf(built, null),
  rowJoins('zone-to-zone', 'shared-inlet'),
)

interface EndGap {
  readonly end: MainEnd
  readonly gapMm: number
}

/** The nearer end of a main; undefined of a main without any. */
const nearerEnd = ({ ends }: MainReceiver, at: Place): EndGap | undefined =>
  ends
    .map((end) => ({ end, gapMm: distance(end.at, at) }))
    .reduce<EndGap | undefined>((near, each) => (near && near.gapMm <= each.gapMm ? near : each), undefined)

/** A pump or box to the nearer end of each main that is its own, or else to the nearest main in reach, wherever along it. */
const supplyJoins =
  (kind: Join['kind'], role: Mouth['role']) =>
  (built: Built, receivers: Receivers<MainReceiver>): readonly Join[] =>
    mouthsOf(built, role).flatMap((mouth) => {
      const own = receivers.all.flatMap((main): Join[] => {
        const near = nearerEnd(main, mouth.at)
        if (!near || near.gapMm > OWN_MAIN_MM + CLOSE_MM) return []
        const { end, gapMm } = near
        const { at, line } = mouth
        return [{ kind, from: built.part, to: main.part, at, alongMm: end.alongMm, gapMm, line }]
      })
      return own.length > 0 ? own : [joinNearest(kind, built.part, mouth, receivers)]
    })

export const joinPumps = joiner(mains, supplyJoins('pump-to-main', 'pump'))
export const joinBoxes = joiner(mains, supplyJoins('box-to-main', 'head-box'))

const meets = (main: MainReceiver): Receiver => ({
  part: main.part,
  reach: (at) => nearestInSpace(main.path, at),
})

const mainsInSpace = rememberEach<Built, null, readonly Receiver[]>((built) => mains(built).map(meets))

/** Ends of mains that touch another main, in space: one that passes over it is not joined. */
const touching = joiner(
  (built) => mainsInSpace(built, null),
  (built, receivers) =>
    mouthsOf(built, 'main-end')
      .map((mouth) => joinNearest('main-to-main', built.part, mouth, receivers))
      .filter(({ to }) => to !== undefined),
)

/** Where two mains end on each other both ends tell of it; the first is kept. */
const isToldBefore = (joins: readonly Join[], index: number): boolean => {
  const join = joins[index]
  return joins
    .slice(0, index)
    .some(
      (before) =>
        join !== undefined &&
        before.from === join.to &&
        before.to === join.from &&
        length3(before.at, join.at) <= MAIN_END_REACH_MM + CLOSE_MM,
    )
}

/** Every end of a main that touches another main, once. */
export const joinMains = (built: readonly Built[]): readonly Join[] => {
  const joins = touching(built, MAIN_END_REACH_MM)
  return joins.filter((_, index) => !isToldBefore(joins, index))
}
