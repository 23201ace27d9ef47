import { curvesThrough, faultInArrays, faultInJoins, faultInNumbers } from './faults'
import { load } from './load'
import type { Fault, Network, Solution, SolveOptions } from './network'
import { turnOneWays } from './oneWay'
import { waterAt } from './properties'
import { hasShape, shapeOf } from './shape'
import { solutionOf } from './solution'
import { startCold, startWarm } from './start'
import { follow, sweep, wakeAll } from './sweep'
import { type Work, workOn } from './work'

const USUAL_C = 20
const USUAL_TOLERANCE_M = 1e-5
const USUAL_SWEEPS = 100

/**
 * From this sweep on only half of every other step is taken: a network that is still at it goes to and fro. Such a step is
 * never the last one, for it may mix flows that don't add up.
 */
const FIRST_HALVED = 20

/** From this sweep on stretches of so many are wary, and as many not, in turn: wide tubes that run dry all at once hunt. */
const FIRST_WARY = 14
const WARY_STRETCH = 6

const isWaryIn = (sweeps: number): boolean =>
  sweeps >= FIRST_WARY && Math.floor((sweeps - FIRST_WARY) / WARY_STRETCH) % 2 === 0

const fault = (sentence: string): Fault => ({ ok: false, sentence })

/** The arrays that each solution was found in, whose shape the next network may have as well. */
const workOf = new WeakMap<Solution, Work>()

/** Room for a network, its joins checked: that of the previous one where it has the same shape. */
const roomFor = (network: Network, before: Work | undefined): Work | Fault => {
  if (before !== undefined && hasShape(before.shape, network)) return before
  const wrong = faultInJoins(network)
  if (wrong !== undefined) return fault(wrong)
  const shape = shapeOf(network)
  return shape.strandedJoint < 0
    ? workOn(shape)
    : fault(`Joint ${shape.strandedJoint} is tied to no open level, whatever valve is open.`)
}

const halve = (now: Float64Array, before: Float64Array): void => {
  for (let i = 0; i < now.length; i += 1) now[i] = ((now[i] ?? 0) + (before[i] ?? 0)) / 2
}

const sweepHalf = (work: Work): void => {
  const head = work.head.slice()
  const flow = work.flow.slice()
  wakeAll(work)
  sweep(work, 0)
  halve(work.head, head)
  halve(work.flow, flow)
}

interface Settling {
  readonly sweeps: number
  readonly isSettled: boolean
}

/** Branches whose head above has moved by a smaller share of the tolerance are left as they are at the end. */
const STILL_SHARE = 1e-4

/** Sweeps until nothing moves and nothing is missed any more; `isCold` where mouths alone have been taken so far. */
const settle = (work: Work, isCold: boolean, toleranceM: number, mostSweeps: number): Settling => {
  for (let sweeps = 1; sweeps <= mostSweeps; sweeps += 1) {
    const isGuess = isCold && sweeps === 1
    if (work.isWary && !isWaryIn(sweeps)) wakeAll(work)
    work.isWary = isWaryIn(sweeps)
    const isHalf = sweeps >= FIRST_HALVED && sweeps % 2 === 0
    if (isHalf) sweepHalf(work)
    else sweep(work, isGuess ? 0 : toleranceM, isGuess)
    const turned = turnOneWays(work)
    if (
      isGuess ||
      isHalf ||
      work.isWary ||
      turned > 0 ||
      work.change >= toleranceM ||
      work.misfit >= toleranceM
    )
      continue
    if (follow(work, toleranceM, true) > 0) continue
    follow(work, toleranceM * STILL_SHARE, false)
    return { sweeps, isSettled: true }
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
  const wrong = faultInArrays(network, temperatureC)
  if (wrong !== undefined) return fault(wrong)
  const curves = curvesThrough(network.pumps.curves)
  if (typeof curves === 'string') return fault(curves)
  const before = previous && workOf.get(previous)
  const work = roomFor(network, before)
  if ('ok' in work) return work
  const isSound = load(work, network, curves, waterAt(temperatureC).kinematicM2S)
  const isWarm = isSound && previous !== undefined && work === before && startWarm(work, network, previous)
  work.last = undefined
  if (!isSound) return fault(faultInNumbers(network) ?? 'Some number of the network is none.')
  if (!isWarm) startCold(work)
  const settling = settle(work, !isWarm, toleranceM, mostSweeps)
  const solution = solutionOf(work, network, settling)
  workOf.set(solution, work)
  if (settling.isSettled) work.last = solution
  return solution
}
