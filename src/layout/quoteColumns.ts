import { type PriceGroup, priceGroups, type PriceRow, type PriceWaste } from '../model/priceRow'
import { amountText, type DecimalSign, readAmount } from '../units/amount'
import { longestText, mostOf } from './counter'
import { readDate, type DateOrder } from './quoteDates'

/**
 * The price book as a sheet, column by column. Words of a cell that can't be taken come back as what is wrong with them, without a
 * full stop.
 */

/** What a cell says of its row, or what is wrong with it. */
export type Said = { readonly change: Partial<PriceRow> } | { readonly fault: string }

export interface Column {
  readonly name: string
  readonly write: (row: PriceRow, decimal: DecimalSign) => string
  /** Not there where the column only tells: it is known and not read. Numbers are read with either decimal sign. */
  readonly read?: (cell: string, dates: DateOrder | undefined) => Said
}

const said = (change: Partial<PriceRow>): Said => ({ change })

const NOTHING = said({})

/** An empty cell says nothing, except where a column has its own word for it. */
const unlessEmpty =
  (read: NonNullable<Column['read']>) =>
  (cell: string, dates: DateOrder | undefined): Said =>
    cell === '' ? NOTHING : read(cell, dates)

const text = (name: string, key: keyof typeof longestText): Column => ({
  name,
  write: (row) => row[key],
  read: unlessEmpty((cell) =>
    cell.length <= longestText[key]
      ? said({ [key]: cell })
      : { fault: `its ${name} has ${cell.length} letters, more than ${longestText[key]}` },
  ),
})

const whole = (cell: string, least: number, most: number): number | undefined => {
  const value = /^\d{1,9}$/.test(cell) ? Number(cell) : NaN
  return value >= least && value <= most ? value : undefined
}

const wholeNumber = (name: string, key: 'pack' | 'leadDays', least: number): Column => ({
  name,
  write: (row) => String(row[key]),
  read: unlessEmpty((cell) => {
    const value = whole(cell, least, mostOf[key])
    return value === undefined
      ? { fault: `its ${name}, “${cell}”, is no whole number from ${least} to ${mostOf[key]}` }
      : said({ [key]: value })
  }),
})

const yesNo: Readonly<Record<string, boolean>> = {
  yes: true,
  y: true,
  true: true,
  '1': true,
  no: false,
  n: false,
  false: false,
  '0': false,
}

const choice = (name: string, key: 'isWholePack' | 'isTaxed' | 'isReturnable'): Column => ({
  name,
  write: (row) => (row[key] ? 'yes' : 'no'),
  read: unlessEmpty((cell) => {
    const value = yesNo[cell.toLowerCase()]
    return value === undefined
      ? { fault: `its ${name}, “${cell}”, is neither yes nor no` }
      : said({ [key]: value })
  }),
})

/** Cents of a typed price within what a row may hold. */
export const readPrice = (cell: string): number | { readonly fault: string } => {
  const amount = readAmount(cell)
  if ('fault' in amount) return amount
  return amount.cents <= mostOf.cents
    ? amount.cents
    : { fault: `“${cell}” is more than ${amountText(mostOf.cents)}` }
}

/** An empty price is an answer: asked, and none was given. */
const price: Column = {
  name: 'price',
  write: ({ cents }, decimal) => (cents === undefined ? '' : amountText(cents, decimal)),
  read: (cell) => {
    if (cell === '') return said({ cents: undefined })
    const cents = readPrice(cell)
    return typeof cents === 'number' ? said({ cents }) : { fault: `its price ${cents.fault}` }
  },
}

type PriceBreak = PriceRow['breaks'][number]

const breakOf = (words: string): PriceBreak | { readonly fault: string } => {
  const [from = '', cost = '', ...more] = words.split(':').map((part) => part.trim())
  const count = whole(from, 1, mostOf.pack)
  if (count === undefined || cost === '' || more.length > 0)
    return { fault: `“${words.trim()}” is no break such as 10: 9.60` }
  const cents = readPrice(cost)
  return typeof cents === 'number' ? { from: count, cents } : cents
}

const isFault = (value: PriceBreak | { readonly fault: string }): value is { readonly fault: string } =>
  'fault' in value

