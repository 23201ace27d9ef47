import { stature } from '../../catalogue/stature'
import { type Lift, liftingIndex, type RecommendedWeight, recommendedWeight } from '../../solvers/lifting'

/** Words of the lifting index. None of them says that a lift is safe. */
export type LiftWord = 'Under limit' | 'Over limit' | 'Far over' | 'Out of reach'

/** Over 1 risk is raised for some workers, over 3 for many: NIOSH Publication 94-110, from memory. */
const SOME_OVER = 1
const MANY_OVER = 3

/** Rounding of a product of six is far below this share of the limit. */
const CLOSE = 1e-9

const wordOf = (index: number): LiftWord => {
  if (index <= SOME_OVER + CLOSE) return 'Under limit'
  if (index <= MANY_OVER + CLOSE) return 'Over limit'
  return index < Infinity ? 'Far over' : 'Out of reach'
}

/** 0 is well, 1 is to be looked at, 2 is to be worked otherwise. */
export const liftRank = (word: LiftWord): 0 | 1 | 2 => {
  if (word === 'Under limit') return 0
  return word === 'Over limit' ? 1 : 2
}

/** A lift with what is recommended for it and what comes of the load. */
export interface Lifted extends RecommendedWeight {
  readonly lift: Lift
  readonly loadKg: number
  /** The load over the recommended weight; Infinity where nothing is recommended. */
  readonly index: number
  readonly word: LiftWord
}

export const liftedOf = (lift: Lift, loadKg: number): Lifted => {
  const recommended = recommendedWeight(lift)
  const index = liftingIndex(loadKg, recommended)
  return { ...recommended, lift, loadKg, index, word: wordOf(index) }
}

/** Whose straight arm comes so far: everybody's, a long one alone, or nobody's. */
export type Arm = 'every arm' | 'long arms' | 'no arm'

/**
 * A small woman's and a tall man's grip reach ahead (Pheasant, Bodyspace, 1996) is measured from the shoulder blades, which are taken
 * to be over the ankles.
 */
export const armOf = (reachMm: number): Arm => {
  if (reachMm <= stature.gripAhead.woman5Mm) return 'every arm'
  return reachMm <= stature.gripAhead.man95Mm ? 'long arms' : 'no arm'
}
