import type { Certificate } from '../proof'
import type { CuttingProblem } from '../problem'
import { sumOf } from './packing'
import type { Packing } from './packing'
import { knapsackOf } from './knapsack'
import type { Unpacked } from './packingOf'
import type { Solved } from './solvePacking'

/** The most that a board of each stock can hold at these prices. */
const worthsOf = (prices: readonly number[], packing: Packing): number[] => {
  const knapsack = knapsackOf(packing, packing.counts, prices)
  return packing.stocks.map(({ room }) => knapsack.best(0, room))
}

/** By how much the worth of a board of each stock goes beyond what it costs, in scaled prices. */
const excessOf = (worths: readonly number[], { stocks }: Packing, scale: number): number[] =>
  stocks.map(({ adds }, stock) => Math.max(0, (worths[stock] ?? 0) - (adds[0] ?? 0) * scale))

/** Prices at which no board of an unlimited stock is worth more than it costs: all less by what the worst is over. */
const loweredBy = (
  prices: readonly number[],
  worths: readonly number[],
  packing: Packing,
  isLimited: readonly boolean[],
  scale: number,
): number[] => {
  const shares = packing.stocks.map(({ adds }, stock) =>
    isLimited[stock] === true ? 1 : ((adds[0] ?? 0) * scale) / Math.max(1, worths[stock] ?? 0),
  )
  const share = Math.min(1, ...shares)
  return share >= 1 ? [...prices] : prices.map((price) => Math.floor(price * share * (1 - 1e-15)))
}

/**
 * Prices of the pieces that alone prove what a packing costs at the least; undefined where prices alone fall short of the bound that
 * the search came to.
 */
export const certificateOf = (
  { cut, scale, bound }: Solved,
  { packing, needs, sources, units }: Unpacked,
  problem: CuttingProblem,
): Certificate | undefined => {
  const isLimited = sources.map(
    (source) => source.kind === 'started' || problem.stocks[source.stock]?.most !== undefined,
  )
  const prices = loweredBy(cut.prices, worthsOf(cut.prices, packing), packing, isLimited, scale)
  const excess = excessOf(worthsOf(prices, packing), packing, scale)
  if (excess.some((each, stock) => each > 0 && isLimited[stock] !== true)) return undefined
  const shown =
    sumOf(prices.map((price, size) => price * (packing.counts[size] ?? 0))) -
    sumOf(excess.map((each, stock) => each * (packing.stocks[stock]?.most ?? 0)))
  if (Math.ceil(shown / scale) < bound) return undefined
  const [unit = 1] = units
  const ofPieces = problem.pieces.map(() => 0)
  for (const [size, same] of needs.entries())
    for (const { piece } of same) ofPieces[piece] = (prices[size] ?? 0) * unit
  return { prices: ofPieces, scale }
}