/** `10: 9.60 | 50: 8.80` as breaks, ascending; or what is wrong with it. */
const breaksOf = (cell: string): Said => {
  const each = cell.split('|').map(breakOf)
  const wrong = each.find(isFault)
  if (wrong) return { fault: `its price breaks: ${wrong.fault}` }
  const breaks = each.filter((one): one is PriceBreak => !isFault(one)).toSorted((a, b) => a.from - b.from)
  if (new Set(breaks.map(({ from }) => from)).size < breaks.length)
    return { fault: 'its price breaks name one number twice' }
  return breaks.length <= mostOf.breaks
    ? said({ breaks })
    : { fault: `it has ${breaks.length} price breaks, more than ${mostOf.breaks}` }
}

const breaks: Column = {
  name: 'price breaks',
  write: (row, decimal) =>
    row.breaks.map(({ from, cents }) => `${from}: ${amountText(cents, decimal)}`).join(' | '),
  read: (cell) => (cell === '' ? said({ breaks: [] }) : breaksOf(cell)),
}

const PER_CENT = 100

/** A rule of spares in the words of a sheet: `cut`, `none`, `5 %`, `1 spare`. */
export const wasteWords = (waste: PriceWaste, decimal: DecimalSign = '.'): string => {
  if (waste.kind === 'share')
    return `${String(Math.round(waste.share * PER_CENT * 1000) / 1000).replace('.', decimal)} %`
  if (waste.kind === 'spares') return waste.count === 1 ? '1 spare' : `${waste.count} spares`
  return waste.kind
}

/** The rule of such words, in capitals or not; undefined for any others. */
const wasteOf = (words: string): PriceWaste | undefined => {
  const plain = words.trim().toLowerCase()
  if (plain === 'cut' || plain === 'none') return { kind: plain }
  const share = /^(\d{1,3}(?:[.,]\d{1,3})?)\s*%$/.exec(plain)?.[1]
  if (share !== undefined) {
    const of = Number(share.replace(',', '.')) / PER_CENT
    return of <= 1 ? { kind: 'share', share: of } : undefined
  }
  const count = whole(/^(\d+)\s*spares?$/.exec(plain)?.[1] ?? '', 0, mostOf.spares)
  return count === undefined ? undefined : { kind: 'spares', count }
}

const waste: Column = {
  name: 'waste',
  write: (row, decimal) => wasteWords(row.waste, decimal),
  read: unlessEmpty((cell) => {
    const rule = wasteOf(cell)
    return rule
      ? said({ waste: rule })
      : { fault: `its waste, “${cell}”, is none of cut, none, 5 %, 2 spares` }
  }),
}

const isGroup = (cell: string): cell is PriceGroup => priceGroups.some((group) => group === cell)

const group: Column = {
  name: 'group',
  write: (row) => row.group,
  read: unlessEmpty((cell) => {
    const named = cell.toLowerCase()
    return isGroup(named)
      ? said({ group: named })
      : { fault: `its group, “${cell}”, is none of ${priceGroups.join(', ')}` }
  }),
}

const date: Column = {
  name: 'quote date',
  write: (row) => row.date,
  read: unlessEmpty((cell, dates) => {
    const day = readDate(cell, dates)
    return 'fault' in day ? { fault: `its quote date ${day.fault}` } : said({ date: day.date })
  }),
}

const note: Column = { ...text('note', 'note'), write: (row) => row.note }

/** `12ft` of `lumber-2x4@12ft`, told for whoever reads the sheet; the key alone says it to the program. */
const stockLength: Column = {
  name: 'stock length',
  write: ({ key, stockMm }) => (stockMm === undefined ? '' : key.slice(key.lastIndexOf('@') + 1)),
}

/** The column that names the row; without it nothing can be read. */
export const KEY = 'key'

/** In the order of a file that is written; a file that is read may have them in any. */
export const columns: readonly Column[] = [
  { name: KEY, write: (row) => row.key },
  text('name', 'name'),
  text('spec', 'spec'),
  group,
  text('unit', 'unit'),
  wholeNumber('pack', 'pack', 1),
  stockLength,
  price,
  breaks,
  text('supplier', 'supplier'),
  text('aisle', 'aisle'),
  wholeNumber('lead days', 'leadDays', 0),
  waste,
  choice('whole pack', 'isWholePack'),
  choice('taxed', 'isTaxed'),
  choice('returnable', 'isReturnable'),
  date,
  note,
]
