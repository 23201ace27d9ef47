import { feet } from '../units/length'

/**
 * No two cleanouts of a line lie further apart: International Plumbing Code 708.1, 100 ft (30.48 m); from memory, edition
 * unknown. The code that is adopted where the line lies has the last word.
 */
export const CLEANOUT_APART_MM = feet(100)

/** What a drain line says about itself beside its built things, so that checks need not know its parameters. */
export interface DrainFacts {
  /** Positive where it falls from its first point to its last. */
  readonly slopeMmPerM: number
  readonly leastSlopeMmPerM: number
  readonly leastCoverMm: number
  readonly bedMm: number
  readonly trenchMm: number
  /** How far a peg's top stands over the floor. */
  readonly pegTopMm: number
  /** The piece laid first, at the low end, where that is not a whole stick. */
  readonly firstStickMm: number | null
}
