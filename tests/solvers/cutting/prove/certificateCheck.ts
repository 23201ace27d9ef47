import type { CuttingProblem } from '../../../../src/solvers/cutting/problem'
import type { Certificate } from '../../../../src/solvers/cutting/proof'

/*
 * Checks a certificate in whole numbers, with a knapsack of its own: by recursion over pieces, remembered, no table of rooms.
 * For problems whose pieces are all exact and whose stocks have no limit.
 */

const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : divisor(b, a % b))

/** The greatest worth of pieces, each with a kerf, in a room. */
const worthOf = (
  room: number,
  pieces: readonly { readonly size: number; readonly price: bigint; readonly count: number }[],
): bigint => {
  const known = new Map<string, bigint>()
  const best = (at: number, left: number): bigint => {
    const piece = pieces[at]
    if (piece === undefined) return 0n
    const key = `${at}/${left}`
    const before = known.get(key)
    if (before !== undefined) return before
    let most = 0n
    for (let count = 0; count <= piece.count && count * piece.size <= left; count += 1) {
      const worth = BigInt(count) * piece.price + best(at + 1, left - count * piece.size)
      if (worth > most) most = worth
    }
    known.set(key, most)
    return most
  }
  return best(0, room)
}

/** What a certificate proves that any plan costs; undefined where a board can hold more worth than it costs. */
export const provenBy = (
  { prices, scale }: Certificate,
  { pieces, stocks, saw }: CuttingProblem,
): number | undefined => {
  const priced = pieces.map(({ lengthTicks, minusTicks, count }, i) => ({
    size: Math.max(1, lengthTicks - minusTicks) + saw.kerfTicks,
    price: BigInt(prices[i]!),
    count,
  }))
  const costs = stocks.map(({ cost, lengthTicks }) => BigInt(cost ?? lengthTicks))
  for (const [stock, { lengthTicks }] of stocks.entries()) {
    const whole = saw.trimTicks === 0 ? lengthTicks : lengthTicks - saw.trimTicks - saw.kerfTicks
    if (worthOf(whole + saw.kerfTicks, priced) > costs[stock]! * BigInt(scale)) return undefined
  }
  const total = priced.reduce((sum, { price, count }) => sum + price * BigInt(count), 0n)
  const step = costs.reduce(divisor, 0n)
  const unit = step * BigInt(scale)
  return Number(((total + unit - 1n) / unit) * step)
}
