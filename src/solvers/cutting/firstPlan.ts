import { demandOf } from './demand'
import type { Demand, Reading } from './demand'
import { fillBoards } from './fillBoards'
import { cutBoard, isCheaper, planOf, takenOf } from './plan'
import type { Cut, CutBoard, CuttingPlan } from './plan'
import { offered, requireWhole, roomOf } from './problem'
import type { CuttingProblem } from './problem'

const cheapest = (plans: readonly CutBoard[][]): CutBoard[] =>
  plans.reduce((best, next) => (isCheaper(next, best) ? next : best))

/** The best of the plan that opens boards of any stock and the plans that keep to one stock as far as pieces fit. */
const boardsFor = (demand: Demand, problem: CuttingProblem): CutBoard[] => {
  const { saw } = problem
  const all = offered(problem).map((stockTicks) => ({ stockTicks, roomTicks: roomOf(stockTicks, saw) }))
  const choices = all.length > 1 ? [all, ...all.map((offer) => [offer])] : [all]
  return cheapest(choices.map((open) => fillBoards(demand, open, all, saw)))
}

/** What a board has to spare goes back to pieces that were planned short, longest first, like pieces alike. */
const shareBack = (board: CutBoard, { pieces, saw }: CuttingProblem): CutBoard => {
  let spare = roomOf(board.stockTicks, saw) - takenOf(board.cuts, saw)
  const cuts = board.cuts.map((cut): Cut => {
    const short = (pieces[cut.piece]?.lengthTicks ?? 0) - cut.lengthTicks
    const growth = Math.max(0, Math.min(short, Math.floor(spare / cut.count)))
    spare -= growth * cut.count
    return { ...cut, lengthTicks: cut.lengthTicks + growth }
  })
  return cutBoard(board.stockTicks, board.count, cuts, saw)
}

const boardsRead = (problem: CuttingProblem, reading: Reading): CutBoard[] => {
  const demand = demandOf(problem, reading)
  const boards = boardsFor(demand, problem)
  return reading === 'drawn' ? boards : boards.map((board) => shareBack(board, problem))
}

/**
 * A first good answer, at once: which boards to buy and how to cut each, least total length bought, then fewest
 * boards, as far as first-fit decreasing finds it. Pieces are cut as drawn; their tolerance is used only where that
 * buys less. The same problem always gives the same plan.
 *
 * Pieces longer than any board are told apart, never thrown. Throws a RangeError where a number is not whole.
 */
export const firstPlan = (problem: CuttingProblem): CuttingPlan => {
  requireWhole(problem)
  const hasTolerance = problem.pieces.some((piece) => piece.minusTicks > 0)
  const readings: Reading[] = hasTolerance ? ['drawn', 'least'] : ['drawn']
  const { whole, tooLong } = demandOf(problem, 'drawn')
  return planOf([...whole, ...cheapest(readings.map((reading) => boardsRead(problem, reading)))], tooLong)
}
