import { writeMixed } from './fraction'
import type { Units } from './length'
import { toInchesPerFoot } from './slope'
import { NO_VALUE } from './writeLength'

/** How near a fall must be to a whole 1/64 in/ft to be written as that fraction: well above rounding, well below a level's reading. */
const FRACTION_TOLERANCE = 1e-6

const writeInchesPerFoot = (fall: number): string => {
  const parts = Math.round(fall * 64)
  const isFraction = Math.abs(fall * 64 - parts) < FRACTION_TOLERANCE
  return isFraction ? writeMixed(parts, 64) : String(Math.round(fall * 1000) / 1000)
}

/**
 * A fall in mm per metre as the crew reads it: `1/8 in/ft` or `10.4 mm/m`. In inches per foot it is a fraction only
 * where it is exactly that one, else a decimal, so that 0.12 is never read as 1/8.
 */
export const writeFall = (mmPerM: number, units: Units): string => {
  if (!Number.isFinite(mmPerM)) return NO_VALUE
  const fall = Math.abs(mmPerM)
  const isMetric = units === 'metric'
  const written = isMetric ? String(Math.round(fall * 10) / 10) : writeInchesPerFoot(toInchesPerFoot(fall))
  const sign = mmPerM < 0 && written !== '0' ? '-' : ''
  return `${sign}${written} ${isMetric ? 'mm/m' : 'in/ft'}`
}
