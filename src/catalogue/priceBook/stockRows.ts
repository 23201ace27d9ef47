import type { PriceRow } from '../../model/priceRow'
import { feet, inches } from '../../units/length'
import { conduits } from '../conduit'
import { gutters } from '../gutter'
import { lumbers } from '../lumber'
import { drainPipes, polys } from '../pipe'
import { stockKey, type StockItem, stocks } from '../stock'
import { placeholderRow, share, type Shelf } from './placeholderRow'
import { placeholderStockCents } from './stockPrices'

/** How one family of stock is sold. */
interface Sold {
  readonly shelf: Shelf
  readonly unit: string
  readonly waste: Pick<PriceRow, 'waste'>
}

/** The cutting plan says how much of it is bought, and nothing is added. */
const AS_CUT = { waste: { kind: 'cut' } } as const

const yard: Shelf = { group: 'lumber', supplier: 'Lumber yard', aisle: 'Dressed softwood', leadDays: 2 }
const electrical: Shelf = { group: 'conduit', supplier: 'Electrical counter', aisle: 'Conduit', leadDays: 1 }
const roofing: Shelf = { group: 'gutter', supplier: 'Hardware store', aisle: 'Roof gutter', leadDays: 3 }
const drains: Shelf = { group: 'drain', supplier: 'Plumbing counter', aisle: 'Drain pipe', leadDays: 2 }
const irrigation: Shelf = { group: 'pipe', supplier: 'Irrigation house', aisle: 'Coils', leadDays: 5 }

/** Shares beyond the plan, common practice, no source: 2 % of conduit is bent or dented, 3 % of microtube lost at bundle ends. */
const board: Sold = { shelf: yard, unit: 'board', waste: AS_CUT }
const stick: Sold = { shelf: electrical, unit: 'stick', waste: share(0.02) }
const section: Sold = { shelf: roofing, unit: 'section', waste: AS_CUT }
const pipe: Sold = { shelf: drains, unit: 'stick', waste: AS_CUT }
const coil: Sold = { shelf: irrigation, unit: 'coil', waste: AS_CUT }
const microtube: Sold = { ...coil, waste: share(0.03) }

const soldAs: ReadonlyMap<string, Sold> = new Map([
  ...lumbers.map(({ key }) => [key, board] as const),
  ...conduits.map(({ key }) => [key, stick] as const),
  ...gutters.map(({ key }) => [key, section] as const),
  ...drainPipes.map(({ key }) => [key, pipe] as const),
  ...polys.map(({ key, family }) => [key, family === 'microtube' ? microtube : coil] as const),
])

/** `12 ft` of `lumber-2x4@12ft`. */
const lengthWords = (key: string): string => key.slice(key.lastIndexOf('@') + 1).replace(/(ft|in)$/, ' $1')

const rowOf = ({ key: stock, title }: StockItem, stockMm: number): PriceRow[] => {
  const sold = soldAs.get(stock)
  if (!sold) return []
  const key = stockKey(stock, stockMm)
  const words = { key, name: title, spec: lengthWords(key), unit: sold.unit, stockMm }
  return [
    placeholderRow(sold.shelf, { ...words, cents: placeholderStockCents(stock, stockMm), ...sold.waste }),
  ]
}

/** Every stock in every length that the catalogue knows. */
export const stockRows: readonly PriceRow[] = stocks.flatMap((item) =>
  item.lengthsMm.flatMap((lengthMm) => rowOf(item, lengthMm)),
)

const KEY = /^(.+)@(\d+(?:\.\d+)?)(ft|in)$/

/** The length in a key, mm: only as `stockKey` writes it. */
const lengthIn = (stock: string, digits: string, unit: string, key: string): number | undefined => {
  const lengthMm = Number(digits) * (unit === 'ft' ? feet(1) : inches(1))
  return stockKey(stock, lengthMm) === key ? lengthMm : undefined
}

/** The row of a stock in a length that a builder gets and the catalogue does not list, such as `lumber-2x4@9ft`. */
export const stockRowFor = (key: string): PriceRow | undefined => {
  const [, stock = '', digits = '', unit = ''] = KEY.exec(key) ?? []
  const item = stocks.find((each) => each.key === stock)
  const lengthMm = item && lengthIn(stock, digits, unit, key)
  return lengthMm ? rowOf(item, lengthMm)[0] : undefined
}
