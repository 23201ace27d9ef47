import { isBigRack } from './joints'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'

/** One transverse frame: two risers with what ties them. */
export interface Pair {
  readonly u: number
  /** From 0 at the high end. */
  readonly rack: number
  /** Shared by two racks. */
  readonly isJoint: boolean
  /** At an end of what stands by itself: the row, or a rack of J2. */
  readonly isEnd: boolean
  /** Its risers are drilled for the sleeve or the big stick. */
  readonly isBig: boolean
  /** 1 where ties lie on the downhill face, -1 at the last pair of what stands by itself, so that nothing stands out of it. */
  readonly face: 1 | -1
}

/** Left and right looking downhill. */
export const SIDES = [-1, 1] as const

/** A sleeve, or a big stick, goes through what two racks share; a dowel and a lapped rail go through a plain hole. */
const takesBig = ({ joint }: RackRow): boolean => joint === 'J1' || joint === 'J3'

/** Pairs that two racks or an end of what stands by itself are braced and held at. */
export const isBracedPair = ({ isEnd, isJoint }: Pair): boolean => isEnd || isJoint

/** Riser pairs from the high end down; none where the house carries the rails. */
export const standingPairs = (plan: RackPlan): Pair[] =>
  plan.part.carriedBy === 'house' ? [] : pairsOf(plan)

export const pairsOf = ({ part, positions }: RackPlan): Pair[] =>
  positions.pairs.map(({ u, rack, isShared, isEnd, isLast }) => ({
    u,
    rack,
    isJoint: isShared,
    isEnd,
    isBig: (isShared && takesBig(part)) || isBigRack(part, rack),
    face: isLast ? -1 : 1,
  }))
