import type { Units } from '../units/length'
import { toPounds } from '../units/mass'
import { thousands } from '../units/thousands'

/** What hands and stands bear is known to a tenth at best: two digits, and from a hundred on tens. */
const rounded = (value: number): number => (value < 100 ? Math.round(value) : Math.round(value / 10) * 10)

/** A mass in kilograms, to what a crew can use: `2,000 lb`, `910 kg`. */
export const massWords = (kg: number, units: Units): string =>
  units === 'metric' ? `${thousands(rounded(kg))} kg` : `${thousands(rounded(toPounds(kg)))} lb`
