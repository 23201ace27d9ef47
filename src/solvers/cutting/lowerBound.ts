import { attainableFrom } from './attainable'
import { demandOf } from './demand'
import type { Demand, Need } from './demand'
import { fullestOf } from './fullest'
import type { Fullest } from './fullest'
import { offersOf } from './offers'
import type { Offer } from './offers'
import { valuesOf } from './plan'
import { requireWhole } from './problem'
import type { CuttingProblem } from './problem'

/*
 * Why no plan beats the bound.
 *
 * Sizes are lengths with one kerf, rooms are boards with one kerf (problem.ts). Call a piece big when two of them share no board of
 * which there are as many as wanted: its size is over half the greatest such room. Choose a least size and count only the other
 * pieces at or over it; let most(room) be the greatest sum of counted sizes that one room holds. Put a price on counted size and a
 * worth on each big piece. A board is worth what it holds:
 *
 *     without a big piece at most    price * most(room)
 *     with a big piece b at most     worth(b) + price * most(room - b)
 *
 * If no board that there are as many of as wanted is worth more than it costs, then a plan costs at least what all its pieces are
 * worth, less what the boards of which there are only some (leftovers, rests of boards that a rule has started) are worth more
 * than they cost:
 *
 *     cost >= sum of worth(b) + price * (all counted size) - sum over the others of most * max(0, worth - cost)
 *
 * That is weak duality of the linear program over fillings (a pairing bound of Martello and Toth's L2 kind, widened to several priced
 * and limited stocks). The price is cost / most(room) of a stock, the least where there are as many as wanted of it; the worth of a
 * big piece is what is then left of the cost of the cheapest of them that holds it. With the smallest piece as the least size it is
 * the plain material bound. The greatest of all is taken and rounded up to a sum of costs.
 */

/** Boards that are there as many times as `most` says, which may be Infinity, at this cost. */
type Source = Pick<Offer, 'roomTicks' | 'cost' | 'most'>

interface Terms {
  readonly endless: readonly Source[]
  readonly limited: readonly Source[]
  readonly big: readonly Need[]
}

/** Big pieces with what each is worth. */
type Worthy = Need & { readonly worth: number }

/** Sums of some hundred doubles lose less than this share; the bound gives it away to stay a bound. */
const ROUNDING_SHARE = 1e-11

const totalSize = (needs: readonly Need[]): number =>
  needs.reduce((sum, need) => sum + need.count * need.sizeTicks, 0)

/** Prices of counted size that are worth a try: none above what an endless stock allows. */
const pricesOf = ({ endless, limited }: Terms, most: Fullest): number[] => {
  const ratio = ({ cost, roomTicks }: Source): number =>
    most(roomTicks) === 0 ? Infinity : cost / most(roomTicks)
  const highest = Math.min(...endless.map(ratio))
  const others = limited.map(ratio).filter((each) => each < highest)
  return [...new Set([highest, ...others])].filter((price) => Number.isFinite(price))
}

/** What a big piece may be worth: an endless stock that holds it sets it, else the dearest of the others that do. */
const worthOf = (size: number, { endless, limited }: Terms, price: number, most: Fullest): number => {
  const left = (sources: readonly Source[]): number[] =>
    sources
      .filter(({ roomTicks }) => roomTicks >= size)
      .map(({ roomTicks, cost }) => cost - price * most(roomTicks - size))
  const least = Math.min(...left(endless))
  return Math.max(0, Number.isFinite(least) ? least : Math.max(0, ...left(limited)))
}

/** The most that a room is worth. One that holds two big pieces is filled with what is worth most for its size. */
const roomWorth = (roomTicks: number, big: readonly Worthy[], price: number, most: Fullest): number => {
  const held = big.filter(({ sizeTicks }) => sizeTicks <= roomTicks)
  const smallest = held.at(-1)?.sizeTicks ?? Infinity
  if (2 * smallest <= roomTicks)
    return roomTicks * Math.max(price, ...held.map(({ worth, sizeTicks }) => worth / sizeTicks))
  return Math.max(
    price * most(roomTicks),
    ...held.map(({ sizeTicks, worth }) => worth + price * most(roomTicks - sizeTicks)),
  )
}

/** The bound that counts these pieces beside the big ones, at a price of their size. */
const boundAt = (price: number, counted: readonly Need[], terms: Terms, most: Fullest): number => {
  const big = terms.big.map((need) => ({ ...need, worth: worthOf(need.sizeTicks, terms, price, most) }))
  const worth = big.reduce((sum, each) => sum + each.count * each.worth, price * totalSize(counted))
  const saved = terms.limited.reduce(
    (sum, { roomTicks, cost, most: count }) =>
      sum + count * Math.max(0, roomWorth(roomTicks, big, price, most) - cost),
    0,
  )
  return worth - saved - ROUNDING_SHARE * (worth + saved)
}

const boundCounting = (counted: readonly Need[], terms: Terms): number => {
  const most = fullestOf(counted)
  const prices = counted.length === 0 ? [0] : pricesOf(terms, most)
  return Math.max(0, ...prices.map((price) => boundAt(price, counted, terms, most)))
}

const termsOf = ({ needs, started, supply }: Demand, offers: readonly Offer[]): Terms => {
  const sources = offers.map((offer) => ({ ...offer, most: supply[offer.stock] ?? 0 }))
  const endless = sources.filter(({ most }) => most === Infinity)
  const pieces = needs.reduce((sum, { count }) => sum + count, 0)
  const limited = sources
    .filter(({ most }) => most !== Infinity)
    .map((source) => ({ ...source, most: Math.min(source.most, pieces) }))
  const rooms = (endless.length > 0 ? endless : limited).map(({ roomTicks }) => roomTicks)
  const half = Math.max(...rooms) / 2
  return {
    endless,
    limited: [...limited, ...started.map(({ roomTicks }) => ({ roomTicks, cost: 0, most: 1 }))],
    big: needs.filter(({ sizeTicks }) => sizeTicks > half),
  }
}

const boundOfNeeds = (demand: Demand, offers: readonly Offer[]): number => {
  const terms = termsOf(demand, offers)
  const small = demand.needs.filter((need) => !terms.big.includes(need))
  const countings = [[], ...small.map(({ sizeTicks }) => small.filter((need) => need.sizeTicks >= sizeTicks))]
  return Math.max(0, ...countings.map((counted) => boundCounting(counted, terms)))
}

/**
 * Cost, in the unit of `Stock.cost`, that no plan can go below that makes all pieces but those longer than any board: not
 * `firstPlan`, nor any that keeps the pieces' rules, tolerances, the kerf and the number of boards that there are. Where boards run
 * out, ask for what is made: `lowerBound(madeBy(plan, problem))`.
 */
export const lowerBound = (problem: CuttingProblem): number => {
  requireWhole(problem)
  const demand = demandOf(problem, 'least')
  const [ruled] = valuesOf(
    [...demand.whole, ...demand.started.map(({ stock }) => ({ stock, count: 1 }))],
    problem.stocks,
  )
  if (demand.needs.length === 0) return ruled
  const offers = offersOf(problem)
  return (
    ruled +
    attainableFrom(
      boundOfNeeds(demand, offers),
      offers.map(({ cost }) => cost),
    )
  )
}
