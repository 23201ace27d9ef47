import type { Demand, Need } from './demand'
import { cutBoard, takenOf } from './plan'
import type { Cut, CutBoard } from './plan'
import type { Saw } from './problem'

/** A stock length and the room on its boards. */
export interface Offer {
  readonly stockTicks: number
  readonly roomTicks: number
}

/** Pieces still to be placed. */
interface Waiting extends Need {
  left: number
}

/** Cuts of one board, and how often that board can be repeated before one of its pieces runs out. */
interface Filling {
  readonly cuts: readonly Cut[]
  readonly times: number
  readonly usedTicks: number
}

/** Longest piece first, as many of each as go on. */
const fill = (roomTicks: number, waiting: readonly Waiting[]): Filling => {
  const cuts: Cut[] = []
  let free = roomTicks
  let times = Infinity
  let usedTicks = 0
  for (const { piece, lengthTicks, sizeTicks, left } of waiting) {
    const count = Math.min(left, Math.floor(free / sizeTicks))
    if (count <= 0) continue
    cuts.push({ piece, lengthTicks, count })
    free -= count * sizeTicks
    times = Math.min(times, Math.floor(left / count))
    usedTicks += count * lengthTicks
  }
  return { cuts, times, usedTicks }
}

const take = (waiting: readonly Waiting[], cuts: readonly Cut[], times: number): void => {
  for (const need of waiting) {
    const cut = cuts.find((each) => each.piece === need.piece)
    if (cut !== undefined) need.left -= cut.count * times
  }
}

/**
 * Of the stocks that hold the longest piece waiting, the one of which a greedy filling wastes the least share; of
 * equals the longer, which makes fewer boards. Where none of the `open` stocks holds that piece, any stock may.
 */
const bestFilling = (open: readonly Offer[], all: readonly Offer[], waiting: readonly Waiting[]): Filling => {
  const longest = waiting.find((need) => need.left > 0)?.sizeTicks ?? 0
  const holding = (offers: readonly Offer[]) => offers.filter((offer) => offer.roomTicks >= longest)
  const openHolding = holding(open)
  const useOf = new Map<Filling, number>()
  for (const { stockTicks, roomTicks } of openHolding.length > 0 ? openHolding : holding(all)) {
    const filling = fill(roomTicks, waiting)
    useOf.set(filling, filling.usedTicks / stockTicks)
  }
  return [...useOf].reduce((best, next) => (next[1] >= best[1] ? next : best))[0]
}

/** A board is bought as short as its cuts allow. */
const buy = ({ cuts, times }: Filling, all: readonly Offer[], saw: Saw): CutBoard => {
  const taken = takenOf(cuts, saw)
  const offer = all.find(({ roomTicks }) => roomTicks >= taken)
  if (offer === undefined) throw new RangeError(`No stock on offer has room for ${taken} ticks.`)
  return cutBoard(offer.stockTicks, times, cuts, saw)
}

/**
 * First-fit decreasing over counts: the rests of started boards first, then new boards of the `open` stocks. Boards
 * cut alike are planned at once, so that thousands of like pieces cost as little as one.
 * `all` is every stock on offer, shortest first.
 */
export const fillBoards = (
  demand: Demand,
  open: readonly Offer[],
  all: readonly Offer[],
  saw: Saw,
): CutBoard[] => {
  const waiting: Waiting[] = demand.needs.map((need) => ({ ...need, left: need.count }))
  const boards = demand.started.map((board) => {
    const { cuts } = fill(board.roomTicks, waiting)
    take(waiting, cuts, 1)
    return cutBoard(board.stockTicks, 1, [...board.cuts, ...cuts], saw)
  })
  while (waiting.some((need) => need.left > 0)) {
    const filling = bestFilling(open, all, waiting)
    take(waiting, filling.cuts, filling.times)
    boards.push(buy(filling, all, saw))
  }
  return boards
}
