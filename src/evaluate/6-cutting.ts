import { stockOf, stocks } from '../catalogue/stock'
import type { StockItem } from '../catalogue/stock'
import type { Bench } from '../layout/bench'
import type { Settings } from '../layout/settings'
import type { Built, CutRule } from '../model/built'
import type { CutLine, CutList, StockCount } from '../model/cutList'
import type { PriceLayers } from '../model/priceRow'
import { rememberLast } from '../model/remember'
import { firstPlan } from '../solvers/cutting/firstPlan'
import { lowerBound } from '../solvers/cutting/lowerBound'
import { madeBy } from '../solvers/cutting/plan'
import type { Piece, PieceRule, Saw } from '../solvers/cutting/problem'
import { fromTicks, toTicks } from '../units/length'
import { benchStock, isLumber } from './cutting/benchStock'
import type { BenchStock } from './cutting/benchStock'
import { cutAlready } from './cutting/cutAlready'
import { planned } from './cutting/planned'
import { standingOf } from './cutting/standing'
import { longestFirst, tallyAll } from './pieceTally'
import type { PieceLine, StockTally } from './pieceTally'
import type { WantedOfStock } from './sawn/whatsCut'

/** What cutting depends on beside the pieces. */
export interface CuttingGiven {
  readonly settings: Pick<Settings, 'kerfMm' | 'trimMm' | 'lumberMm'>
  readonly bench: Bench
  readonly counter: PriceLayers
}

const orderOf: ReadonlyMap<string, number> = new Map(stocks.map((item, i) => [item.key, i]))

/** A rule is of a length by its name; the boards of that name are as long as they measure. */
const ruleOf = (cut: CutRule, { stocks: known }: BenchStock): PieceRule => {
  if (cut.kind === 'exact') return cut
  const named = known.find(
    ({ stockMm, isLeftover }) => !isLeftover && toTicks(stockMm) === toTicks(cut.stockMm),
  )
  const stockTicks = toTicks(named?.measuredMm ?? cut.stockMm)
  return cut.kind === 'uncut'
    ? { kind: 'uncut', stockTicks }
    : { kind: 'equal-parts', parts: cut.parts, stockTicks }
}

const pieceOf = ({ lengthTicks, count, minusTicks, cut }: PieceLine, stock: BenchStock): Piece => ({
  lengthTicks,
  count,
  minusTicks,
  rule: ruleOf(cut, stock),
})

const sawOf = (item: StockItem, { kerfMm, trimMm }: CuttingGiven['settings']): Saw => ({
  kerfTicks: item.kerf === 'saw' ? toTicks(kerfMm) : 0,
  trimTicks: isLumber(item) ? toTicks(trimMm) : 0,
})

const cutLine = ({ marks, lengthTicks, cut, count }: PieceLine): CutLine => ({
  marks,
  lengthMm: fromTicks(lengthTicks),
  count,
  cut,
})

const sawnOf = (stock: string, { sawn }: Bench): StockCount[] => {
  const counts = new Map<number, number>()
  for (const board of sawn)
    if (board.stock === stock) counts.set(board.stockMm, board.count + (counts.get(board.stockMm) ?? 0))
  return [...counts].map(([stockMm, count]) => ({ stockMm, count })).sort((a, b) => b.stockMm - a.stockMm)
}

/** All that a list says but its boards: what is wanted, from what, by which saw, and what is done already. */
type Question = Pick<
  CutList,
  'problem' | 'stock' | 'title' | 'pieces' | 'stocks' | 'costIs' | 'cutAlready' | 'sawn' | 'joints'
>

const wantedOf = (
  item: StockItem,
  { lines: byKey }: StockTally,
  stock: BenchStock,
  settings: CuttingGiven['settings'],
): WantedOfStock => {
  const lines = longestFirst(byKey)
  return {
    stock: item.key,
    lines,
    pieces: lines.map((line) => pieceOf(line, stock)),
    saw: sawOf(item, settings),
  }
}

