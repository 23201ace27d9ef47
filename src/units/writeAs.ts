import type { Units } from './length'
import type { Precision } from './precision'
import { writeDecimal } from './writeDecimal'
import { NO_VALUE } from './writeLength'

/** How one sort of reader has a quantity: its number, the decimals that the crew can use, the sign of its unit. */
export interface Form {
  readonly numberOf: (value: number) => number
  readonly decimals: number
  readonly sign: string
}

export type Write = (value: number, units: Units, precision: Precision) => string

export const asIs = (value: number): number => value

const written = (value: number, { numberOf, decimals, sign }: Form, { hasMoreDigits }: Precision): string => {
  const number = numberOf(value)
  if (!Number.isFinite(number)) return NO_VALUE
  const digits = hasMoreDigits
    ? writeDecimal(number, decimals + 1, decimals + 2)
    : writeDecimal(number, decimals)
  return `${digits} ${sign}`
}

/** A writer of one quantity for readers of either units. */
export const writeAs =
  (inFeet: Form, metric: Form): Write =>
  (value, units, precision) =>
    written(value, units === 'metric' ? metric : inFeet, precision)
