import { demandOf } from '../demand'
import type { Demand, Reading } from '../demand'
import { finishBoard } from '../finish'
import { madeBy, planOf, valuesOf as valuesOfBoards } from '../plan'
import type { CutBoard, CuttingPlan, Unmade } from '../plan'
import { requireWhole } from '../problem'
import type { CuttingProblem } from '../problem'
import type { IntegerSolver, Proof } from '../proof'
import { askSolver } from './askSolver'
import { assemble } from './assemble'
import { certificateOf } from './certificate'
import { AIMS, addedBy } from './packing'
import type { Filled, Work } from './packing'
import { unpack } from './packingOf'
import type { Unpacked } from './packingOf'
import { isLess, solvePacking, valuesOf } from './solvePacking'
import type { Solved, Values } from './solvePacking'

export interface ProveOptions {
  /** Asked for a plan only where a proof is still open once the work of the own search is done. */
  readonly integerSolver?: IntegerSolver
  /** Told of each better plan, with what is known of it by then. */
  readonly onBetter?: (proof: Proof) => void
  /** Work that may be spent, in steps of some nanoseconds: counted, so that the same list always gives the same answer. */
  readonly budget?: number
}

const BUDGET = 1.5e9
/** Open numbers of boards that the integer solver is asked about. */
const MOST_ASKED = 2

/** One reading of a problem, and how its fillings and values are read back as those of a plan. */
interface Task {
  readonly problem: CuttingProblem
  readonly demand: Demand
  readonly unpacked: Unpacked
  /** Cost, boards and length of what the rules settle. */
  readonly settled: Values
  readonly unmade: readonly Unmade[]
}

const NONE: Values = [Infinity, Infinity, Infinity]

const taskOf = (
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

const provenOf = ([cost, boards, waste]: readonly boolean[]): Proof['proven'] => ({
  cost: cost === true,
  boards: cost === true && boards === true,
  waste: cost === true && boards === true && waste === true,
})

const proofOf = (plan: CuttingPlan, solved: Solved, task: Task): Proof => {
  const certificate = certificateOf(solved, task.unpacked, task.problem)
  const proof = { plan, bound: costOfBound(solved.bound, task), proven: provenOf(solved.proven) }
  return certificate === undefined ? proof : { ...proof, certificate }
}

/** What the own search left open is put before the integer solver, cheapest first, until one is filled. */
const askAbout = async (
  solved: Solved,
  { unpacked: { packing } }: Task,
  solver: IntegerSolver,
): Promise<Solved> => {
  const costOf = (boards: readonly number[]): number => addedBy(boards, packing, 0)
  const open = solved.undecided.toSorted((a, b) => costOf(a.boards) - costOf(b.boards)).slice(0, MOST_ASKED)
  for (const undecided of open) {
    const filled = await askSolver(undecided, packing, solver)
    if (filled === undefined) continue
    const values = valuesOf(filled, packing)
    if (!isLess(values, solved.values)) continue
    return {
      ...solved,
      filled,
      values,
      proven: AIMS.map((aim) => aim === 0 && solved.bound >= (values[0] ?? Infinity)),
    }
  }
  return solved
}

/** Solves one reading from a plan that is known, if any; undefined where neither is there a plan to begin with nor is one found. */
const solveReading = async (
  known: CuttingPlan | undefined,
  task: Task,
  work: Work,
  options: ProveOptions,
): Promise<Proof | undefined> => {
  const start = known === undefined ? NONE : valuesIn(known, task)
  const own = solvePacking(task.unpacked.packing, start, work, (filled, _values, bound) =>
    options.onBetter?.({
      plan: planFrom(filled, task),
      bound: costOfBound(bound, task),
      proven: provenOf([]),
    }),
  )
  const { integerSolver } = options
  const solved =
    own.proven[0] === true || integerSolver === undefined ? own : await askAbout(own, task, integerSolver)
  const plan = solved.filled === undefined ? known : planFrom(solved.filled, task)
  return plan === undefined ? undefined : proofOf(plan, solved, task)
}

/** As drawn first; with every piece as short as it may be only to see whether that is better: then a plan uses the tolerance. */
const solveReadings = async (
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

/** Pieces set aside, and the problem without them. */
interface Cutback {
  readonly problem: CuttingProblem
  readonly unmade: readonly Unmade[]
}

/** Part of the work that goes into asking once whether the boards make more pieces. */
const ASKING_SHARE = 1 / 20

const makes = async (
  problem: CuttingProblem,
  unmade: readonly Unmade[],
  budget: number,
): Promise<boolean> => {
  const work = { left: budget * ASKING_SHARE }
  const proof = await solveReading(
    undefined,
    taskOf(madeBy({ unmade }, problem), 'least', unmade, NONE),
    work,
    {},
  )
  return proof !== undefined
}

/** The least of a line that has to stand aside, the other lines as they are: found by halving, since fewer pieces always fit. */
const leastAside = async (
  problem: CuttingProblem,
  unmade: readonly Unmade[],
  line: Unmade,
  budget: number,
): Promise<number> => {
  const others = unmade.filter((each) => each !== line)
  let fits = line.count
  for (let low = 0; low < fits;) {
    const count = (low + fits) >> 1
    if (
      await makes(
        problem,
        [...others, { ...line, count }].filter((each) => each.count > 0),
        budget,
      )
    )
      fits = count
    else low = count + 1
  }
  return fits
}

/** As few pieces aside as the boards allow, line by line as the first plan has them, longest first. */
const cutbackOf = async (problem: CuttingProblem, first: CuttingPlan, budget: number): Promise<Cutback> => {
  let unmade = first.unmade
  for (const line of first.unmade) {
    if (line.why === 'too-long') continue
    const count = await leastAside(problem, unmade, line, budget)
    unmade = unmade.flatMap((each) => (each !== line ? [each] : count > 0 ? [{ ...line, count }] : []))
  }
  return { problem: madeBy({ unmade }, problem), unmade }
}

const isSame = (these: readonly Unmade[], those: readonly Unmade[]): boolean =>
  these.length === those.length && these.every(({ count }, i) => count === those[i]?.count)

/**
 * The best plan of a problem and what is proved of it, starting from a plan that is known. Where that one leaves pieces unmade for
 * want of boards, it is first tried how many of them can be made after all; the proof is then among the plans that make what this
 * plan makes.
 *
 * The same problem, plan and budget always give the same answer. Rejects with a RangeError where a number of the problem is not
 * whole.
 */
export const prove = async (
  problem: CuttingProblem,
  first: CuttingPlan,
  options: ProveOptions = {},
): Promise<Proof> => {
  requireWhole(problem)
  const budget = options.budget ?? BUDGET
  const cutback = await cutbackOf(problem, first, budget)
  const known = isSame(cutback.unmade, first.unmade) ? first : undefined
  const proof = await solveReadings(known, cutback.problem, cutback.unmade, { left: budget }, options)
  return proof ?? { plan: first, bound: 0, proven: provenOf([]) }
}
