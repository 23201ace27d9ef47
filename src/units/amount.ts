/** Money as people type it, to and from whole cents. */

const CENTS = 100

export type DecimalSign = '.' | ','

/** Cents as a number without a currency sign and without signs between thousands: `1234.50`. */
export const amountText = (cents: number, decimal: DecimalSign = '.'): string =>
  (cents / CENTS).toFixed(2).replace('.', decimal)

export type Amount = { readonly cents: number } | { readonly fault: string }

const PLAIN = /^\d+(?:[.,]\d{1,2})?$/
/** Thousands parted by the other sign: `1,234.50`, `1.234,50`. */
const PARTED =
  /^\d{1,3}(?:,\d{3})*\.\d{1,2}$|^\d{1,3}(?:\.\d{3})*,\d{1,2}$|^\d{1,3}(?:[ \u00A0\u202F']\d{3})+(?:[.,]\d{1,2})?$/
const TWO_WAYS = /^\d{1,3}(?:[.,]\d{3})+$/
/** A sign or a code of a currency before or behind. */
const CURRENCY = /^(?:[A-Z]{3}|\p{Sc})?\s*(.*?)\s*(?:[A-Z]{3}|\p{Sc})?$/u

const centsIn = (text: string): number => {
  const decimals = /[.,](\d{1,2})$/.exec(text)?.[1] ?? ''
  const whole = (decimals === '' ? text : text.slice(0, -decimals.length - 1)).replaceAll(/\D/g, '')
  return Number(whole) * CENTS + Number(decimals.padEnd(2, '0'))
}

/**
 * Whole cents of a typed amount, with a point or a comma before the cents, with or without a currency and signs between
 * thousands. What could be read two ways, such as `1,234`, is not guessed at.
 */
export const readAmount = (typed: string): Amount => {
  const text = CURRENCY.exec(typed.trim())?.[1] ?? ''
  if (PLAIN.test(text) || PARTED.test(text)) return { cents: centsIn(text) }
  if (TWO_WAYS.test(text))
    return { fault: `“${typed}” could be thousands or parts of one: write it with two decimals` }
  if (text.startsWith('-')) return { fault: `“${typed}” is less than nothing` }
  return { fault: `“${typed}” is no amount of money: write it as 12.50` }
}
