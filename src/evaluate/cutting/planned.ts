import type { Board, CutLine, CutList, CutStock, StockCount } from '../../model/cutList'
import type { CutBoard, CuttingPlan, Unmade } from '../../solvers/cutting/plan'
import { fromTicks } from '../../units/length'

/** What is known of a list before its boards are planned. */
export type Asked = Pick<CutList, 'problem' | 'pieces' | 'stocks'>

/** What a plan says of a list. */
export type Planned = Pick<
  CutList,
  'lines' | 'boards' | 'bought' | 'leftovers' | 'netMm' | 'boughtMm' | 'cost' | 'cents' | 'tooLong' | 'ranOut'
>

const stockAt = ({ stocks }: Asked, index: number): CutStock => {
  const stock = stocks[index]
  if (stock === undefined) throw new RangeError(`A plan has boards of stock ${index}, of ${stocks.length}.`)
  return stock
}

const boardOf = (board: CutBoard, asked: Asked): Board => {
  const { stockMm, measuredMm, isLeftover } = stockAt(asked, board.stock)
  return {
    stockMm,
    measuredMm,
    isLeftover,
    count: board.count,
    pieces: board.cuts.map((cut) => ({
      lengthMm: fromTicks(cut.lengthTicks),
      count: cut.count,
      marks: asked.pieces[cut.piece]?.marks ?? [],
    })),
    offcutMm: fromTicks(board.offcutTicks),
  }
}

const total = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((sum, thing) => sum + of(thing), 0)

/** Boards of each length together, longest first. */
const countsOf = (boards: readonly Board[]): StockCount[] => {
  const counts = new Map<number, number>()
  for (const { stockMm, count } of boards) counts.set(stockMm, count + (counts.get(stockMm) ?? 0))
  return [...counts].map(([stockMm, count]) => ({ stockMm, count })).sort((a, b) => b.stockMm - a.stockMm)
}

/** What boards from the yard cost; undefined where one of them has no price. */
const centsOf = (bought: readonly StockCount[], stocks: readonly CutStock[]): number | undefined => {
  let sum = 0
  for (const { stockMm, count } of bought) {
    const stock = stocks.find((each) => !each.isLeftover && each.stockMm === stockMm)
    if (stock?.cents === undefined) return undefined
    sum += count * stock.cents
  }
  return sum
}

const linesOf = (pieces: readonly CutLine[], countAt: (index: number) => number): CutLine[] =>
  pieces.flatMap((line, index) => {
    const count = countAt(index)
    return count > 0 ? [{ ...line, count }] : []
  })

/** A cutting plan in the words of its list. */
export const planned = (plan: CuttingPlan, asked: Asked): Planned => {
  const { pieces, stocks } = asked
  const missing = (index: number, why?: Unmade['why']): number =>
    plan.unmade
      .filter((each) => each.piece === index && (why === undefined || each.why === why))
      .reduce((sum, { count }) => sum + count, 0)
  const lines = linesOf(pieces, (index) => (pieces[index]?.count ?? 0) - missing(index))
  const boards = plan.boards.map((board) => boardOf(board, asked))
  const bought = countsOf(boards.filter(({ isLeftover }) => !isLeftover))
  return {
    lines,
    boards,
    bought,
    leftovers: countsOf(boards.filter(({ isLeftover }) => isLeftover)),
    netMm: total(lines, ({ lengthMm, count }) => lengthMm * count),
    boughtMm: total(boards, ({ stockMm, count }) => stockMm * count),
    cost: plan.cost,
    cents: centsOf(bought, stocks),
    tooLong: linesOf(pieces, (index) => missing(index, 'too-long')),
    ranOut: linesOf(pieces, (index) => missing(index, 'no-stock-left')),
  }
}