const questionOf = (
  item: StockItem,
  tally: StockTally,
  stock: BenchStock,
  { settings, bench }: CuttingGiven,
): Question => {
  const { lines, pieces, saw } = wantedOf(item, tally, stock, settings)
  const cut = bench.cut.filter((each) => each.stock === item.key)
  const have = cut.length > 0 ? cutAlready(pieces, cut, saw) : []
  const withCount = (countOf: (line: PieceLine, index: number) => number): PieceLine[] =>
    lines.map((line, index) => ({ ...line, count: countOf(line, index) })).filter(({ count }) => count > 0)
  const left = withCount(({ count }, index) => count - (have[index] ?? 0))
  return {
    problem: { pieces: left.map((line) => pieceOf(line, stock)), stocks: stock.offers, saw },
    stock: item.key,
    title: item.title,
    pieces: left.map(cutLine),
    stocks: stock.stocks,
    costIs: stock.costIs,
    cutAlready: withCount((_, index) => have[index] ?? 0).map(cutLine),
    sawn: sawnOf(item.key, bench),
    joints: tally.joints,
  }
}

const cutListOf = (question: Question): CutList => {
  const first = firstPlan(question.problem)
  const plan = planned(first, question)
  const bound = lowerBound(madeBy(first, question.problem))
  return {
    ...question,
    ...plan,
    key: JSON.stringify([question.stock, question.problem]),
    bound,
    standing: standingOf(plan.cost, bound, 'first'),
  }
}

/** Cut lists remembered by what they were made from; a drag to and fro, or an undo, meets the last few again. */
const remembered = new Map<string, CutList>()
const MOST_REMEMBERED = 64

const remember = (asked: string, list: CutList): CutList => {
  // Taken out and put back, the newest stands last and the oldest goes first.
  remembered.delete(asked)
  remembered.set(asked, list)
  const [oldest] = remembered.keys()
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest)
  return list
}

const listFor = (question: Question): CutList => {
  const asked = JSON.stringify(question)
  return remember(asked, remembered.get(asked) ?? cutListOf(question))
}

/** What each material is cut from; looked up anew only when the lumber, the bench or the price book changes. */
const stockFinder = rememberLast(
  (
    lumberMm: readonly number[],
    measured: Bench['measured'],
    leftovers: Bench['leftovers'],
    counter: PriceLayers,
  ) => {
    const known = new Map<StockItem, BenchStock>()
    return (item: StockItem): BenchStock => {
      const found = known.get(item) ?? benchStock(item, lumberMm, { measured, leftovers }, counter)
      known.set(item, found)
      return found
    }
  },
)

/** Asks for each material in the order of the catalogue: what it is, its pieces, and what it is cut from. */
const eachStock = <T>(
  built: readonly Built[],
  { settings, bench, counter }: CuttingGiven,
  ask: (item: StockItem, tally: StockTally, stock: BenchStock) => T,
): T[] => {
  const stockFor = stockFinder(settings.lumberMm, bench.measured, bench.leftovers, counter)
  return [...tallyAll(built, bench.measured)]
    .map(([key, tally]) => ({ item: stockOf(key), tally }))
    .sort((a, b) => (orderOf.get(a.item.key) ?? 0) - (orderOf.get(b.item.key) ?? 0))
    .map(({ item, tally }) => ask(item, tally, stockFor(item)))
}

/**
 * One cut list for each material, in the order of the catalogue, with a first good plan of its boards and the bound
 * that no plan can beat. A material whose pieces, stock, prices and saw are as before keeps its very object.
 */
export const cutLists = (built: readonly Built[], given: CuttingGiven): CutList[] =>
  eachStock(built, given, (item, tally, stock) => listFor(questionOf(item, tally, stock, given)))

/** All pieces that these parts want of each material, cut already or not, in the order of the cut lists. */
export const wantedByStock = (built: readonly Built[], given: CuttingGiven): WantedOfStock[] =>
  eachStock(built, given, (item, tally, stock) => wantedOf(item, tally, stock, given.settings))
