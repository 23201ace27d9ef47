import type { Demand, Need } from '../demand'
import { valuesOfStock } from '../plan'
import { roomOf } from '../problem'
import type { CuttingProblem } from '../problem'
import type { Packing, PackingStock } from './packing'
import { AIMS, sumOf } from './packing'

/** A packing with what it was made from, so that its fillings can be read as boards again. */
export interface Unpacked {
  readonly packing: Packing
  /** The needs of each size: pieces of one length that stand apart in the list. */
  readonly needs: readonly (readonly Need[])[]
  /** Where each stock of the packing comes from: a stock of the problem, or the rest of a started board of the demand. */
  readonly sources: readonly Source[]
  /** What each aim is counted in, so that numbers stay small. */
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
export const unpack = (
  { needs, started, supply }: Demand,
  problem: CuttingProblem,
  mostCost: number,
): Unpacked => {
  const bySize = [...grouped(needs, (need) => need.sizeTicks)].sort((a, b) => b[0] - a[0])
  const step = commonOf(bySize.map(([size]) => size))
  const counts = bySize.map(([, same]) => sumOf(same.map(({ count }) => count)))
  const values = problem.stocks.map(valuesOfStock)
  const units = AIMS.map((aim) => commonOf(values.map((each) => each[aim] ?? 0)))
  const pieces = sumOf(counts)
  const bought = problem.stocks.map(({ lengthTicks }, stock): PackingStock => {
    const adds = values[stock] ?? [0, 0, 0]
    return {
      room: Math.max(0, Math.floor(roomOf(lengthTicks, problem.saw) / step)),
      most: Math.min(pieces, supply[stock] ?? 0, adds[0] > 0 ? Math.floor(mostCost / adds[0]) : pieces),
      adds: adds.map((each, aim) => each / (units[aim] ?? 1)),
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
