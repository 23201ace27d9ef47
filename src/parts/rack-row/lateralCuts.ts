import { polyOf } from '../../catalogue/pipe'
import { feet } from '../../units/length'
import { NEAR_MM, type FeedPlan } from './feedPlan'
import type { RackPlan } from './plan'

/** Poly pipe grows and creeps: 1 % of slack, and a foot at each end of a lateral. Common practice, no source. */
export const SLACK = 1.01
export const LATERAL_END_MM = feet(1)

/** Where water comes into the laterals along the row, mm from its start; alike for all of them. */
export const fedAlong = ({ positions: { lengthMm } }: RackPlan, feed: FeedPlan): number[] =>
  feed.kind === 'double-split' ? [lengthMm / 4, (lengthMm * 3) / 4] : [feed.fedAlongMm]

/** Runs that a lateral is made of: to either side of where water comes in. */
const RUNS: Readonly<Record<FeedPlan['kind'], number>> = {
  straight: 1,
  ring: 1,
  'centre-split': 2,
  'double-split': 4,
}

/** Into how many equal pieces a run must be parted so that each comes off one coil. */
const piecesARun = ({ part, positions }: RackPlan, runs: number): number => {
  const { coilMm } = polyOf(part.lateral)
  const ends = runs === 1 ? 2 : 1
  return Math.ceil(((positions.lengthMm / runs) * SLACK + ends * LATERAL_END_MM) / coilMm)
}

/** Where a lateral is cut, along the row from its start, its ends included, mm. */
export const lateralCuts = (plan: RackPlan, { kind }: FeedPlan): number[] => {
  const pieces = RUNS[kind] * piecesARun(plan, RUNS[kind])
  return Array.from({ length: pieces + 1 }, (_, cut) => (plan.positions.lengthMm * cut) / pieces)
}

/** Where two pieces of a lateral meet in a coupling: the inner ends of a double split, and what is longer than a coil. */
export const couplingsAlong = (plan: RackPlan, feed: FeedPlan): number[] => {
  const ins = fedAlong(plan, feed)
  return lateralCuts(plan, feed)
    .slice(1, -1)
    .filter((cut) => !ins.some((fed) => Math.abs(fed - cut) <= NEAR_MM))
}
