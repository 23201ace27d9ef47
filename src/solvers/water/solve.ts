import { faultIn } from './faults'
import { load } from './load'
import type { Fault, Network, Solution, SolveOptions } from './network'
import { turnOneWays } from './oneWay'
import { waterAt } from './properties'
import { hasShape, shapeOf } from './shape'
import { solutionOf } from './solution'
import { startCold, startWarm } from './start'
import { finish, sweep } from './sweep'
import { type Work, workOn } from './work'

const USUAL_C = 20
const USUAL_TOLERANCE_M = 1e-5
const USUAL_SWEEPS = 100

/**
 * From this sweep on only half of every other step is taken: a network that is still at it goes to and fro. Such a step is
 * never the last one, for it may mix flows that don't add up.
 */
const FIRST_HALVED = 20

/** The arrays that each solution was found in. Its shape is used again by the next network that has it. */
const workOf = new WeakMap<Solution, Work>()

const roomFor = (network: Network, previous: Solution | undefined): Work => {
  const before = previous === undefined ? undefined : workOf.get(previous)
  return before !== undefined && hasShape(before.shape, network) ? before : workOn(shapeOf(network))
}

const halve = (now: Float64Array, before: Float64Array): void => {
  for (let i = 0; i < now.length; i += 1) now[i] = ((now[i] ?? 0) + (before[i] ?? 0)) / 2
}

const sweepHalf = (work: Work): void => {
  const [head, flow] = [work.head.slice(), work.flow.slice()]
  sweep(work, false)
  halve(work.head, head)
  halve(work.flow, flow)
}

interface Settling {
  readonly sweeps: number
  readonly isSettled: boolean
}

const settle = (work: Work, isCold: boolean, toleranceM: number, mostSweeps: number): Settling => {
  for (let sweeps = 1; sweeps <= mostSweeps; sweeps += 1) {
    const isGuess = isCold && sweeps === 1
    const isHalf = sweeps >= FIRST_HALVED && sweeps % 2 === 0
    if (isGuess) finish(work, true)
    else if (isHalf) sweepHalf(work)
    else sweep(work, false)
    const turned = turnOneWays(work)
    const isStill = turned === 0 && work.change < toleranceM && work.misfit < toleranceM
    if (isStill && !isGuess && !isHalf) return { sweeps, isSettled: true }
  }
  return { sweeps: mostSweeps, isSettled: false }
}

/**
 * Flow of every link and head of every joint of a pipe network in steady flow, SI.
 *
 * Bad input gives a `Fault` with a sentence. A pump that can't lift to the mouths is no fault: nothing flows. `previous`
 * is a solution of a network joined up alike, from which this one is reached in fewer sweeps; the answer is the same
 * within the tolerance, and no argument is changed.
 *
 * Newton's method on heads and flows together (Todini and Pilati, in: Computer Applications in Water Supply 1, 1988), with
 * the equations eliminated from the leaves instead of by a matrix.
 */
export const solve = (
  network: Network,
  options: SolveOptions = {},
  previous?: Solution,
): Solution | Fault => {
  const { temperatureC = USUAL_C, toleranceM = USUAL_TOLERANCE_M, mostSweeps = USUAL_SWEEPS } = options
  const checked = faultIn(network, temperatureC)
  if (!checked.ok) return checked
  const work = roomFor(network, previous)
  const { strandedJoint } = work.shape
  if (strandedJoint >= 0)
    return { ok: false, sentence: `Joint ${strandedJoint} is tied to no open level, whatever valve is open.` }
  load(work, network, checked.curves, waterAt(temperatureC).kinematicM2S)
  const isCold = previous === undefined || !workOf.has(previous) || !startWarm(work, network, previous)
  if (isCold) startCold(work)
  const solution = solutionOf(work, network, settle(work, isCold, toleranceM, mostSweeps))
  workOf.set(solution, work)
  return solution
}
