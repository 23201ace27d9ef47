import type { CuttingProblem } from '../../../src/solvers/cutting/problem'

/** Wood left on a board. */
interface Open {
  readonly rest: number
}

interface Setup {
  readonly loose: readonly number[]
  readonly open: readonly Open[]
  /** How many boards of each stock are left. */
  readonly left: readonly number[]
  readonly cost: number
}

const trimmed = (stock: number, { saw }: CuttingProblem): number =>
  saw.trimTicks === 0 ? stock : stock - saw.trimTicks - saw.kerfTicks

const afterCut = (rest: number, length: number, kerf: number): number => Math.max(0, rest - length - kerf)

/** Boards that the rules ask for, the cheapest of their length first, and the pieces that are left to choose. */
const setUp = (problem: CuttingProblem): Setup => {
  const { kerfTicks } = problem.saw
  const loose: number[] = []
  const open: Open[] = []
  const left = problem.stocks.map(({ most = Infinity }) => most)
  let cost = 0
  const costOf = (at: number): number => problem.stocks[at]!.cost ?? problem.stocks[at]!.lengthTicks
  const takeBoard = (length: number): boolean => {
    const [at] = [...problem.stocks.keys()]
      .filter((each) => problem.stocks[each]!.lengthTicks === length && left[each]! > 0)
      .sort((a, b) => costOf(a) - costOf(b))
    if (at === undefined) return false
    left[at]! -= 1
    cost += costOf(at)
    return true
  }
  // The board of each rule that has room for another mate.
  const started = new Map<string, { mates: number; at: number }>()
  for (const { rule, count, lengthTicks, minusTicks } of problem.pieces) {
    const least = Math.max(1, lengthTicks - minusTicks)
    for (let i = 0; i < count; i += 1) {
      if (rule.kind === 'uncut' && rule.stockTicks >= least && takeBoard(rule.stockTicks)) continue
      if (rule.kind === 'equal-parts') {
        const board = trimmed(rule.stockTicks, problem)
        const mate = Math.floor((board - (rule.parts - 1) * kerfTicks) / rule.parts)
        const name = `${rule.stockTicks}/${rule.parts}`
        const before = started.get(name)
        if (mate > 0 && mate + 1 >= least) {
          if (before !== undefined && before.mates < rule.parts) {
            before.mates += 1
            // Mates of a whole board leave nothing to use.
            const rest = before.mates === rule.parts ? 0 : afterCut(open[before.at]!.rest, mate, kerfTicks)
            open[before.at] = { rest }
            continue
          }
          if (takeBoard(rule.stockTicks)) {
            started.set(name, { mates: 1, at: open.length })
            open.push({ rest: afterCut(board, mate, kerfTicks) })
            continue
          }
        }
      }
      loose.push(least)
    }
  }
  return { loose: loose.sort((a, b) => b - a), open, left, cost }
}

/**
 * Least cost that makes all pieces but those longer than any board, by trying every piece on every board; Infinity where there are
 * not enough boards. Some six loose pieces at most.
 */
export const leastCost = (problem: CuttingProblem): number => {
  const { kerfTicks } = problem.saw
  const { loose, open, left, cost } = setUp(problem)
  const onOffer = problem.stocks.filter(({ most }) => most !== 0)
  const longest = Math.max(0, ...onOffer.map(({ lengthTicks }) => trimmed(lengthTicks, problem)))
  const pieces = loose.filter((length) => length <= longest)
  let best = Infinity
  const place = (index: number, boards: readonly Open[], supply: readonly number[], spent: number): void => {
    if (spent >= best) return
    const length = pieces[index]
    if (length === undefined) {
      best = spent
      return
    }
    const tried = new Set<number>()
    for (const [at, { rest }] of boards.entries()) {
      if (rest < length || tried.has(rest)) continue
      tried.add(rest)
      place(index + 1, boards.with(at, { rest: afterCut(rest, length, kerfTicks) }), supply, spent)
    }
    for (const [at, stock] of problem.stocks.entries()) {
      const wood = trimmed(stock.lengthTicks, problem)
      if (wood < length || supply[at]! < 1) continue
      const board = { rest: afterCut(wood, length, kerfTicks) }
      const price = stock.cost ?? stock.lengthTicks
      place(index + 1, [...boards, board], supply.with(at, supply[at]! - 1), spent + price)
    }
  }
  place(0, open, left, cost)
  return best
}
