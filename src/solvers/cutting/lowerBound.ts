import { attainableFrom } from './attainable'
import { demandOf } from './demand'
import type { Demand, Need } from './demand'
import { fullestOf } from './fullest'
import type { Fullest } from './fullest'
import { boughtTicksOf } from './plan'
import { offered, requireWhole, roomOf } from './problem'
import type { CuttingProblem } from './problem'

/*
 * Why no plan beats the bound.
 *
 * Sizes are lengths with one kerf, rooms are boards with one kerf (problem.ts). Call a piece big when two of them
 * share no board: its size is over half the greatest room. Choose a least size and count only the other pieces at or
 * over it; let most(room) be the greatest sum of counted sizes that one room holds. Put a price on counted size,
 *
 *     price = least over the stocks of length / most(room)            so length >= price * most(room) for each stock.
 *
 * A board without a big piece costs at least its price of counted size. A board with a big piece b costs
 * length = (length - price * most(room - b)) + price * most(room - b), that is at least bigCost(b), the least of the
 * bracket over the stocks that hold b, and its price of counted size. A started board costs nothing more; it saves
 * the price of what it holds, or, where it holds a big piece, that piece's bigCost and the price of the rest. So
 *
 *     length bought >= sum of bigCost + price * (all counted size) - the most that started boards save
 *
 * for every least size (pairing bound of Martello and Toth's L2 kind, widened to several stock lengths); with the
 * smallest piece as the least size it is the plain material bound. The greatest is taken and rounded up to a sum of
 * stock lengths.
 */

interface Offer {
  readonly stockTicks: number
  readonly roomTicks: number
}

interface Terms {
  readonly offers: readonly Offer[]
  readonly big: readonly Need[]
  readonly startedRooms: readonly number[]
}

/** Sums of some hundred doubles lose less than this share; the bound gives it away to stay a bound. */
const ROUNDING_SHARE = 1e-11

const totalSize = (needs: readonly Need[]): number =>
  needs.reduce((sum, need) => sum + need.count * need.sizeTicks, 0)

const priceOf = (offers: readonly Offer[], most: Fullest): number =>
  Math.min(...offers.map(({ stockTicks, roomTicks }) => stockTicks / most(roomTicks)))

const bigCostOf = (size: number, offers: readonly Offer[], price: number, most: Fullest): number => {
  const holding = offers.filter(({ roomTicks }) => roomTicks >= size)
  return Math.min(...holding.map(({ stockTicks, roomTicks }) => stockTicks - price * most(roomTicks - size)))
}

/** The bound that counts these pieces beside the big ones. */
const boundCounting = (counted: readonly Need[], { offers, big, startedRooms }: Terms): number => {
  const most = fullestOf(counted)
  const price = counted.length === 0 ? 0 : priceOf(offers, most)
  const costs = big.map((need) => ({ ...need, cost: bigCostOf(need.sizeTicks, offers, price, most) }))
  const savedBy = (room: number): number => {
    const held = costs.filter(({ sizeTicks }) => sizeTicks <= room)
    const withBig = held.map(({ sizeTicks, cost }) => cost + price * most(room - sizeTicks))
    return Math.max(price * most(room), ...withBig)
  }
  const spent = costs.reduce((sum, { count, cost }) => sum + count * cost, price * totalSize(counted))
  const saved = startedRooms.reduce((sum, room) => sum + savedBy(room), 0)
  return spent - saved - ROUNDING_SHARE * (spent + saved)
}

const boundOfNeeds = ({ needs, started }: Demand, offers: readonly Offer[]): number => {
  const half = Math.max(...offers.map(({ roomTicks }) => roomTicks)) / 2
  const small = needs.filter(({ sizeTicks }) => sizeTicks <= half)
  const terms: Terms = {
    offers,
    big: needs.filter(({ sizeTicks }) => sizeTicks > half),
    startedRooms: started.map(({ roomTicks }) => roomTicks),
  }
  const countings = [[], ...small.map(({ sizeTicks }) => small.filter((need) => need.sizeTicks >= sizeTicks))]
  return Math.max(0, ...countings.map((counted) => boundCounting(counted, terms)))
}

/**
 * Total stock length, in ticks, that no plan can go below: not `firstPlan`, nor any that keeps the pieces' rules,
 * tolerances and the kerf. Pieces longer than any board don't count.
 */
export const lowerBound = (problem: CuttingProblem): number => {
  requireWhole(problem)
  const demand = demandOf(problem, 'least')
  const stocks = offered(problem)
  const ruled = boughtTicksOf(demand.whole) + demand.started.reduce((sum, board) => sum + board.stockTicks, 0)
  if (demand.needs.length === 0) return ruled
  const offers = stocks.map((stockTicks) => ({ stockTicks, roomTicks: roomOf(stockTicks, problem.saw) }))
  return ruled + attainableFrom(boundOfNeeds(demand, offers), stocks)
}
