import { writeMixed } from './fraction'
import type { Denominator } from './fraction'
import { inches, INCHES_PER_FOOT, toTicks } from './length'
import type { Units } from './length'

/** Stands where a number has no value, such as a gap to something that is not there. */
export const NO_VALUE = '—'

/** The magnitude of a length to the nearest part of an inch, half parts up. Counted in ticks, so that halves are exact. */
const partsOf = (mm: number, denominator: Denominator): number =>
  Math.round(Math.abs(toTicks(mm)) / toTicks(inches(1 / denominator)))

/** A written magnitude with its sign; what rounds to nothing has none. */
const signed = (isNegative: boolean, magnitude: string): string => (isNegative ? `-${magnitude}` : magnitude)

const writeFeet = (mm: number, denominator: Denominator): string => {
  const parts = partsOf(mm, denominator)
  const partsPerFoot = INCHES_PER_FOOT * denominator
  const feet = Math.floor(parts / partsPerFoot)
  const rest = parts % partsPerFoot
  // Beside feet a bare fraction is easily misread: 5' 0-1/2", never 5' 1/2".
  const zero = feet > 0 && rest > 0 && rest < denominator ? '0-' : ''
  const written = `${zero}${writeMixed(rest, denominator)}"`
  return signed(mm < 0 && parts > 0, feet > 0 ? `${feet}' ${written}` : written)
}

const writeInches = (mm: number, denominator: Denominator): string => {
  const parts = partsOf(mm, denominator)
  return signed(mm < 0 && parts > 0, `${writeMixed(parts, denominator)}"`)
}

/** To 0.1 mm, the decimal only where there is one. */
const writeMm = (mm: number): string => {
  const tenths = Math.round(Math.abs(mm) * 10)
  return `${signed(mm < 0 && tenths > 0, String(tenths / 10))} mm`
}

/**
 * A length in mm as the crew reads it: `5' 6-1/2"`, `6-1/2"`, or `1690 mm`. Exact where the length is a whole number
 * of the tape's parts (or of 0.1 mm), else the nearest.
 */
export const writeLength = (mm: number, units: Units, denominator: Denominator = 16): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  return units === 'metric' ? writeMm(mm) : writeFeet(mm, denominator)
}

/** The same as read along a tape, in inches alone: `66-1/2"`. Stop settings and hole heights are written so. */
export const writeOnTape = (mm: number, units: Units, denominator: Denominator = 16): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  return units === 'metric' ? writeMm(mm) : writeInches(mm, denominator)
}
