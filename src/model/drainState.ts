import type { DrainState } from './returns'

/** Falls closer than this are the same: the fraction of an inch a foot that was typed carries rounding. */
const CLOSE_MM_PER_M = 1e-6

/** Half the least fall still runs, and settles: under it, water stands. Common practice, no source. */
const FLAT_SHARE = 0.5

/** Roots and solids want the upper half of a drain. Common practice, no source. */
export const MOST_SHARE = 0.5

/** Shares of a bore nearer than this are one: far below what anybody could see. */
const CLOSE_SHARE = 1e-6

/** How a drain lies, by its fall and the least that it is allowed, mm per m. */
export const fallState = (slopeMmPerM: number, leastMmPerM: number): DrainState => {
  if (slopeMmPerM <= 0) return 'Backs up'
  if (slopeMmPerM >= leastMmPerM - CLOSE_MM_PER_M) return 'Falls'
  return slopeMmPerM >= leastMmPerM * FLAT_SHARE - CLOSE_MM_PER_M ? 'Flat' : 'Backs up'
}

/** Whether water stands over the middle of a drain, by the share of its bore that is wet. */
export const isOverHalf = (share: number): boolean => share > MOST_SHARE + CLOSE_SHARE

/** How a drain carries its water, by its fall and by the share of its bore that is wet. */
export const drainState = (slopeMmPerM: number, leastMmPerM: number, share: number): DrainState =>
  isOverHalf(share) ? 'Backs up' : fallState(slopeMmPerM, leastMmPerM)

const WORST_FIRST: readonly DrainState[] = ['Backs up', 'Flat', 'Falls']

/** The worst of some states; of none, that it falls. */
export const worstDrainState = (states: readonly DrainState[]): DrainState =>
  WORST_FIRST.find((state) => states.includes(state)) ?? 'Falls'
