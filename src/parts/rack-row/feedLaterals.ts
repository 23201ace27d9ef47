import { barbedLossK, barbLossK, onBore } from '../../catalogue/insertLosses'
import { polyOf } from '../../catalogue/pipe'
import type { Entry } from './feedHeader'
import { addJoint, addPipe, type PipesLaid } from './feedPipes'
import { alongOf, feedPlace, lateralLevel, NEAR_MM, type FeedPlan } from './feedPlan'
import { couplingsAlong, fedAlong } from './lateralCuts'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'
import type { HungTower } from './towers'

/** A place along a lateral where something is joined to it. */
interface Stop {
  readonly alongMm: number
  readonly barbs: number
  readonly joint: number
}

export interface LateralLaid {
  readonly stops: readonly Stop[]
  readonly fedAt: readonly number[]
  /** Joints of its two sub-headers, from the header to the quarter points; only of a double split. */
  readonly subHeaderRuns: readonly (readonly [number, number])[]
}

/** Barbs at each station of a lateral, stations from the start of the row. */
export type BarbCounts = readonly Uint8Array[]

/** How many towers each lateral feeds at each station. */
export const countBarbs = (plan: RackPlan, feed: FeedPlan, towers: readonly HungTower[]): BarbCounts => {
  const stations = plan.positions.barU.length
  const counts = feed.lateralRightMm.map(() => new Uint8Array(stations))
  for (const { station, line } of towers) {
    const barbs = counts[feed.lateralOfLine[line - 1] ?? 0]
    if (barbs) barbs[station - 1] = (barbs[station - 1] ?? 0) + 1
  }
  return counts
}

/** Stations along the row from its start, mm. */
export const stationsAlong = (plan: RackPlan): number[] => {
  const along = plan.positions.barU.map((u) => alongOf(plan, u))
  return plan.frame.isFromStart ? along : along.toReversed()
}

/** A place that is wanted on a lateral, with the joint that is there already, if one is. */
interface Wanted {
  readonly alongMm: number
  readonly barbs: number
  readonly joint?: number
}

/** Places in order along the lateral; two on one spot become one. */
const inOrder = (wanted: readonly Wanted[]): Wanted[] => {
  const merged: Wanted[] = []
  for (const next of wanted.toSorted((a, b) => a.alongMm - b.alongMm)) {
    const last = merged.at(-1)
    if (last && next.alongMm - last.alongMm <= NEAR_MM)
      merged[merged.length - 1] = { ...last, ...next, barbs: last.barbs + next.barbs }
    else merged.push(next)
  }
  return merged
}

/** What the water loses where it comes into a lateral, along each way that leaves from there, on the lateral's velocity head. */
const wayInLoss = (plan: RackPlan, feed: FeedPlan, entry: Entry): number => {
  const bore = polyOf(plan.part.lateral).idMm
  const headerBore = polyOf(feed.header).idMm
  const reducerK = feed.header === plan.part.lateral ? 0 : barbedLossK('union')
  switch (feed.kind) {
    case 'straight':
    case 'ring':
      return reducerK + onBore(entry.lossK, headerBore, bore)
    // Half of the water goes each way: what is lost before it parts was lost by twice the flow.
    case 'centre-split':
      return (
        barbedLossK('tee-branch') + onBore(reducerK, bore, bore, 2) + onBore(entry.lossK, headerBore, bore, 2)
      )
    case 'double-split':
      return barbedLossK('tee-branch') + onBore(reducerK, bore, bore, 2)
  }
}

/** Both quarter points, each at the end of a sub-header from the centre tee. */
const laySubHeaders = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  lateral: number,
  entry: Entry,
): (readonly [number, number])[] => {
  const bore = polyOf(feed.header).idMm
  const lossK = barbedLossK('tee-branch') + onBore(entry.lossK, bore, bore, 2)
  return fedAlong(plan, feed).map((alongMm) => {
    const rightMm = feed.lateralRightMm[lateral] ?? 0
    const at = feedPlace(plan, alongMm, rightMm, lateralLevel(plan, feed, alongMm))
    const run = [entry.joint, addJoint(laid, at)] as const
    addPipe(laid, 'sub-header', feed.header, run, lossK)
    return run
  })
}

