import { costOf, roomOf } from './problem'
import type { CuttingProblem } from './problem'

/** A stock that boards can be taken from, and the room on them. */
export interface Offer {
  /** Index of the stock in the problem. */
  readonly stock: number
  readonly stockTicks: number
  readonly roomTicks: number
  readonly cost: number
  /** Infinity for as many as wanted. */
  readonly most: number
}

/** The cheaper first, of these the shorter, of these what there is least of. */
const byCost = (a: Offer, b: Offer): number =>
  a.cost - b.cost || a.stockTicks - b.stockTicks || (a.most < b.most ? -1 : a.most > b.most ? 1 : 0)

/** Every stock with boards to take, in the order in which a board is best taken that will do. */
export const offersOf = ({ stocks, saw }: CuttingProblem): Offer[] =>
  stocks
    .map((stock, index) => ({
      stock: index,
      stockTicks: stock.lengthTicks,
      roomTicks: roomOf(stock.lengthTicks, saw),
      cost: costOf(stock),
      most: stock.most ?? Infinity,
    }))
    .filter(({ most }) => most > 0)
    .sort(byCost)

/** Boards of one stock. */
export interface Boards {
  readonly offer: Offer
  readonly count: number
}

/** What is left of each stock of a problem, by its index; taken from as boards are. */
export type Supply = number[]

export const supplyOf = ({ stocks }: CuttingProblem): Supply => stocks.map(({ most }) => most ?? Infinity)

/** Boards of offers, the first in their order first, as far as the supply goes; it is taken from. */
export const takeBoards = (offers: readonly Offer[], count: number, supply: Supply): Boards[] => {
  const taken: Boards[] = []
  let wanted = count
  for (const offer of offers) {
    const number = Math.min(wanted, supply[offer.stock] ?? 0)
    if (number <= 0) continue
    taken.push({ offer, count: number })
    supply[offer.stock] = (supply[offer.stock] ?? 0) - number
    wanted -= number
  }
  return taken
}
