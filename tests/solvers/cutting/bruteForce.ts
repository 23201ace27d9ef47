import type { CuttingProblem } from '../../../src/solvers/cutting/problem'

/** Wood left on a board and whether a cut stands between it and the last piece. */
interface Open {
  rest: number
  readonly cost: number
}

interface Setup {
  readonly loose: number[]
  readonly open: Open[]
}

const trimmed = (stock: number, { saw }: CuttingProblem): number =>
  saw.trimTicks === 0 ? stock : stock - saw.trimTicks - saw.kerfTicks

const afterCut = (rest: number, length: number, kerf: number): number => Math.max(0, rest - length - kerf)

/** Boards that the rules ask for, and the pieces that are left to choose. */
const setUp = (problem: CuttingProblem): Setup => {
  const { kerfTicks } = problem.saw
  const loose: number[] = []
  const open: Open[] = []
  for (const { rule, count, lengthTicks, minusTicks } of problem.pieces) {
    const least = Math.max(1, lengthTicks - minusTicks)
    const onOffer = (stock: number) => problem.stocks.some((each) => each.lengthTicks === stock)
    if (rule.kind === 'uncut' && onOffer(rule.stockTicks) && rule.stockTicks >= least) {
      for (let i = 0; i < count; i += 1) open.push({ rest: 0, cost: rule.stockTicks })
      continue
    }
    if (rule.kind === 'equal-parts' && onOffer(rule.stockTicks)) {
      const board = trimmed(rule.stockTicks, problem)
      const mate = Math.floor((board - (rule.parts - 1) * kerfTicks) / rule.parts)
      if (mate + 1 >= least) {
        for (let i = 0; i < count; i += 1) {
          if (i % rule.parts === 0) open.push({ rest: board, cost: rule.stockTicks })
          const last = open.at(-1)!
          last.rest = afterCut(last.rest, mate, kerfTicks)
        }
        // Mates of a whole board leave nothing to use.
        continue
      }
    }
    for (let i = 0; i < count; i += 1) loose.push(least)
  }
  return { loose: loose.sort((a, b) => b - a), open }
}

/** Least total length that makes all pieces, by trying every piece on every board. Some six loose pieces at most. */
export const leastBought = (problem: CuttingProblem): number => {
  const { kerfTicks } = problem.saw
  const stocks = [...new Set(problem.stocks.map((stock) => stock.lengthTicks))]
  const longest = Math.max(0, ...stocks.map((stock) => trimmed(stock, problem)))
  const { loose, open } = setUp(problem)
  const pieces = loose.filter((length) => length <= longest)
  let best = Infinity
  const place = (index: number, boards: readonly Open[], cost: number): void => {
    if (cost >= best) return
    const length = pieces[index]
    if (length === undefined) {
      best = cost
      return
    }
    for (const [at, board] of boards.entries())
      if (board.rest >= length) {
        const rest = afterCut(board.rest, length, kerfTicks)
        place(index + 1, boards.with(at, { ...board, rest }), cost)
      }
    for (const stock of stocks)
      if (trimmed(stock, problem) >= length) {
        const rest = afterCut(trimmed(stock, problem), length, kerfTicks)
        place(index + 1, [...boards, { rest, cost: stock }], cost + stock)
      }
  }
  place(
    0,
    open,
    open.reduce((sum, board) => sum + board.cost, 0),
  )
  return best
}
