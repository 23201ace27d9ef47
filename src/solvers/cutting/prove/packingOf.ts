import type { Demand, Need } from '../demand'
import { costOf, roomOf } from '../problem'
import type { CuttingProblem } from '../problem'
import type { Packing, PackingStock } from './packing'
import { sumOf } from './packing'

/** A packing with what it was made from, so that its fillings can be read as boards again. */
export interface Unpacked {
  readonly packing: Packing
  /** The needs of each size: pieces of one length that stand apart in the list. */
  readonly needs: readonly (readonly Need[])[]
  /** Where each stock of the packing comes from: a stock of the problem, or the rest of a started board of the demand. */
  readonly sources: readonly Source[]
  /** What the first and the third aim are counted in, so that numbers stay small. */
  readonly units: readonly number[]
}

export type Source =
  | { readonly kind: 'stock'; readonly stock: number }
  | { readonly kind: 'started'; readonly boards: readonly number[] }

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b))

/** The greatest number that divides all; 1 of nothing. */
const commonOf = (values: readonly number[]): number => Math.max(1, values.reduce(greatestCommon, 0))

const grouped = <T>(things: readonly T[], keyOf: (thing: T) => number): Map<number, T[]> => {
  const groups = new Map<number, T[]>()
  for (const thing of things) groups.set(keyOf(thing), [...(groups.get(keyOf(thing)) ?? []), thing])
  return groups
}

/**
 * What a demand leaves to choose, as sizes and stocks. `mostCost` is the cost of a plan that is known for the same needs: no
 * better one has more boards of a stock than that pays for. Rests of started boards are stocks that add nothing.
 */
export const unpack = ({ needs, started }: Demand, problem: CuttingProblem, mostCost: number): Unpacked => {
  const bySize = [...grouped(needs, (need) => need.sizeTicks)].sort((a, b) => b[0] - a[0])
  const step = commonOf(bySize.map(([size]) => size))
  const counts = bySize.map(([, same]) => sumOf(same.map(({ count }) => count)))
  const units = [
    commonOf(problem.stocks.map(costOf)),
    1,
    commonOf(problem.stocks.map(({ lengthTicks }) => lengthTicks)),
  ]
  const pieces = sumOf(counts)
  const bought = problem.stocks.map((stock): PackingStock => {
    const cost = costOf(stock)
    return {
      room: Math.max(0, Math.floor(roomOf(stock.lengthTicks, problem.saw) / step)),
      most: Math.min(pieces, stock.most ?? pieces, cost > 0 ? Math.floor(mostCost / cost) : pieces),
      adds: [cost, 1, stock.lengthTicks].map((each, aim) => each / (units[aim] ?? 1)),
    }
  })
  const rests = [
    ...grouped([...started.keys()], (board) => Math.floor((started[board]?.roomTicks ?? 0) / step)),
  ]
  return {
    packing: {
      sizes: bySize.map(([size]) => size / step),
      counts,
      stocks: [...bought, ...rests.map(([room, boards]) => ({ room, most: boards.length, adds: [0, 0, 0] }))],
    },
    needs: bySize.map(([, same]) => same),
    sources: [
      ...problem.stocks.map((_, stock): Source => ({ kind: 'stock', stock })),
      ...rests.map(([, boards]): Source => ({ kind: 'started', boards })),
    ],
    units,
  }
}
