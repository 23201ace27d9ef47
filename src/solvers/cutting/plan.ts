import { costOf, roomOf } from './problem'
import type { CuttingProblem, Saw } from './problem'

/** Like pieces on one board. */
export interface Cut {
  /** Index of the piece in the problem. */
  readonly piece: number
  /** As it is to be cut: at most the piece's tolerance under its length. A whole stick used as it comes may be longer. */
  readonly lengthTicks: number
  /** On each board. */
  readonly count: number
}

/** Boards cut alike. */
export interface CutBoard {
  /** Index of its stock in the problem. */
  readonly stock: number
  readonly stockTicks: number
  readonly count: number
  /** In the order of cutting, longest first. */
  readonly cuts: readonly Cut[]
  /** What is left after the last cut; a sliver that the saw eats is nothing. */
  readonly offcutTicks: number
}

/** Pieces that are not made: no board on offer is as long, or there are too few boards of those that are. */
export interface Unmade {
  readonly piece: number
  readonly count: number
  readonly why: 'too-long' | 'no-stock-left'
}

export interface CuttingPlan {
  /** Longest stock first, then by their pieces, longest first. */
  readonly boards: readonly CutBoard[]
  /** Boards of each stock that is used, leftovers as well, longest first; `stock` is an index in the problem. */
  readonly bought: readonly { readonly stock: number; readonly stockTicks: number; readonly count: number }[]
  /** Sum of what the boards cost, in the unit of `Stock.cost`. */
  readonly cost: number
  /** All boards, leftovers as well. */
  readonly boardCount: number
  /** Length of the boards that cost something; leftovers that cost nothing are not bought. */
  readonly boughtTicks: number
  readonly unmade: readonly Unmade[]
}

const total = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((sum, thing) => sum + of(thing), 0)

/** Ticks that a board's pieces take with a kerf each, to hold against `roomOf`. */
export const takenOf = (cuts: readonly Cut[], { kerfTicks }: Saw): number =>
  total(cuts, (cut) => cut.count * (cut.lengthTicks + kerfTicks))

/** So many boards of a stock cut alike; `stock` is an index in the problem. */
export const cutBoard = (
  stock: number,
  count: number,
  cuts: readonly Cut[],
  { stocks, saw }: Pick<CuttingProblem, 'stocks' | 'saw'>,
): CutBoard => {
  const stockTicks = stocks[stock]?.lengthTicks
  if (stockTicks === undefined) throw new RangeError(`There is no stock ${stock} among ${stocks.length}.`)
  const offcutTicks = Math.max(0, roomOf(stockTicks, saw) - takenOf(cuts, saw) - saw.kerfTicks)
  return { stock, stockTicks, count, cuts, offcutTicks }
}

/** What a plan is judged by, each before the next: what it costs, its boards, and the length bought. */
export type Values = readonly [cost: number, boards: number, boughtTicks: number]

/** What one board of a stock adds to the values of a plan. */
export const valuesOfStock = (stock: CuttingProblem['stocks'][number]): Values => {
  const cost = costOf(stock)
  return [cost, 1, cost > 0 ? stock.lengthTicks : 0]
}

/** The values of boards taken from these stocks. */
export const valuesOf = (
  boards: readonly Pick<CutBoard, 'stock' | 'count'>[],
  stocks: CuttingProblem['stocks'],
): Values => {
  const sum: [number, number, number] = [0, 0, 0]
  for (const { stock, count } of boards) {
    const each = stocks[stock]
    if (each === undefined) continue
    const [cost, board, ticks] = valuesOfStock(each)
    sum[0] += count * cost
    sum[1] += count * board
    sum[2] += count * ticks
  }
  return sum
}

/** Less than nothing where the first are better, by the first value in which they differ. */
export const compareValues = (these: Values, those: Values): number =>
  these[0] - those[0] || these[1] - those[1] || these[2] - those[2]

const patternOf = ({ stock, cuts }: CutBoard): string =>
  `${stock}:${cuts.map((cut) => `${cut.piece}*${cut.count}@${cut.lengthTicks}`).join(',')}`

const mergeLike = (boards: readonly CutBoard[]): CutBoard[] => {
  const merged = new Map<string, CutBoard>()
  for (const board of boards) {
    const pattern = patternOf(board)
    merged.set(pattern, { ...board, count: board.count + (merged.get(pattern)?.count ?? 0) })
  }
  return [...merged.values()]
}

/** Which comes first at the saw: the longer stock, of two alike as the problem has them; then the board whose pieces are longer. */
const bySaw = (a: CutBoard, b: CutBoard): number => {
  if (a.stock !== b.stock) return b.stockTicks - a.stockTicks || a.stock - b.stock
  const differs = a.cuts.findIndex((cut, i) => cut.lengthTicks !== b.cuts[i]?.lengthTicks)
  return (b.cuts[differs]?.lengthTicks ?? 0) - (a.cuts[differs]?.lengthTicks ?? 0)
}

const boughtOf = (boards: readonly CutBoard[]): CuttingPlan['bought'] => {
  const lines = new Map<number, CuttingPlan['bought'][number]>()
  for (const { stock, stockTicks, count } of boards)
    lines.set(stock, { stock, stockTicks, count: count + (lines.get(stock)?.count ?? 0) })
  return [...lines.values()]
}

/** Boards gathered into a plan: like boards merged, in the order of the saw, with what has to be bought. */
export const planOf = (
  boards: readonly CutBoard[],
  unmade: readonly Unmade[],
  { stocks }: Pick<CuttingProblem, 'stocks'>,
): CuttingPlan => {
  const sorted = mergeLike(boards).sort(bySaw)
  const [cost, boardCount, boughtTicks] = valuesOf(sorted, stocks)
  return { boards: sorted, bought: boughtOf(sorted), cost, boardCount, boughtTicks, unmade }
}

/** The problem of what a plan makes: the pieces that it leaves unmade are not wanted. */
export const madeBy = ({ unmade }: Pick<CuttingPlan, 'unmade'>, problem: CuttingProblem): CuttingProblem => {
  if (unmade.length === 0) return problem
  const without = (index: number): number =>
    total(
      unmade.filter(({ piece }) => piece === index),
      ({ count }) => count,
    )
  return {
    ...problem,
    pieces: problem.pieces.map((piece, index) => ({ ...piece, count: piece.count - without(index) })),
  }
}
