import type { Demand, StartedBoard } from './demand'
import { cutsOf, take } from './fillings'
import type { Fill, Filling, Waiting } from './fillings'
import { takeBoards } from './offers'
import type { Offer, Supply } from './offers'
import { cutBoard } from './plan'
import type { CutBoard, Unmade } from './plan'
import type { CuttingProblem } from './problem'

/** How boards are chosen and filled. */
export interface Way {
  readonly fill: Fill
  /** Stocks that are opened for the longest piece that waits; where none of them holds it, any is. */
  readonly open: readonly Offer[]
  /** Boards that cost nothing are filled before any other, shortest first. */
  readonly isFreeFirst: boolean
}

/** A filling and the stock that it is best cut from. */
interface Choice {
  readonly filling: Filling
  readonly offer: Offer
}

/** The smaller share of what it costs for what it makes; of equals what makes more, and so fewer boards. */
const isBetter = (a: Choice, b: Choice): boolean => {
  const saved = b.offer.cost * a.filling.usedTicks - a.offer.cost * b.filling.usedTicks
  return saved > 0 || (saved === 0 && a.filling.usedTicks > b.filling.usedTicks)
}

/**
 * Of the stocks that hold the longest piece waiting, the one whose filling costs least for what it makes. A filling is cut from the
 * cheapest board that has room for it.
 */
const bestChoice = (
  { fill, open }: Pick<Way, 'fill' | 'open'>,
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

/** How far a plan has come; changed in place. */
interface Progress {
  readonly problem: CuttingProblem
  readonly waiting: readonly Waiting[]
  readonly supply: Supply
  readonly boards: CutBoard[]
}

/** Cuts boards of an offer alike, as often as the pieces and the boards last. */
const cut = ({ filling, offer }: Choice, { problem, waiting, supply, boards }: Progress): void => {
  const cuts = cutsOf(filling, waiting)
  for (const { count } of takeBoards([offer], filling.times, supply)) {
    take(filling, count, waiting)
    boards.push(cutBoard(offer.stock, count, cuts, problem))
  }
}

/** The rests of boards that a rule has started. */
const fillStarted = (started: readonly StartedBoard[], fill: Fill, progress: Progress): void => {
  const { problem, waiting, boards } = progress
  for (const board of started) {
    const filling = fill(board.roomTicks, waiting)
    take(filling, 1, waiting)
    boards.push(cutBoard(board.stock, 1, [...board.cuts, ...cutsOf(filling, waiting)], problem))
  }
}

/** All boards that cost nothing and that there are only some of, as far as anything goes on them. */
const fillFree = (all: readonly Offer[], fill: Fill, progress: Progress): void => {
  for (const offer of all)
    if (offer.cost === 0 && offer.most < Infinity)
      while ((progress.supply[offer.stock] ?? 0) > 0) {
        const filling = fill(offer.roomTicks, progress.waiting)
        if (filling.usedTicks === 0) break
        cut({ filling, offer }, progress)
      }
}

/**
 * Greedy over counts: the started boards first and in their order, with what goes on their rests, then new boards. Boards cut alike are planned at once, so that thousands
 * of like pieces cost as little as one. `all` is every stock on offer, in the order in which a board is best taken that will do.
 */
export const fillBoards = (
  demand: Demand,
  way: Way,
  all: readonly Offer[],
  problem: CuttingProblem,
): Filled => {
  const waiting = demand.needs.map((need) => ({ ...need, left: need.count }))
  const progress: Progress = { problem, waiting, supply: [...demand.supply], boards: [] }
  const isLeft = ({ stock }: Offer): boolean => (progress.supply[stock] ?? 0) > 0
  const unmade: Unmade[] = []
  fillStarted(demand.started, way.fill, progress)
  if (way.isFreeFirst) fillFree(all, way.fill, progress)
  while (waiting.some((need) => need.left > 0)) {
    const choice = bestChoice({ fill: way.fill, open: way.open.filter(isLeft) }, all.filter(isLeft), waiting)
    if (choice === undefined) unmade.push(...giveUp(waiting))
    else cut(choice, progress)
  }
  return { boards: progress.boards, unmade }
}
