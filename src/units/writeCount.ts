import { feet, MM_PER_M, type Units } from './length'
import { thousands } from './thousands'
import { writeDecimal } from './writeDecimal'

/** How a thing is counted: by the piece, by the foot of a run, by the square foot. */
export type CountUnit = 'piece' | 'ft' | 'ft2'

const IN_METRES: Readonly<Record<Exclude<CountUnit, 'piece'>, readonly [number, string]>> = {
  ft: [feet(1) / MM_PER_M, 'm'],
  ft2: [(feet(1) / MM_PER_M) ** 2, 'm²'],
}

const IN_FEET = { ft: 'ft', ft2: 'sq ft' } as const

/** A count for who reads it: `1,926`, `312.5 ft`, `197.3 sq ft`, and in metric `95.3 m`, `18.3 m²`. */
export const writeCount = (count: number, unit: CountUnit, units: Units): string => {
  if (unit === 'piece') return thousands(count)
  const [factor, metric] = IN_METRES[unit]
  return units === 'metric'
    ? `${thousands(writeDecimal(count * factor, 1))} ${metric}`
    : `${thousands(writeDecimal(count, 1))} ${IN_FEET[unit]}`
}
