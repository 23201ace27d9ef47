import { demandOf } from './demand'
import type { Demand, Reading } from './demand'
import { emptied } from './emptied'
import { fillBoards } from './fillBoards'
import type { Filled, Way } from './fillBoards'
import { fillFullest, fillLongest } from './fillings'
import { finishBoard } from './finish'
import { offersOf } from './offers'
import type { Offer } from './offers'
import { compareValues, planOf, valuesOf } from './plan'
import type { CuttingPlan } from './plan'
import { requireWhole } from './problem'
import type { CuttingProblem } from './problem'

const unmadeCount = ({ unmade }: Filled): number => unmade.reduce((sum, { count }) => sum + count, 0)

/** Pieces of one line, by its index, that are told unmade. */
const countOf = (index: number, unmade: Filled['unmade']): number =>
  unmade.reduce((sum, { piece, count }) => (piece === index ? sum + count : sum), 0)

/** Boards of one stock, by its index. */
const usedOf = (index: number, boards: Filled['boards']): number =>
  boards.reduce((sum, { stock, count }) => (stock === index ? sum + count : sum), 0)

/** Most pieces made, then the better values. */
const isBetter = (these: Filled, those: Filled, { stocks }: CuttingProblem): boolean => {
  const more = unmadeCount(those) - unmadeCount(these)
  return (
    more > 0 ||
    (more === 0 && compareValues(valuesOf(these.boards, stocks), valuesOf(those.boards, stocks)) < 0)
  )
}

const best = (plans: readonly Filled[], problem: CuttingProblem): Filled =>
  plans.reduce((chosen, next) => (isBetter(next, chosen, problem) ? next : chosen))

/** Any stock opened, or only one as far as pieces fit; filled in each manner; leftovers first or where they come in handy. */
const waysOf = (all: readonly Offer[]): Way[] => {
  const yard = all.filter(({ most }) => most === Infinity)
  const openings = yard.length > 1 ? [all, ...yard.map((offer) => [offer])] : [all]
  const hasLeftovers = yard.length < all.length
  return [fillLongest, fillFullest].flatMap((fill) =>
    openings.flatMap((open) =>
      (hasLeftovers ? [true, false] : [false]).map((isFreeFirst) => ({ fill, open, isFreeFirst })),
    ),
  )
}

/** The boards without leftovers that are not needed. The first are started by a rule: they are there whatever else is chosen. */
const sparing = (
  { boards, unmade }: Filled,
  { started }: Demand,
  all: readonly Offer[],
  problem: CuttingProblem,
): Filled => {
  const free = new Set(
    all.filter(({ cost, most }) => cost === 0 && most < Infinity).map(({ stock }) => stock),
  )
  if (free.size === 0) return { boards, unmade }
  const chosen = emptied(boards.slice(started.length), ({ stock }) => free.has(stock), problem)
  return { boards: [...boards.slice(0, started.length), ...chosen], unmade }
}

const boardsFor = (demand: Demand, problem: CuttingProblem): Filled => {
  const all = offersOf(problem)
  const filled = waysOf(all).map((way) => fillBoards(demand, way, all, problem))
  return sparing(best(filled, problem), demand, all, problem)
}

const boardsRead = (problem: CuttingProblem, reading: Reading): Filled => {
  const demand = demandOf(problem, reading)
  const { boards, unmade } = boardsFor(demand, problem)
  return {
    boards: [...demand.whole, ...boards].map((board) => finishBoard(board, problem)),
    unmade: [...demand.tooLong, ...unmade],
  }
}

/**
 * A plan with what boards that are left still make of pieces cut as short as they may be: as drawn they may be too long for these
 * boards, and yet no reading of all pieces makes more.
 */
const toppedUp = ({ boards, unmade }: Filled, problem: CuttingProblem): Filled => {
  const rest: CuttingProblem = {
    ...problem,
    pieces: problem.pieces.map((piece, index) => ({ ...piece, count: countOf(index, unmade) })),
    stocks: problem.stocks.map((stock, index) =>
      stock.most === undefined ? stock : { ...stock, most: stock.most - usedOf(index, boards) },
    ),
  }
  const more = boardsRead(rest, 'least')
  return {
    boards: [...boards, ...more.boards],
    unmade: unmade
      .map((line) => ({ ...line, count: countOf(line.piece, more.unmade) }))
      .filter(({ count }) => count > 0),
  }
}

/**
 * A first good answer, at once: which boards to take and how to cut each, least cost, then fewest boards, then least length bought,
 * as far as greedy fillings find it. Pieces are cut as drawn; their tolerance is used only where that is better. The same problem
 * always gives the same plan.
 *
 * Pieces longer than any board, and pieces for which the boards run out, are told apart, never thrown. Throws a RangeError where a
 * number is not whole.
 */
export const firstPlan = (problem: CuttingProblem): CuttingPlan => {
  requireWhole(problem)
  const hasTolerance = problem.pieces.some((piece) => piece.minusTicks > 0)
  const readings: Reading[] = hasTolerance ? ['drawn', 'least'] : ['drawn']
  const chosen = best(
    readings.map((reading) => boardsRead(problem, reading)),
    problem,
  )
  const { boards, unmade } = hasTolerance && chosen.unmade.length > 0 ? toppedUp(chosen, problem) : chosen
  return planOf(boards, unmade, problem)
}
