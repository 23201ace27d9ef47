import { demandOf } from './demand'
import type { Demand, Reading } from './demand'
import { fillBoards } from './fillBoards'
import type { Filled } from './fillBoards'
import { finishBoard } from './finish'
import { offersOf } from './offers'
import { compareValues, planOf, valuesOf } from './plan'
import type { CuttingPlan } from './plan'
import { requireWhole } from './problem'
import type { CuttingProblem } from './problem'

const unmadeCount = ({ unmade }: Filled): number => unmade.reduce((sum, { count }) => sum + count, 0)

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

/** The best of the plan that opens boards of any stock and the plans that keep to one stock as far as pieces fit. */
const boardsFor = (demand: Demand, problem: CuttingProblem): Filled => {
  const all = offersOf(problem)
  const choices = all.length > 1 ? [all, ...all.map((offer) => [offer])] : [all]
  return best(
    choices.map((open) => fillBoards(demand, open, all, problem)),
    problem,
  )
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
  const { boards, unmade } = best(
    readings.map((reading) => boardsRead(problem, reading)),
    problem,
  )
  return planOf(boards, unmade, problem)
}
