import { dayNumber } from '../model/quoteDate'

/** Days as sheets write them. A sheet that a spreadsheet has saved no longer has the ISO dates that it was given. */

/** Which of the first two numbers of `3/4/2026` is the day. */
export type DateOrder = 'day-first' | 'month-first'

const SLASHED = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4})$/
const DOTTED = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/

const MOST_MONTHS = 12

/** The order that all the dates of a sheet together show; undefined where none shows it, or two gainsay each other. */
export const dateOrderOf = (cells: readonly string[]): DateOrder | undefined => {
  const pairs = cells.flatMap((cell) => {
    const [, first, second] = SLASHED.exec(cell) ?? []
    return first && second ? [[Number(first), Number(second)] as const] : []
  })
  const isDayFirst = pairs.some(([first]) => first > MOST_MONTHS)
  const isMonthFirst = pairs.some(([, second]) => second > MOST_MONTHS)
  if (isDayFirst === isMonthFirst) return undefined
  return isDayFirst ? 'day-first' : 'month-first'
}

const iso = (year: string, month: string, day: string): string =>
  `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`

const asIso = (cell: string, order: DateOrder | undefined): string | undefined => {
  const [, day, month, year] = DOTTED.exec(cell) ?? []
  if (day && month && year) return iso(year, month, day)
  const [, first, second, slashedYear] = SLASHED.exec(cell) ?? []
  if (!first || !second || !slashedYear) return cell
  if (first === second || order === 'month-first') return iso(slashedYear, first, second)
  return order === 'day-first' ? iso(slashedYear, second, first) : undefined
}

/** A day as an ISO date: `2026-04-03`, `3.4.2026`, and `3/4/2026` where the sheet shows which is the day. */
export const readDate = (
  cell: string,
  order: DateOrder | undefined,
): { readonly date: string } | { readonly fault: string } => {
  const date = asIso(cell, order)
  if (date === undefined) return { fault: `“${cell}” could be two days: write it as 2026-04-03` }
  return dayNumber(date) === undefined ? { fault: `“${cell}” is no day: write it as 2026-04-03` } : { date }
}
