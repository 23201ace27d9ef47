import { lumbers } from '../catalogue/lumber'
import { stockOf, stocks } from '../catalogue/stock'
import type { StockItem } from '../catalogue/stock'
import type { Settings } from '../layout/settings'
import type { Built, CutRule } from '../model/built'
import type { Board, CutLine, CutList, Standing } from '../model/cutList'
import { firstPlan } from '../solvers/cutting/firstPlan'
import { lowerBound } from '../solvers/cutting/lowerBound'
import type { CutBoard } from '../solvers/cutting/plan'
import type { CuttingProblem, PieceRule } from '../solvers/cutting/problem'
import { fromTicks, toTicks } from '../units/length'
import { longestFirst, tallyAll } from './pieceTally'
import type { PieceLine } from './pieceTally'

/** What the saw settings say of cutting. */
export type SawSettings = Pick<Settings, 'kerfMm' | 'trimMm' | 'lumberMm'>

const lumberKeys: ReadonlySet<string> = new Set(lumbers.map((lumber) => lumber.key))
const orderOf: ReadonlyMap<string, number> = new Map(stocks.map((item, i) => [item.key, i]))

const ruleOf = (cut: CutRule): PieceRule => {
  if (cut.kind === 'exact') return cut
  const stockTicks = toTicks(cut.stockMm)
  return cut.kind === 'uncut'
    ? { kind: 'uncut', stockTicks }
    : { kind: 'equal-parts', parts: cut.parts, stockTicks }
}

/** Lumber comes in the lengths the builder can get and is squared; all else comes in catalogue lengths, square. */
const problemOf = (lines: readonly PieceLine[], item: StockItem, settings: SawSettings): CuttingProblem => {
  const isLumber = lumberKeys.has(item.key)
  const lengthsMm = isLumber ? settings.lumberMm : item.lengthsMm
  return {
    pieces: lines.map(({ cut, ...piece }) => ({ ...piece, rule: ruleOf(cut) })),
    stocks: lengthsMm.map((lengthMm) => ({ lengthTicks: toTicks(lengthMm) })),
    saw: {
      kerfTicks: item.kerf === 'saw' ? toTicks(settings.kerfMm) : 0,
      trimTicks: isLumber ? toTicks(settings.trimMm) : 0,
    },
  }
}

const cutLine = ({ marks, lengthTicks, cut }: PieceLine, count: number): CutLine => ({
  marks,
  lengthMm: fromTicks(lengthTicks),
  count,
  cut,
})

const boardOf = ({ stockTicks, count, cuts, offcutTicks }: CutBoard, lines: readonly PieceLine[]): Board => ({
  stockMm: fromTicks(stockTicks),
  count,
  pieces: cuts.map((cut) => ({
    lengthMm: fromTicks(cut.lengthTicks),
    count: cut.count,
    marks: lines[cut.piece]?.marks ?? [],
  })),
  offcutMm: fromTicks(offcutTicks),
})

/** A first plan that costs no more than its bound needs no further proof. */
const standingOf = (cost: number, bound: number): Standing =>
  cost <= bound ? { kind: 'proven' } : { kind: 'first', share: cost / bound - 1 }

const cutListOf = (
  key: string,
  item: StockItem,
  lines: readonly PieceLine[],
  problem: CuttingProblem,
): CutList => {
  const plan = firstPlan(problem)
  const isTooLong = new Set(plan.tooLong.map(({ piece }) => piece))
  const boundTicks = lowerBound(problem)
  const made = lines.filter((_, i) => !isTooLong.has(i))
  return {
    key,
    problem,
    stock: item.key,
    title: item.title,
    lines: made.map((line) => cutLine(line, line.count)),
    boards: plan.boards.map((board) => boardOf(board, lines)),
    bought: plan.bought.map(({ stockTicks, count }) => ({ stockMm: fromTicks(stockTicks), count })),
    netMm: fromTicks(made.reduce((sum, line) => sum + line.count * line.lengthTicks, 0)),
    boughtMm: fromTicks(plan.boughtTicks),
    standing: standingOf(plan.boughtTicks, boundTicks),
    cents: undefined,
    boundMm: fromTicks(boundTicks),
    tooLong: lines.filter((_, i) => isTooLong.has(i)).map((line) => cutLine(line, line.count)),
  }
}

/** Cut lists remembered by what they were made from; a drag to and fro, or an undo, meets the last few again. */
const remembered = new Map<string, CutList>()
const MOST_REMEMBERED = 64

const remember = (key: string, list: CutList): CutList => {
  // Taken out and put back, the newest stands last and the oldest goes first.
  remembered.delete(key)
  remembered.set(key, list)
  const [oldest] = remembered.keys()
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest)
  return list
}

const listFor = (item: StockItem, lines: readonly PieceLine[], settings: SawSettings): CutList => {
  const problem = problemOf(lines, item, settings)
  const key = JSON.stringify([item.key, lines, problem.stocks, problem.saw])
  return remember(key, remembered.get(key) ?? cutListOf(key, item, lines, problem))
}

/**
 * One cut list for each material, in the order of the catalogue, with a first good plan of its boards and the bound
 * that no plan can beat. A material whose pieces, stock and saw are as before keeps its very object.
 */
export const cutLists = (built: readonly Built[], settings: SawSettings): CutList[] =>
  [...tallyAll(built)]
    .map(([key, lines]) => ({ item: stockOf(key), lines: longestFirst(lines) }))
    .sort((a, b) => (orderOf.get(a.item.key) ?? 0) - (orderOf.get(b.item.key) ?? 0))
    .map(({ item, lines }) => listFor(item, lines, settings))
