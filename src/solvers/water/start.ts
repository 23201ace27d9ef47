import type { Network, Solution } from './network'
import { middleFlow } from './oneWay'
import { flowUnder, found, lossOf, passed } from './resistance'
import { wakeAll } from './sweep'
import { CHECK, PUMP, type Work } from './work'

// Bound once, as in sweep.ts.
const lossAt = lossOf
const lost = found
const drawn = passed

/** A microtube is taken to run smoothly at the start, and a mouth without length under this head, m. */
const START_REYNOLDS = 1000
const START_HEAD_M = 0.1

/**
 * A guess from which Newton's method settles in few sweeps: every mouth runs as it usually does, and the links of the
 * trees pass what hangs from them. Leaves the mouths taken, for the first sweep.
 */
export const startCold = (work: Work): void => {
  const { shape, mouths, mouthLevelM, head, draw, conductance, supply, flow, isHeld } = work
  wakeAll(work)
  const { mouthPlace, treeCount, upper, nodeAt, levelCount } = shape
  head.fill(0, 0, nodeAt.length - levelCount)
  conductance.fill(0)
  isHeld.fill(0)
  flow.fill(0)
  const passes = draw.slice()
  for (let place = 0; place < draw.length; place += 1) supply[place] = -(draw[place] ?? 0)
  for (let mouth = 0; mouth < mouthPlace.length; mouth += 1) {
    const level = mouthLevelM[mouth] ?? 0
    if (level === Infinity) continue
    const place = mouthPlace[mouth] ?? 0
    const perFlow = mouths.reynolds[mouth] ?? 0
    if (perFlow > 0) drawn.flow = START_REYNOLDS / perFlow
    else flowUnder(mouths, mouth, START_HEAD_M)
    lossAt(mouths, mouth, drawn.flow)
    const perHead = 1 / lost.slope
    conductance[place] = (conductance[place] ?? 0) + perHead
    supply[place] = (supply[place] ?? 0) + perHead * (level + lost.loss) - drawn.flow
    passes[place] = (passes[place] ?? 0) + drawn.flow
  }
  for (let place = 0; place < treeCount; place += 1) {
    const through = passes[place] ?? 0
    flow[place] = through
    const above = upper[place] ?? 0
    passes[above] = (passes[above] ?? 0) + through
  }
  for (const slot of work.oneWay)
    if (slot >= treeCount && work.kind[slot] === PUMP) flow[slot] = middleFlow(work, slot)
}

const isTaken = (work: Work, previous: Solution): boolean => {
  const { nodeAt, levelCount } = work.shape
  for (let place = 0; place < nodeAt.length - levelCount; place += 1)
    if (work.isCut[place] === 0 && Number.isNaN(previous.headM[nodeAt[place] ?? 0] ?? NaN)) return false
  return true
}

/** The last solution found in these very arrays: only branches where something has changed need a sweep. */
const goOn = ({ shape, isAwake, isChanged }: Work): void => {
  const { isBranch } = shape.blocks
  for (let block = 0; block < isBranch.length; block += 1)
    isAwake[block] = isBranch[block] === 0 || isChanged[block] === 1 ? 1 : 0
}

const flowBefore = ({ pipes, valves }: Network, previous: Solution, link: number): number => {
  const valve = link - pipes.from.length
  const pump = valve - valves.from.length
  const flows = valve < 0 ? previous.pipeM3S : pump < 0 ? previous.valveM3S : previous.pumpM3S
  return flows[valve < 0 ? link : pump < 0 ? valve : pump] ?? 0
}

/** Takes heads and flows over from a solution of the same shape that was found in other arrays, or some time ago. */
const takeOver = (work: Work, network: Network, previous: Solution): void => {
  const { shape, head, flow, isHeld, kind } = work
  const { nodeAt, levelCount, linkAt, isTurned } = shape
  wakeAll(work)
  for (let place = 0; place < nodeAt.length - levelCount; place += 1)
    head[place] = (previous.headM[nodeAt[place] ?? 0] ?? 0) || 0
  for (let slot = 0; slot < linkAt.length; slot += 1) {
    const before = flowBefore(network, previous, linkAt[slot] ?? 0)
    flow[slot] = isTurned[slot] === 1 ? -before : before
    isHeld[slot] = (kind[slot] === CHECK || kind[slot] === PUMP) && !(before > 0) ? 1 : 0
  }
}

/** Begins where the last solution of the same shape ended; false where that has no head for a joint that now has one. */
export const startWarm = (work: Work, network: Network, previous: Solution): boolean => {
  if (!isTaken(work, previous)) return false
  if (work.last === previous) goOn(work)
  else takeOver(work, network, previous)
  return true
}