/** Where a lateral has a joint already when it is laid. */
const fedPlaces = (
  plan: RackPlan,
  feed: FeedPlan,
  entry: Entry,
  subHeaderRuns: LateralLaid['subHeaderRuns'],
): Wanted[] => {
  const joints = feed.kind === 'double-split' ? subHeaderRuns.map(([, joint]) => joint) : [entry.joint]
  return fedAlong(plan, feed).map((alongMm, way) => ({
    alongMm,
    barbs: 0,
    joint: joints[way] ?? entry.joint,
  }))
}

/** Half of a barb's loss on either side of it, so that it is there whichever way the water goes. */
const passedLoss = (barbK: number, from: Stop, to: Stop): number => (barbK * (from.barbs + to.barbs)) / 2

/** Everything that is joined to a lateral: its ends, its barbs, and where it is fed. */
const stopsOf = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  rightMm: number,
  wanted: readonly Wanted[],
): Stop[] =>
  inOrder(wanted).map(({ alongMm, barbs, joint }) => ({
    alongMm,
    barbs,
    joint: joint ?? addJoint(laid, feedPlace(plan, alongMm, rightMm, lateralLevel(plan, feed, alongMm))),
  }))

const barbPlaces = (plan: RackPlan, barbs: Uint8Array): Wanted[] =>
  stationsAlong(plan).flatMap((alongMm, station) => {
    const here = barbs[station] ?? 0
    return here > 0 ? [{ alongMm, barbs: here }] : []
  })

/** One lateral, with a joint at its ends, where it is fed, and where barbs are. */
export const layLateral = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  lateral: number,
  entry: Entry,
  barbs: Uint8Array,
): LateralLaid => {
  const stock = plan.part.lateral
  const subHeaderRuns = feed.kind === 'double-split' ? laySubHeaders(plan, feed, laid, lateral, entry) : []
  const fed = fedPlaces(plan, feed, entry, subHeaderRuns)
  const fedAt = fed.flatMap(({ joint }) => joint ?? [])
  const ends = [0, plan.positions.lengthMm].map((alongMm) => ({ alongMm, barbs: 0 }))
  const wanted = [...ends, ...barbPlaces(plan, barbs), ...fed]
  const stops = stopsOf(plan, feed, laid, feed.lateralRightMm[lateral] ?? 0, wanted)
  const couplings = couplingsAlong(plan, feed)
  const inK = wayInLoss(plan, feed, entry)
  const barbK = barbLossK(polyOf(stock).idMm)
  stops.slice(1).forEach((to, index) => {
    const from = stops[index] ?? to
    const isFed = fedAt.includes(from.joint) || fedAt.includes(to.joint)
    const joined = couplings.filter((at) => from.alongMm < at && at <= to.alongMm).length
    const lossK = passedLoss(barbK, from, to) + joined * barbedLossK('union') + (isFed ? inK : 0)
    addPipe(laid, 'lateral', stock, [from.joint, to.joint], lossK)
  })
  return { stops, fedAt, subHeaderRuns }
}

/** Something stands at the ends of the laterals, on a tee where the pipe goes on. */
export const hasEndFittings = ({ flushEnd, sightTube }: RackRow): boolean => flushEnd !== 'none' || sightTube

const farJoint = (feed: FeedPlan, { stops }: LateralLaid): number =>
  stops.at(feed.fedAlongMm > 0 ? 0 : -1)?.joint ?? 0

/** Ring: the far ends of all laterals are joined, each to the next. The joints from the first lateral to the last. */
export const layCrossPipe = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  laterals: readonly LateralLaid[],
): number[] => {
  if (feed.kind !== 'ring') return []
  const far = laterals.map((lateral) => farJoint(feed, lateral))
  const cornerK = barbedLossK(hasEndFittings(plan.part) ? 'tee-branch' : 'elbow')
  far.slice(1).forEach((to, index) => {
    const from = far[index] ?? to
    const corners = Number(index === 0) + Number(index === far.length - 2)
    const lossK = corners * cornerK + (2 - corners) * barbedLossK('tee-run')
    addPipe(laid, 'header', plan.part.lateral, [from, to], lossK)
  })
  return far
}
