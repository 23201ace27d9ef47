import { feet, inches, MM_PER_CM, type Units } from '../../units/length'

/** Marks on two strings that meet square, and how far they are apart: three, four and five times the same. All mm. */
export interface Square {
  readonly alongMm: number
  readonly acrossMm: number
  readonly betweenMm: number
}

/** The largest step first: whole feet where they fit, whole inches on a narrow row; on a metric tape tenths of a metre, then centimetres. */
const STEPS_MM: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [feet(1), inches(1)],
  metric: [10 * MM_PER_CM, MM_PER_CM],
}

/** The longest tape that a crew has. Common practice, no source. */
const TAPE_MM: Readonly<Record<Units, number>> = { 'feet-inches': feet(100), metric: 30_000 }

const timesIn = (threeMm: number, fourMm: number, stepMm: number, tapeMm: number): number =>
  Math.floor(Math.min(threeMm / (3 * stepMm), fourMm / (4 * stepMm), tapeMm / (5 * stepMm)) + 1e-9)

/**
 * The largest 3-4-5 triangle in whole steps of the reader's tape that lies on two sides of a corner, mm: 6-8-10 or 9-12-15 ft
 * are multiples of it. undefined where the sides are too short for one. Euclid, Elements I.48: a triangle of such sides is square.
 */
export const squareOn = (alongMm: number, acrossMm: number, units: Units): Square | undefined => {
  for (const stepMm of STEPS_MM[units]) {
    const longAlong = timesIn(acrossMm, alongMm, stepMm, TAPE_MM[units])
    const longAcross = timesIn(alongMm, acrossMm, stepMm, TAPE_MM[units])
    const times = Math.max(longAlong, longAcross)
    if (times < 1) continue
    const [along, across] = longAlong >= longAcross ? [4, 3] : [3, 4]
    return {
      alongMm: along * times * stepMm,
      acrossMm: across * times * stepMm,
      betweenMm: 5 * times * stepMm,
    }
  }
  return undefined
}
