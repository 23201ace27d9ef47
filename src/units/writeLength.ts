import { writeMixed } from './fraction'
import { inches, INCHES_PER_FOOT, toInches, toTicks } from './length'
import type { Units } from './length'
import { atSaw, type Precision } from './precision'
import { writeDecimal } from './writeDecimal'

/** Stands where a number has no value, such as a gap to something that is not there. */
export const NO_VALUE = '—'

/** The magnitude of a length to the nearest part of an inch, half parts up. Counted in ticks, so that halves are exact. */
const partsOf = (mm: number, { inchParts }: Precision): number =>
  Math.round(Math.abs(toTicks(mm)) / toTicks(inches(1 / inchParts)))

/** A written magnitude with its sign; what rounds to nothing has none. */
const signed = (isNegative: boolean, magnitude: string): string => (isNegative ? `-${magnitude}` : magnitude)

const writeFeet = (mm: number, precision: Precision): string => {
  const { inchParts } = precision
  const parts = partsOf(mm, precision)
  const partsPerFoot = INCHES_PER_FOOT * inchParts
  const feet = Math.floor(parts / partsPerFoot)
  const rest = parts % partsPerFoot
  // Beside feet a bare fraction is easily misread: 5' 0-1/2", never 5' 1/2".
  const zero = feet > 0 && rest > 0 && rest < inchParts ? '0-' : ''
  const written = `${zero}${writeMixed(rest, inchParts)}"`
  return signed(mm < 0 && parts > 0, feet > 0 ? `${feet}' ${written}` : written)
}

const writeInches = (mm: number, precision: Precision): string => {
  const parts = partsOf(mm, precision)
  return signed(mm < 0 && parts > 0, `${writeMixed(parts, precision.inchParts)}"`)
}

/** A decimal only where there is one. */
const writeMm = (mm: number, { mmParts }: Precision): string => {
  const parts = Math.round(Math.abs(mm) * mmParts)
  return `${signed(mm < 0 && parts > 0, String(parts / mmParts))} mm`
}

/**
 * A length in mm as the crew reads it: `5' 6-1/2"`, `6-1/2"`, or `1690 mm`. Exact where the length is a whole number
 * of the tape's parts, else the nearest.
 */
export const writeLength = (mm: number, units: Units, precision: Precision = atSaw): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  return units === 'metric' ? writeMm(mm, precision) : writeFeet(mm, precision)
}

/** The same as read along a tape, in inches alone: `66-1/2"`. Stop settings and hole heights are written so. */
export const writeOnTape = (mm: number, units: Units, precision: Precision = atSaw): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  return units === 'metric' ? writeMm(mm, precision) : writeInches(mm, precision)
}

/**
 * The bore of a small tube, in thousandths of an inch or hundredths of a mm: `0.137"`, `3.48 mm`. Flow goes with nearly its
 * fourth power, so that 1/64 in would be a third more or less water.
 */
export const writeBore = (mm: number, units: Units): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  return units === 'metric' ? `${writeDecimal(mm, 2)} mm` : `${writeDecimal(toInches(mm), 3)}"`
}
