import type { Counter } from '../../layout/counter'
import type { ShopLine, ShopList, SupplierList } from '../../model/shop'
import { isStale } from '../../model/quoteDate'
import { blank, type Cell, type Column, counted, type Row, said, type Table } from '../../model/table'
import { money } from '../../units/money'
import type { Units } from '../../units/length'
import { aislesOf } from './shopText'
import {
  amountWords,
  lineNotes,
  packsWords,
  packWords,
  priceWords,
  spareWords,
  supplierSum,
  supplierWords,
  thingWords,
  totalRows,
} from './shopWords'

/** Who reads the list, and on which day, an ISO date. */
export interface Buyer {
  readonly counter: Pick<Counter, 'currency' | 'tax'>
  readonly units: Units
  readonly day: string
}

const COLUMNS: readonly Column[] = [
  { key: 'aisle', title: 'Aisle', unit: 'text' },
  { key: 'item', title: 'Item', unit: 'text', isName: true },
  { key: 'needed', title: 'Needed', unit: 'count' },
  { key: 'spare', title: 'Spare', unit: 'count' },
  { key: 'pack', title: 'Sold by', unit: 'text' },
  { key: 'packs', title: 'Buy', unit: 'count', isMain: true },
  { key: 'packCents', title: 'One costs', unit: 'cents' },
  { key: 'boughtCents', title: 'Costs', unit: 'cents' },
  { key: 'note', title: 'To know', unit: 'text' },
]

/** A sum of money, or a dash where nobody knows it. */
const priced = (cents: number | undefined, { counter: { currency } }: Buyer): Cell =>
  cents === undefined ? blank(priceWords(undefined, currency)) : counted(cents, money(cents, currency))

/** A paper is read on later days than its own: each price that somebody asked bears its date. */
const askedWords = ({ price: { row } }: ShopLine, day: string): readonly string[] =>
  row.date === '' || isStale(row, day) ? [] : [`Asked on ${row.date}`]

const lineRow = (line: ShopLine, aisle: string, buyer: Buyer): Row => {
  const { units, day, counter } = buyer
  return {
    key: line.key,
    cells: [
      said(aisle),
      said(thingWords(line)),
      counted(line.needed, amountWords(line.needed, line.unit, units)),
      counted(line.spare, spareWords(line, units)),
      said(packWords(line, units)),
      counted(line.packs, packsWords(line, units)),
      priced(line.packCents, buyer),
      priced(line.boughtCents, buyer),
      said([...lineNotes(line, counter.currency, units, day), ...askedWords(line, day)].join('. ')),
    ],
  }
}

const sumRow = (list: SupplierList, { counter: { currency } }: Buyer): Row => ({
  key: 'together',
  isSum: true,
  cells: COLUMNS.map(({ key }) => {
    if (key === 'item') return said('Together')
    return key === 'boughtCents' ? counted(list.totals.boughtCents, supplierSum(list, currency)) : blank()
  }),
})

/** `plumbing-counter` of `Plumbing counter`. */
const slug = (supplier: string): string =>
  supplier
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '') || 'nobody'

/** All that is bought in one place, in the order in which one walks by it. */
export const supplierTable = (list: SupplierList, buyer: Buyer): Table => ({
  id: `shop-${slug(list.supplier)}`,
  title: supplierWords(list),
  columns: COLUMNS,
  rows: [
    ...aislesOf(list.lines).flatMap(({ aisle, lines }) => lines.map((line) => lineRow(line, aisle, buyer))),
    sumRow(list, buyer),
  ],
})

const TOTAL_KEYS = ['needed', 'bought', 'tax', 'to-pay']

/** What the whole list comes to, in the order in which it is paid. */
export const totalsTable = ({ totals }: Pick<ShopList, 'totals'>, { counter }: Buyer): Table => {
  const { neededCents, boughtCents, taxCents } = totals
  const cents = [neededCents, boughtCents, taxCents, boughtCents + taxCents]
  return {
    id: 'shop-totals',
    title: 'What it comes to',
    columns: [
      { key: 'what', title: 'What', unit: 'text' },
      { key: 'cents', title: 'Sum', unit: 'cents', isMain: true },
    ],
    rows: totalRows(totals, counter.tax, counter.currency).map(([name, sum], index) => ({
      key: TOTAL_KEYS[index] ?? name,
      cells: [said(name), counted(cents[index] ?? 0, sum)],
    })),
  }
}
