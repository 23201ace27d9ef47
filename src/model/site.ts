import type { StockMeasures } from './measuredStock'

/** What the bay tells a part before it derives. One object for as long as nothing in it has changed. */
export interface Site {
  /** Floor level at a place, mm from the benchmark's zero. */
  readonly groundAt: (x: number, y: number) => number
  /** Leaf reach beyond a tower's centre line at the growth shown, mm. */
  readonly leafReachMm: number
  /** Common tip height of the bay above the rack datum, mm; 0 where no row asks. */
  readonly tipMm: number
  readonly kerfMm: number
  /** Lumber lengths on offer by their names, mm, ascending. */
  readonly lumberMm: readonly number[]
  /** Stock as it measures. */
  readonly measured: readonly StockMeasures[]
}
