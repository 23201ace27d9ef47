const CENTS = 100

/** Thousands apart by commas: `1,386`. */
const grouped = (whole: number): string => String(whole).replace(/\B(?=(\d{3})+$)/g, ',')

/** Money from whole cents, written with the job's currency before it: `$1,386.40`. */
export const money = (cents: number, currency: string): string => {
  const size = Math.abs(cents)
  const small = String(size % CENTS).padStart(2, '0')
  return `${cents < 0 ? '-' : ''}${currency}${grouped(Math.floor(size / CENTS))}.${small}`
}

/** Money from whole cents, in the currency sign that a job starts with: `$12.50`. */
export const dollars = (cents: number): string => money(Math.round(cents), '$')

/** From so many cents on a sum at a glance is in whole coins. */
const GLANCE_CENTS = 1000

/** Money at a glance, from whole cents: `$1,386`, but `$0.40`. */
export const roundMoney = (cents: number, currency: string): string =>
  Math.abs(cents) < GLANCE_CENTS
    ? money(cents, currency)
    : money(Math.round(cents / CENTS) * CENTS, currency).slice(0, -'.00'.length)
