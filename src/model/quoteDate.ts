import type { PriceRow } from './priceRow'

/** Days of quotes, as ISO dates such as `2026-04-03`. Today is always handed in: nothing here reads a clock. */

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)

const monthDays = (year: number): readonly number[] => [
  31,
  isLeap(year) ? 29 : 28,
  31,
  30,
  31,
  30,
  31,
  31,
  30,
  31,
  30,
  31,
]

const daysBefore = (year: number): number => {
  const past = year - 1
  return 365 * past + Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400)
}

/** Days from 1 January of the year 1, by the Gregorian calendar; undefined for what is no day of it. */
export const dayNumber = (isoDate: string): number | undefined => {
  const [, year = 0, month = 0, day = 0] = (ISO.exec(isoDate) ?? []).map(Number)
  const months = monthDays(year)
  if (year < 1 || day < 1 || day > (months[month - 1] ?? 0)) return undefined
  return daysBefore(year) + months.slice(0, month - 1).reduce((sum, days) => sum + days, 0) + day
}

/** Older than this, days, a price is marked. */
export const STALE_DAYS = 60

/** Whether a quote is more than 60 days old on the day; a placeholder is nobody's quote and has no age. */
export const isStale = ({ date }: Pick<PriceRow, 'date'>, today: string): boolean => {
  const [quoted, now] = [dayNumber(date), dayNumber(today)]
  return quoted !== undefined && now !== undefined && now - quoted > STALE_DAYS
}
