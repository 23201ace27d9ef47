import { thousands } from './thousands'

const CENTS = 100

/** A sign stands close to its number, a code apart from it, on one line. */
const before = (currency: string): string => (/\p{L}$/u.test(currency) ? `${currency}\u00A0` : currency)

/** Money from whole cents, written with the job's currency before it: `$1,386.40`, `CHF 1,386.40`. */
export const money = (cents: number, currency: string): string => {
  const size = Math.abs(cents)
  const small = String(size % CENTS).padStart(2, '0')
  return `${cents < 0 ? '-' : ''}${before(currency)}${thousands(Math.floor(size / CENTS))}.${small}`
}

/** From so many cents on a sum at a glance is in whole coins. */
const GLANCE_CENTS = 1000

/** Money at a glance, from whole cents: `$1,386`, but `$0.40`. */
export const roundMoney = (cents: number, currency: string): string =>
  Math.abs(cents) < GLANCE_CENTS
    ? money(cents, currency)
    : money(Math.round(cents / CENTS) * CENTS, currency).slice(0, -'.00'.length)
