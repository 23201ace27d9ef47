import { demandOf } from '../demand'
import type { Demand, Reading } from '../demand'
import { planOf } from '../plan'
import type { CutBoard, CuttingPlan } from '../plan'
import { costOf, requireWhole } from '../problem'
import type { CuttingProblem } from '../problem'
import type { IntegerSolver, Proof } from '../proof'
import { assemble, shareBack } from './assemble'
import { sumOf } from './packing'
import type { Work } from './packing'
import { unpack } from './packingOf'
import { isLess, solvePacking } from './solvePacking'
import type { Values } from './solvePacking'

export interface ProveOptions {
  /** Asked only where a proof is still open once the work of the own search is done. */
  readonly integerSolver?: IntegerSolver
  /** Told of each better plan, with what is known of it by then. */
  readonly onBetter?: (proof: Proof) => void
  /** Work that may be spent, in steps of a nanosecond or a few: counted, so that the same list always gives the same answer. */
  readonly budget?: number
}

const BUDGET = 2e9

const costOfLength = (stockTicks: number, { stocks }: CuttingProblem): number =>
  Math.min(...stocks.filter(({ lengthTicks }) => lengthTicks === stockTicks).map(costOf))

/** Cost, boards and length bought of boards. */
const valuesOfBoards = (boards: readonly CutBoard[], problem: CuttingProblem): number[] => [
  sumOf(boards.map(({ stockTicks, count }) => count * costOfLength(stockTicks, problem))),
  sumOf(boards.map(({ count }) => count)),
  sumOf(boards.map(({ stockTicks, count }) => count * stockTicks)),
]

/** Boards that every plan has, whatever else is chosen. */
const settledOf = ({ whole, started }: Demand): CutBoard[] => [
  ...whole,
  ...started.map(({ stockTicks, cuts }) => ({ stockTicks, count: 1, cuts, offcutTicks: 0 })),
]

interface Reached {
  readonly boards: readonly CutBoard[] | undefined
  readonly values: Values
  readonly bound: number
  readonly proven: Proof['proven']
}

const provenOf = ([cost, boards, waste]: readonly boolean[]): Proof['proven'] => ({
  cost: cost === true,
  boards: boards === true,
  waste: waste === true,
})

const reach = (
  problem: CuttingProblem,
  reading: Reading,
  known: Values,
  work: Work,
  onBetter: (reached: Reached) => void,
): Reached => {
  const demand = demandOf(problem, reading)
  const settled = valuesOfBoards(settledOf(demand), problem)
  const unpacked = unpack(demand, problem, (known[0] ?? 0) - (settled[0] ?? 0))
  const whole = (values: Values): number[] =>
    values.map((value, aim) => value * (unpacked.units[aim] ?? 1) + (settled[aim] ?? 0))
  const start = known.map((value, aim) => (value - (settled[aim] ?? 0)) / (unpacked.units[aim] ?? 1))
  const none = provenOf([])
  const solved = solvePacking(unpacked.packing, start, work, (filled, values, bound) =>
    onBetter({
      boards: [...demand.whole, ...assemble(filled, unpacked, demand, problem)],
      values: whole(values),
      bound: bound * (unpacked.units[0] ?? 1) + (settled[0] ?? 0),
      proven: none,
    }),
  )
  return {
    boards:
      solved.filled === undefined
        ? undefined
        : [...demand.whole, ...assemble(solved.filled, unpacked, demand, problem)],
    values: whole(solved.values),
    bound: solved.bound * (unpacked.units[0] ?? 1) + (settled[0] ?? 0),
    proven: provenOf(solved.proven),
  }
}

/**
 * The best plan of a problem and what is proved of it, starting from a plan that is known. Pure: the same problem, plan and budget
 * give the same answer. Throws a RangeError where a number of the problem is not whole.
 */
export const prove = async (
  problem: CuttingProblem,
  first: CuttingPlan,
  options: ProveOptions = {},
): Promise<Proof> => {
  requireWhole(problem)
  const work = { left: options.budget ?? BUDGET }
  let plan = first
  let values: Values = valuesOfBoards(first.boards, problem)
  const take = (reached: Reached): void => {
    if (reached.boards === undefined || !isLess(reached.values, values)) return
    plan = planOf(
      reached.boards.map((board) => shareBack(board, problem)),
      first.tooLong,
    )
    values = reached.values
    options.onBetter?.({ plan, bound: reached.bound, proven: reached.proven })
  }
  const hasTolerance = problem.pieces.some((piece) => piece.minusTicks > 0)
  let reached = reach(problem, 'drawn', values, work, take)
  take(reached)
  if (hasTolerance) take((reached = reach(problem, 'least', values, work, take)))
  return { plan, bound: reached.bound, proven: reached.proven }
}
