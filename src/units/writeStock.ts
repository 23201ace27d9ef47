import { inches, INCHES_PER_FOOT, MM_PER_M, toTicks, type Units } from './length'
import { NO_VALUE, writeLength } from './writeLength'

/** Metric stock is named to the centimetre: a 12 ft board is 3.66 m at the yard. */
const metres = (mm: number): string => `${Math.round((mm / MM_PER_M) * 100) / 100} m`

const wholeFeet = (mm: number): number | undefined => {
  const feet = toTicks(mm) / toTicks(inches(INCHES_PER_FOOT))
  return Number.isInteger(feet) ? feet : undefined
}

/** A length of stock, or of all the stock together, as the yard says it: `12 ft`, `10' 6"`, `3.66 m`. */
export const writeStock = (mm: number, units: Units): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  if (units === 'metric') return metres(mm)
  const feet = wholeFeet(mm)
  return feet === undefined ? writeLength(mm, units) : `${feet} ft`
}
