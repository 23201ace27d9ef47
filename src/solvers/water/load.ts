import { reachedFromLevels } from './core'
import type { Network } from './network'
import type { PumpCurve } from './pumpCurve'
import { type Filling, fill, fillingOf } from './resistance'
import { CHECK, PLAIN, PUMP, SHUT, type Work } from './work'

/** A check valve or a standing pump that can't pass anything is as good as shut, but it cuts nothing off. */
const loadValve = (work: Work, network: Network, filling: Filling, slot: number, valve: number): void => {
  const { boreM, lossK, isOpen, isCheck } = network.valves
  fill(filling, slot, 0, boreM[valve] ?? 0, lossK[valve] ?? 0)
  work.kind[slot] = isOpen[valve] === 0 ? SHUT : isCheck[valve] === 0 ? PLAIN : CHECK
}

/** Links, in the order of their slots. */
const loadLinks = (work: Work, network: Network, kinematicM2S: number): void => {
  const { linkAt } = work.shape
  const { lengthM, boreM, lossK } = network.pipes
  const firstValve = lengthM.length
  const firstPump = firstValve + network.valves.from.length
  const filling = fillingOf(work.links, kinematicM2S)
  work.oneWay.length = 0
  for (let slot = 0; slot < linkAt.length; slot += 1) {
    const link = linkAt[slot] ?? 0
    work.kind[slot] = PLAIN
    if (link < firstValve) fill(filling, slot, lengthM[link] ?? 0, boreM[link] ?? 0, lossK[link] ?? 0)
    else if (link < firstPump) loadValve(work, network, filling, slot, link - firstValve)
    else {
      work.kind[slot] = PUMP
      work.pumpAt[slot] = link - firstPump
    }
    if (work.kind[slot] === CHECK || work.kind[slot] === PUMP) work.oneWay.push(slot)
  }
}

/** A mouth of no length and no loss would take any flow at no head: it is given a trace of smooth loss, s/m2. */
const LEAST_SMOOTH = 1e-3
/** One without length is smooth where it loses less than this, m: else its flow would grow beyond all measure near 0. */
const TRACE_M = 1e-9

const loadMouths = (work: Work, { mouths }: Network, kinematicM2S: number): void => {
  const { shape, mouthLevelM, isCut } = work
  const { lengthM, boreM, lossK, levelM } = mouths
  const filling = fillingOf(work.mouths, kinematicM2S)
  const { smooth, square } = work.mouths
  for (let mouth = 0; mouth < mouthLevelM.length; mouth += 1) {
    fill(filling, mouth, lengthM[mouth] ?? 0, boreM[mouth] ?? 0, lossK[mouth] ?? 0)
    mouthLevelM[mouth] = isCut[shape.mouthPlace[mouth] ?? 0] === 1 ? Infinity : (levelM[mouth] ?? 0)
    if (lengthM[mouth] === 0)
      smooth[mouth] = Math.max(LEAST_SMOOTH, Math.sqrt(TRACE_M * (square[mouth] ?? 0)))
  }
}

/** Marks the joints that shut valves cut off: in the core by reach, in the trees by what they hang from. */
const markCut = ({ shape, kind, isCut }: Work): void => {
  isCut.fill(0)
  if (!kind.includes(SHUT)) return
  const { treeCount, core, upper, lower } = shape
  const coreCount = core.nodes.length
  const inCore = (places: Int32Array) => places.subarray(treeCount).map((place) => place - treeCount)
  reachedFromLevels(
    coreCount,
    inCore(upper),
    inCore(lower),
    (link) => kind[treeCount + link] === SHUT,
  ).forEach((reached, i) => {
    isCut[treeCount + i] = 1 - reached
  })
  for (let place = treeCount - 1; place >= 0; place -= 1)
    isCut[place] = kind[place] === SHUT ? 1 : (isCut[upper[place] ?? 0] ?? 0)
}

const loadPlaces = ({ shape, draw, head, isCut }: Work, { levels, joints }: Network): void => {
  const { nodeAt, levelCount } = shape
  const firstLevel = nodeAt.length - levelCount
  for (let place = 0; place < firstLevel; place += 1)
    draw[place] = isCut[place] === 1 ? 0 : (joints[(nodeAt[place] ?? 0) - levelCount] ?? 0)
  head.set(levels, firstLevel)
}

/** Writes a network of the shape into the arrays of work; flows and the heads of joints stay as they are. */
export const load = (
  work: Work,
  network: Network,
  curves: readonly PumpCurve[],
  kinematicM2S: number,
): void => {
  loadLinks(work, network, kinematicM2S)
  work.pumps.length = 0
  network.pumps.curve.forEach((index, pump) => {
    const curve = curves[index]
    if (curve !== undefined) work.pumps.push({ curve, speed: network.pumps.speed[pump] ?? 0 })
  })
  markCut(work)
  loadMouths(work, network, kinematicM2S)
  loadPlaces(work, network)
}
