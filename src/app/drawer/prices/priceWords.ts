import { amountText } from '../../../units/amount'
import { money } from '../../../units/money'
import type { PriceRow } from '../../../model/priceRow'
import { dayNumber, STALE_DAYS } from '../../../model/quoteDate'
import type { BookReading } from '../../../layout/quoteReading'
import type { BookLine, Flaw } from './bookLines'

/** `box of 100`, or `piece` where one is one. */
export const packWords = ({ unit, pack }: PriceRow): string => (pack === 1 ? unit : `${unit} of ${pack}`)

/** `from 20: 9.60`, break by break. */
export const breakWords = ({ breaks }: PriceRow): string =>
  breaks.map(({ from, cents }) => `from ${from}: ${amountText(cents)}`).join(', ')

/** A price in the job's currency, a dash where there is none. */
export const priceWords = ({ cents }: PriceRow, currency: string): string =>
  cents === undefined ? '—' : money(cents, currency)

export const thingWords = ({ name, spec }: PriceRow): string => (spec === '' ? name : `${name}, ${spec}`)

/** Where a price is from, in a word. */
export const layerWord = ({ layer, isPlaceholder }: BookLine): string => {
  if (isPlaceholder) return 'Placeholder'
  return { base: 'Program', book: 'Book', quote: 'Quote' }[layer]
}

export const daysOld = ({ date }: PriceRow, today: string): number =>
  (dayNumber(today) ?? 0) - (dayNumber(date) ?? 0)

export const leadWords = ({ leadDays }: PriceRow): string => (leadDays === 1 ? '1 day' : `${leadDays} days`)

export const flawTitles: Readonly<Record<Flaw, string>> = {
  unpriced: 'Without a price',
  placeholder: 'Placeholders',
  stale: `Older than ${STALE_DAYS} days`,
}

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`

/** What the prices of this bay are worth, in sentences. */
export const bookSentence = (of: number, flaws: Readonly<Record<Flaw, number>>): string => {
  const words = [
    flaws.unpriced > 0 &&
      `${flaws.unpriced} of the ${counted(of, 'thing', 'things')} in this bay ${flaws.unpriced === 1 ? 'has' : 'have'} no price: no sum has ${flaws.unpriced === 1 ? 'it' : 'them'} in it.`,
    flaws.placeholder > 0 &&
      `${counted(flaws.placeholder, 'price is an invented placeholder', 'prices are invented placeholders')}: put in your own.`,
    flaws.stale > 0 &&
      `${counted(flaws.stale, 'price is', 'prices are')} more than ${STALE_DAYS} days old: ask again.`,
  ].filter((sentence) => sentence !== false)
  return words.length > 0
    ? words.join(' ')
    : `Everything in this bay has a price of its own, none older than ${STALE_DAYS} days.`
}

const FIELDS: readonly (readonly [keyof PriceRow, string])[] = [
  ['name', 'name'],
  ['spec', 'spec'],
  ['group', 'group'],
  ['unit', 'unit'],
  ['pack', 'pack'],
  ['breaks', 'price breaks'],
  ['supplier', 'supplier'],
  ['aisle', 'aisle'],
  ['leadDays', 'lead days'],
  ['waste', 'waste'],
  ['isWholePack', 'whole pack'],
  ['isTaxed', 'tax'],
  ['isReturnable', 'returns'],
  ['date', 'date'],
  ['note', 'note'],
]

/** What differs between two rows besides the price, by name. */
export const changedWords = (before: PriceRow, after: PriceRow): string =>
  FIELDS.filter(([field]) => JSON.stringify(before[field]) !== JSON.stringify(after[field]))
    .map(([, name]) => name)
    .join(', ')

export const layerNames = { book: 'the supplier’s book', quotes: 'this job’s quotes' } as const

/** What a file would do, in one sentence. */
export const readingSentence = (reading: BookReading): string => {
  const { added, changed, same, refused } = reading
  const parts = [
    `${counted(added.length, 'row', 'rows')} new in ${layerNames[reading.layer]}`,
    `${changed.length} changed`,
    counted(same, 'as it stands', 'as they stand'),
    `${counted(refused.length, 'line', 'lines')} left out`,
  ]
  return `${parts.join(', ')}. Nothing is taken yet.`
}

/** What else is to be known before a file is taken. */
export const readingNotes = ({ dated, covered, unknownColumns }: BookReading): readonly string[] =>
  [
    dated > 0 &&
      `${counted(dated, 'price has', 'prices have')} no date in the file and ${dated === 1 ? 'gets' : 'get'} today’s.`,
    covered > 0 &&
      `${counted(covered, 'row is', 'rows are')} covered by a quote of this job, which holds before the book.`,
    unknownColumns.length > 0 &&
      `The price book has no column ${unknownColumns.map((name) => `“${name}”`).join(', ')}: not read.`,
  ].filter((note) => note !== false)
