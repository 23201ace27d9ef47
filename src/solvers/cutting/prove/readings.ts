import { demandOf } from '../demand'
import type { Demand, Reading } from '../demand'
import { finishBoard } from '../finish'
import { planOf, valuesOf as valuesOfBoards } from '../plan'
import type { CutBoard, CuttingPlan, Unmade } from '../plan'
import type { CuttingProblem } from '../problem'
import type { IntegerSolver, Proof } from '../proof'
import { askSolver } from './askSolver'
import { assemble } from './assemble'
import { certificateOf } from './certificate'
import type { Filled, Work } from './packing'
import { unpack } from './packingOf'
import type { Unpacked } from './packingOf'
import { solvePacking } from './solvePacking'
import type { Solved, Values } from './solvePacking'

export interface ProveOptions {
  /** Asked for a plan where a proof is still open after about a second's work: it never proves anything here. */
  readonly integerSolver?: IntegerSolver
  /** Told of each better plan, with what is known of it by then. */
  readonly onBetter?: (proof: Proof) => void
  /** Work that may be spent, in steps of some nanoseconds: counted, so that the same list always gives the same answer. */
  readonly budget?: number
}

/** One reading of a problem, and how its fillings and values are read back as those of a plan. */
interface Task {
  readonly problem: CuttingProblem
  readonly demand: Demand
  readonly unpacked: Unpacked
  /** Cost, boards and length of what the rules settle. */
  readonly settled: Values
  readonly unmade: readonly Unmade[]
}

export const NONE: Values = [Infinity, Infinity, Infinity]

export const taskOf = (
  problem: CuttingProblem,
  reading: Reading,
  unmade: readonly Unmade[],
  known: Values,
): Task => {
  const demand = demandOf(problem, reading)
  const started = demand.started.map(({ stock }) => ({ stock, count: 1 }))
  const settled = valuesOfBoards([...demand.whole, ...started], problem.stocks)
  return { problem, demand, unpacked: unpack(demand, problem, (known[0] ?? 0) - settled[0]), settled, unmade }
}

const planFrom = (filled: readonly Filled[], { problem, demand, unpacked, unmade }: Task): CuttingPlan => {
  const boards: CutBoard[] = [...demand.whole, ...assemble(filled, unpacked, demand, problem)]
  return planOf(
    boards.map((board) => finishBoard(board, problem)),
    unmade,
    problem,
  )
}

const costOfBound = (bound: number, { unpacked, settled }: Task): number =>
  bound * (unpacked.units[0] ?? 1) + (settled[0] ?? 0)

/** How good a plan is, in the units of a task's packing. */
const valuesIn = ({ cost, boardCount, boughtTicks }: CuttingPlan, { settled, unpacked }: Task): number[] =>
  [cost, boardCount, boughtTicks].map(
    (value, aim) => (value - (settled[aim] ?? 0)) / (unpacked.units[aim] ?? 1),
  )

export const provenOf = ([cost, boards, waste]: readonly boolean[]): Proof['proven'] => ({
  cost: cost === true,
  boards: cost === true && boards === true,
  waste: cost === true && boards === true && waste === true,
})

const proofOf = (plan: CuttingPlan, solved: Solved, task: Task): Proof => {
  const certificate = certificateOf(solved, task.unpacked, task.problem)
  const proof = { plan, bound: costOfBound(solved.bound, task), proven: provenOf(solved.proven) }
  return certificate === undefined ? proof : { ...proof, certificate }
}

/** Solves one reading from a plan that is known, if any; undefined where neither is there a plan to begin with nor is one found. */
export const solveReading = async (
  known: CuttingPlan | undefined,
  task: Task,
  work: Work,
  options: ProveOptions,
): Promise<Proof | undefined> => {
  const start = known === undefined ? NONE : valuesIn(known, task)
  const { packing } = task.unpacked
  const { integerSolver, onBetter } = options
  const solved = await solvePacking(
    packing,
    start,
    work,
    (filled, _values, bound) =>
      onBetter?.({ plan: planFrom(filled, task), bound: costOfBound(bound, task), proven: provenOf([]) }),
    integerSolver && ((undecided) => askSolver(undecided, packing, integerSolver)),
  )
  const plan = solved.filled === undefined ? known : planFrom(solved.filled, task)
  return plan === undefined ? undefined : proofOf(plan, solved, task)
}

/** As drawn first; with every piece as short as it may be only to see whether that is better: then a plan uses the tolerance. */
export const solveReadings = async (
  known: CuttingPlan | undefined,
  problem: CuttingProblem,
  unmade: readonly Unmade[],
  work: Work,
  options: ProveOptions,
): Promise<Proof | undefined> => {
  const knownValues = ({ cost, boardCount, boughtTicks }: CuttingPlan): Values => [
    cost,
    boardCount,
    boughtTicks,
  ]
  const valuesOrNone = (plan: CuttingPlan | undefined): Values =>
    plan === undefined ? NONE : knownValues(plan)
  const drawn = await solveReading(
    known,
    taskOf(problem, 'drawn', unmade, valuesOrNone(known)),
    work,
    options,
  )
  if (!problem.pieces.some(({ minusTicks }) => minusTicks > 0)) return drawn
  const plan = drawn?.plan ?? known
  return solveReading(plan, taskOf(problem, 'least', unmade, valuesOrNone(plan)), work, options)
}
