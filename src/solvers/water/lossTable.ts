import { LAMINAR_RE, TURBULENT_RE, lossNumber, lossNumberSlope } from './friction'

/*
 * The friction law takes a power and a logarithm, and a sweep over a bay asks for it tens of thousands of times. So f Re^2
 * is laid out once a roughness, as cubics over equal steps of the root of the Reynolds number, each with the law's own
 * value and slope at both its ends. They stay within 1e-7 of the law.
 */

export const FIRST_ROOT = Math.sqrt(LAMINAR_RE)

/** Steps from smooth flow to churned: a cubic ends at either, for there the law's curvature jumps. */
const STEPS_BETWEEN = 24
export const STEP = (Math.sqrt(TURBULENT_RE) - FIRST_ROOT) / STEPS_BETWEEN

/** As far as Re = 100,000: 1.4 m/s in a main of 70 mm. Beyond, the law itself is asked. */
export const STEPS = Math.ceil((Math.sqrt(1e5) - FIRST_ROOT) / STEP)

/** Four coefficients a step, the lowest power first. */
export type LossTable = Float64Array

const reynoldsAt = (step: number): number =>
  step === 0 ? LAMINAR_RE : step === STEPS_BETWEEN ? TURBULENT_RE : (FIRST_ROOT + step * STEP) ** 2

const tableOf = (relativeRoughness: number): LossTable => {
  const table = new Float64Array(4 * STEPS)
  const rise = (re: number): number => lossNumberSlope(re, relativeRoughness) * 2 * Math.sqrt(re) * STEP
  let value = lossNumber(LAMINAR_RE, relativeRoughness)
  let slope = rise(LAMINAR_RE)
  for (let step = 0; step < STEPS; step += 1) {
    const re = reynoldsAt(step + 1)
    const nextValue = lossNumber(re, relativeRoughness)
    const nextSlope = rise(re)
    const chord = nextValue - value
    table.set([value, slope, 3 * chord - 2 * slope - nextSlope, slope + nextSlope - 2 * chord], 4 * step)
    value = nextValue
    slope = nextSlope
  }
  return table
}

const MOST_KEPT = 200
const kept = new Map<number, LossTable>()

/** The table for a roughness as a share of the bore; those of the bores met last are kept. */
export const lossTable = (relativeRoughness: number): LossTable => {
  const found = kept.get(relativeRoughness)
  if (found !== undefined) return found
  if (kept.size >= MOST_KEPT) kept.clear()
  const table = tableOf(relativeRoughness)
  kept.set(relativeRoughness, table)
  return table
}
