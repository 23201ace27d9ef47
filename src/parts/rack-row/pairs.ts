import { isBigRack } from './joints'
import type { RackPlan } from './plan'

/** One transverse frame: two risers with what ties them. */
export interface Pair {
  readonly u: number
  /** From 0 at the high end. */
  readonly rack: number
  /** Shared by two racks. */
  readonly isJoint: boolean
  readonly isEnd: boolean
  /** Its risers are drilled for the sleeve or the big stick. */
  readonly isBig: boolean
  /** 1 where ties lie on the downhill face, -1 at the last pair, so that nothing stands out of the row. */
  readonly face: 1 | -1
}

/** Left and right looking downhill. */
export const SIDES = [-1, 1] as const

export const pairsOf = ({ part, positions }: RackPlan): Pair[] => {
  const { pairU, pairsARack } = positions
  const last = pairU.length - 1
  return pairU.map((u, index) => {
    const rack = Math.min(Math.floor(index / pairsARack), part.racks - 1)
    const isEnd = index === 0 || index === last
    const isJoint = !isEnd && index % pairsARack === 0
    return { u, rack, isJoint, isEnd, isBig: isJoint || isBigRack(part, rack), face: index === last ? -1 : 1 }
  })
}
