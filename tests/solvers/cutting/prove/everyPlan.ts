import type { CuttingProblem } from '../../../../src/solvers/cutting/problem'

/*
 * Every way of cutting a few pieces, one by one: no patterns, no prices, no relaxation. Shares nothing with the prover.
 */

/** Cost, boards and length of boards that cost something. */
export type Aims = readonly [cost: number, boards: number, length: number]

interface Open {
  readonly rest: number
  readonly stock: number
}

const isBetter = (these: Aims, those: Aims | undefined): boolean => {
  if (those === undefined) return true
  const differs = these.findIndex((aim, i) => aim !== those[i])
  return differs >= 0 && these[differs]! < those[differs]!
}

/** The least cost, of these the fewest boards, of these the least length; undefined where the boards can't make all pieces. */
export const bestOfAll = ({ pieces, stocks, saw }: CuttingProblem): Aims | undefined => {
  const { kerfTicks, trimTicks } = saw
  const lengths = pieces
    .flatMap(({ count, lengthTicks, minusTicks }) =>
      Array.from({ length: count }, () => Math.max(1, lengthTicks - minusTicks)),
    )
    .sort((a, b) => b - a)
  const start = stocks.map(({ lengthTicks }) =>
    trimTicks === 0 ? lengthTicks : lengthTicks - trimTicks - kerfTicks,
  )
  let best: Aims | undefined
  const place = (index: number, open: readonly Open[], aims: Aims): void => {
    if (best !== undefined && !isBetter(aims, best)) return
    const length = lengths[index]
    if (length === undefined) {
      best = aims
      return
    }
    const tried = new Set<string>()
    for (const [at, board] of open.entries()) {
      const name = `${board.stock}/${board.rest}`
      if (board.rest < length || tried.has(name)) continue
      tried.add(name)
      place(index + 1, open.with(at, { ...board, rest: Math.max(0, board.rest - length - kerfTicks) }), aims)
    }
    for (const [stock, { lengthTicks, cost = lengthTicks, most = Infinity }] of stocks.entries()) {
      const rest = start[stock]!
      if (rest < length || open.filter((board) => board.stock === stock).length >= most) continue
      const board = { rest: Math.max(0, rest - length - kerfTicks), stock }
      place(
        index + 1,
        [...open, board],
        [aims[0] + cost, aims[1] + 1, aims[2] + (cost > 0 ? lengthTicks : 0)],
      )
    }
  }
  place(0, [], [0, 0, 0])
  return best
}
