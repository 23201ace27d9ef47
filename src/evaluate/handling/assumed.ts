import { inches } from '../../units/length'

/**
 * How a tower is taken up and hung, as far as no drawing tells. All of it is assumed; who lifts otherwise has other numbers.
 * All mm and degrees.
 */
export const assumed = {
  /** Nobody hugs a wet, planted tower: hands are at least so far before the ankles. */
  nearestMm: inches(12),
  /** Where hands have a tower while it is hooked on: so far under the top of its bar. */
  underBarMm: inches(8),
  /** Hands at a cart. */
  cartMm: inches(30),
  /** Hands at the floor, and how far before the ankles. */
  floorMm: inches(6),
  floorReachMm: inches(15),
  /** Past a line that hangs, one shoulder goes in first. */
  pastLineDeg: 30,
} as const
