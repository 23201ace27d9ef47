import type { Demand, Need } from './demand'
import { takeBoards } from './offers'
import type { Offer, Supply } from './offers'
import { cutBoard } from './plan'
import type { Cut, CutBoard, Unmade } from './plan'
import type { CuttingProblem } from './problem'

/** Pieces still to be placed. */
interface Waiting extends Need {
  left: number
}

/** Cuts of one board, and how often that board can be repeated before one of its pieces runs out. */
interface Filling {
  readonly cuts: readonly Cut[]
  readonly times: number
  /** Length of the pieces. */
  readonly usedTicks: number
  /** Sizes of the pieces, a kerf each. */
  readonly takenTicks: number
}

/** A filling and the stock that it is best cut from. */
interface Choice {
  readonly filling: Filling
  readonly offer: Offer
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
  return { cuts, times, usedTicks, takenTicks: roomTicks - free }
}

const take = (waiting: readonly Waiting[], cuts: readonly Cut[], times: number): void => {
  for (const need of waiting) {
    const cut = cuts.find((each) => each.piece === need.piece)
    if (cut !== undefined) need.left -= cut.count * times
  }
}

/** The smaller share of what it costs for what it makes; of equals what makes more, and so fewer boards. */
const isBetter = (a: Choice, b: Choice): boolean => {
  const saved = b.offer.cost * a.filling.usedTicks - a.offer.cost * b.filling.usedTicks
  return saved > 0 || (saved === 0 && a.filling.usedTicks > b.filling.usedTicks)
}

/**
 * Of the stocks that hold the longest piece waiting, the one whose greedy filling costs least for what it makes. A filling is
 * cut from the cheapest board that has room for it. Where none of the `open` stocks holds that piece, any stock may.
 */
const bestChoice = (
  open: readonly Offer[],
  all: readonly Offer[],
  waiting: readonly Waiting[],
): Choice | undefined => {
  const longest = waiting.find((need) => need.left > 0)?.sizeTicks ?? 0
  const holding = (offers: readonly Offer[]) => offers.filter((offer) => offer.roomTicks >= longest)
  const openHolding = holding(open)
  let best: Choice | undefined
  for (const { roomTicks } of openHolding.length > 0 ? openHolding : holding(all)) {
    const filling = fill(roomTicks, waiting)
    const offer = all.find((each) => each.roomTicks >= filling.takenTicks)
    if (offer === undefined) continue
    const choice = { filling, offer }
    if (best === undefined || isBetter(choice, best)) best = choice
  }
  return best
}

/** Boards, and the pieces that no board was left for. */
export interface Filled {
  readonly boards: readonly CutBoard[]
  readonly unmade: readonly Unmade[]
}

/** Pieces of the longest size that still waits, for which there is no board. */
const giveUp = (waiting: readonly Waiting[]): Unmade[] => {
  const need = waiting.find(({ left }) => left > 0)
  if (need === undefined) return []
  const { piece, left } = need
  need.left = 0
  return [{ piece, count: left, why: 'no-stock-left' }]
}

/**
 * First-fit decreasing over counts: the rests of started boards first, then new boards of the `open` stocks. Boards
 * cut alike are planned at once, so that thousands of like pieces cost as little as one.
 * `all` is every stock on offer, in the order in which a board is best taken that will do.
 */
export const fillBoards = (
  demand: Demand,
  open: readonly Offer[],
  all: readonly Offer[],
  problem: CuttingProblem,
): Filled => {
  const supply: Supply = [...demand.supply]
  const isLeft = ({ stock }: Offer): boolean => (supply[stock] ?? 0) > 0
  const waiting: Waiting[] = demand.needs.map((need) => ({ ...need, left: need.count }))
  const unmade: Unmade[] = []
  const boards = demand.started.map((board) => {
    const { cuts } = fill(board.roomTicks, waiting)
    take(waiting, cuts, 1)
    return cutBoard(board.stock, 1, [...board.cuts, ...cuts], problem)
  })
  while (waiting.some((need) => need.left > 0)) {
    const choice = bestChoice(open.filter(isLeft), all.filter(isLeft), waiting)
    if (choice === undefined) {
      unmade.push(...giveUp(waiting))
      continue
    }
    const { cuts, times } = choice.filling
    for (const { offer, count } of takeBoards([choice.offer], times, supply)) {
      take(waiting, cuts, count)
      boards.push(cutBoard(offer.stock, count, cuts, problem))
    }
  }
  return { boards, unmade }
}
