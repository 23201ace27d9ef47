import { lumbers } from '../../catalogue/lumber'
import { rowIn, stockCents } from '../../catalogue/priceBook/stockPrices'
import { stockKey } from '../../catalogue/stock'
import type { StockItem } from '../../catalogue/stock'
import type { Bench } from '../../layout/bench'
import type { CutStock } from '../../model/cutList'
import type { PriceLayers } from '../../model/priceRow'
import type { Stock } from '../../solvers/cutting/problem'
import { fromTicks, toTicks } from '../../units/length'

const lumberKeys: ReadonlySet<string> = new Set(lumbers.map((lumber) => lumber.key))

/** Lumber comes in the lengths that the builder can get and is squared; all else comes in catalogue lengths, square. */
export const isLumber = ({ key }: StockItem): boolean => lumberKeys.has(key)

/** How much longer than its name a length of a stock really is, mm. */
export const overOf = (stock: string, measured: Bench['measured']): number =>
  measured.find((each) => each.stock === stock)?.overMm ?? 0

/** A price that no dated row stands behind is nobody's quote. */
const isPlaceholder = (stock: string, stockMm: number, { book, quotes }: PriceLayers): boolean => {
  const key = stockKey(stock, stockMm)
  const row = rowIn(quotes, key) ?? rowIn(book, key)
  return row === undefined || row.date === ''
}

const yardStock = (stock: string, stockMm: number, overMm: number, prices: PriceLayers): CutStock => ({
  stockMm,
  measuredMm: stockMm + overMm,
  isLeftover: false,
  cents: stockCents(stock, stockMm, prices),
  isPlaceholder: isPlaceholder(stock, stockMm, prices),
})

/** Leftovers of one length are one stock, however often they were written down. */
const leftoverCounts = (stock: string, leftovers: Bench['leftovers']): ReadonlyMap<number, number> => {
  const counts = new Map<number, number>()
  for (const { lengthMm, count } of leftovers.filter((each) => each.stock === stock)) {
    const ticks = toTicks(lengthMm)
    counts.set(ticks, count + (counts.get(ticks) ?? 0))
  }
  return counts
}

const leftoverStock = (lengthMm: number): CutStock => ({
  stockMm: lengthMm,
  measuredMm: lengthMm,
  isLeftover: true,
  cents: 0,
  isPlaceholder: false,
})

/** What boards of a material can be taken from, and the same as the cutter knows it, in the same order. */
export interface BenchStock {
  readonly stocks: readonly CutStock[]
  readonly offers: readonly Stock[]
  readonly costIs: 'cents' | 'ticks'
}

const offerOf = ({ measuredMm, cents }: CutStock, costIs: BenchStock['costIs']): Stock => {
  const lengthTicks = toTicks(measuredMm)
  return costIs === 'cents' && cents !== undefined ? { lengthTicks, cost: cents } : { lengthTicks }
}

/** The lengths that the yard sells, with their prices where all have one; then what lies about, which costs nothing. */
export const benchStock = (
  item: StockItem,
  lumberMm: readonly number[],
  { measured, leftovers }: Pick<Bench, 'measured' | 'leftovers'>,
  prices: PriceLayers,
): BenchStock => {
  const lengthsMm = isLumber(item) ? lumberMm : item.lengthsMm
  const overMm = overOf(item.key, measured)
  const yard = lengthsMm.map((stockMm) => yardStock(item.key, stockMm, overMm, prices))
  const costIs = yard.every(({ cents }) => cents !== undefined) ? 'cents' : 'ticks'
  const onHand = [...leftoverCounts(item.key, leftovers)]
  return {
    stocks: [...yard, ...onHand.map(([ticks]) => leftoverStock(fromTicks(ticks)))],
    offers: [
      ...yard.map((stock) => offerOf(stock, costIs)),
      ...onHand.map(([lengthTicks, most]) => ({ lengthTicks, cost: 0, most })),
    ],
    costIs,
  }
}
