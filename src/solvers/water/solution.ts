import type { Network, Solution } from './network'
import { liftOf } from './oneWay'
import { PUMP, type Work } from './work'

/** Less is no flow, m3/s: what rounding and the resistance of shut links leave, a thousandth of a drop a second. */
const NO_FLOW = 1e-12

/** On the straight lines of the last sweep, so that at each joint just as much leaves as comes. */
const mouthFlows = ({ shape, mouthFlow, mouthPerHead, head, takenAt }: Work): Float64Array => {
  const { mouthAt, mouthPlace } = shape
  const flows = new Float64Array(mouthFlow.length)
  for (let at = 0; at < flows.length; at += 1) {
    const place = mouthPlace[at] ?? 0
    const since = (head[place] ?? 0) - (takenAt[place] ?? 0)
    const flow = (mouthFlow[at] ?? 0) + (mouthPerHead[at] ?? 0) * since
    if (flow > NO_FLOW) flows[mouthAt[at] ?? 0] = flow
  }
  return flows
}

const headsByNode = ({ shape, head, isCut }: Work): Float64Array => {
  const heads = new Float64Array(head.length)
  for (let place = 0; place < heads.length; place += 1)
    heads[shape.nodeAt[place] ?? 0] = isCut[place] === 1 ? NaN : (head[place] ?? 0)
  return heads
}

/** Writes the links' flows, each in its own way, into the arrays of their sorts. */
const spreadFlows = (work: Work, pipes: Float64Array, valves: Float64Array, pumps: Float64Array): void => {
  const { linkAt, isTurned, upper, lower } = work.shape
  const firstPump = pipes.length + valves.length
  for (let slot = 0; slot < linkAt.length; slot += 1) {
    const down = work.flow[slot] ?? 0
    const isDead = work.isCut[upper[slot] ?? 0] === 1 || work.isCut[lower[slot] ?? 0] === 1
    if (isDead || Math.abs(down) <= NO_FLOW) continue
    const link = linkAt[slot] ?? 0
    const flow = isTurned[slot] === 1 ? -down : down
    if (link < pipes.length) pipes[link] = flow
    else if (link < firstPump) valves[link - pipes.length] = flow
    else pumps[link - firstPump] = flow
  }
}

const pumpLifts = (work: Work, pumpM3S: Float64Array): Float64Array => {
  const lifts = new Float64Array(pumpM3S.length)
  for (const slot of work.oneWay) {
    const pump = work.pumpAt[slot] ?? 0
    if (work.kind[slot] === PUMP) lifts[pump] = liftOf(work, slot, pumpM3S[pump] ?? 0)
  }
  return lifts
}

/** What the sweeps came to, in the order of the network's own arrays. */
export const solutionOf = (
  work: Work,
  { pipes, valves, pumps }: Network,
  { sweeps, isSettled }: { readonly sweeps: number; readonly isSettled: boolean },
): Solution => {
  const pipeM3S = new Float64Array(pipes.from.length)
  const valveM3S = new Float64Array(valves.from.length)
  const pumpM3S = new Float64Array(pumps.from.length)
  spreadFlows(work, pipeM3S, valveM3S, pumpM3S)
  return {
    ok: true,
    pipeM3S,
    valveM3S,
    pumpM3S,
    mouthM3S: mouthFlows(work),
    headM: headsByNode(work),
    pumpHeadM: pumpLifts(work, pumpM3S),
    sweeps,
    largestChangeM: work.change,
    isSettled,
  }
}
