import { reachedFromLevels } from './core'
import type { Network } from './network'
import type { PumpCurve } from './pumpCurve'
import { type Filling, fill, fillingOf, forget } from './resistance'
import { CHECK, PLAIN, PUMP, SHUT, type Work } from './work'

// Bound once, as in sweep.ts.
const fillIn = fill

const kindOf = ({ pipes, valves }: Network, link: number): number => {
  const valve = link - pipes.from.length
  if (valve < 0) return PLAIN
  if (valve >= valves.from.length) return PUMP
  return valves.isOpen[valve] === 0 ? SHUT : valves.isCheck[valve] === 0 ? PLAIN : CHECK
}

/** Whether the link has changed since it was last loaded; a pump counts as changed. */
const loadLink = (work: Work, network: Network, filling: Filling, slot: number): boolean => {
  const { pipes, valves } = network
  const link = work.shape.linkAt[slot] ?? 0
  const firstValve = pipes.from.length
  if (link < firstValve)
    return fillIn(filling, slot, pipes.lengthM[link] ?? 0, pipes.boreM[link] ?? 0, pipes.lossK[link] ?? 0)
  const kind = kindOf(network, link)
  const isOther = work.kind[slot] !== kind
  work.kind[slot] = kind
  if (kind === CHECK || kind === PUMP) work.oneWay.push(slot)
  if (kind === PUMP) {
    work.pumpAt[slot] = link - firstValve - valves.from.length
    return true
  }
  const valve = link - firstValve
  return fillIn(filling, slot, 0, valves.boreM[valve] ?? 0, valves.lossK[valve] ?? 0) || isOther
}

/** Links, in the order of their slots; whether all are sound. */
const loadLinks = (work: Work, network: Network): boolean => {
  const { linkAt, blocks } = work.shape
  const filling = fillingOf(work.links, work.kinematicM2S)
  work.oneWay.length = 0
  let slot = 0
  for (let block = 0; block < blocks.isBranch.length; block += 1) {
    let isChanged = false
    for (; slot < (blocks.start[block + 1] ?? 0); slot += 1)
      if (loadLink(work, network, filling, slot)) isChanged = true
    work.isChanged[block] = isChanged ? 1 : 0
  }
  for (; slot < linkAt.length; slot += 1) loadLink(work, network, filling, slot)
  return filling.isSound
}

/** A mouth of no length and no loss would take any flow at no head: it is given a trace of smooth loss, s/m2. */
const LEAST_SMOOTH = 1e-3
/** One without length is smooth where it loses less than this, m: else its flow would grow beyond all measure near 0. */
const TRACE_M = 1e-9

const loadMouth = (work: Work, { mouths }: Network, filling: Filling, at: number): boolean => {
  const { shape, mouthLevelM } = work
  const { smooth, square } = work.mouths
  const mouth = shape.mouthAt[at] ?? 0
  const lengthM = mouths.lengthM[mouth] ?? 0
  const own = mouths.levelM[mouth] ?? 0
  if (!Number.isFinite(own)) filling.isSound = false
  const levelM = work.isCut[shape.mouthPlace[at] ?? 0] === 1 ? Infinity : own
  const isMoved = levelM !== mouthLevelM[at]
  mouthLevelM[at] = levelM
  if (!fillIn(filling, at, lengthM, mouths.boreM[mouth] ?? 0, mouths.lossK[mouth] ?? 0)) return isMoved
  if (lengthM === 0) smooth[at] = Math.max(LEAST_SMOOTH, Math.sqrt(TRACE_M * (square[at] ?? 0)))
  return true
}

const loadMouths = (work: Work, network: Network): boolean => {
  const { blocks, mouthAt } = work.shape
  const filling = fillingOf(work.mouths, work.kinematicM2S)
  let at = 0
  for (let block = 0; block < blocks.isBranch.length; block += 1) {
    let isChanged = false
    for (; at < (blocks.mouth[block + 1] ?? 0); at += 1)
      if (loadMouth(work, network, filling, at)) isChanged = true
    if (isChanged) work.isChanged[block] = 1
  }
  for (; at < mouthAt.length; at += 1) loadMouth(work, network, filling, at)
  return filling.isSound
}

/** Marks the joints that shut valves cut off: in the core by reach, in the trees by what they hang from. */
const markCut = ({ shape, kind, isCut }: Work): void => {
  isCut.fill(0)
  if (!kind.includes(SHUT)) return
  const { treeCount, core, upper, lower } = shape
  const inCore = (places: Int32Array) => places.subarray(treeCount).map((place) => place - treeCount)
  const isShut = (link: number) => kind[treeCount + link] === SHUT
  reachedFromLevels(core.nodes.length, inCore(upper), inCore(lower), isShut).forEach((reached, i) => {
    isCut[treeCount + i] = 1 - reached
  })
  for (let place = treeCount - 1; place >= 0; place -= 1)
    isCut[place] = kind[place] === SHUT ? 1 : (isCut[upper[place] ?? 0] ?? 0)
}

const loadDraw = ({ shape, draw, isCut }: Work, joints: Float64Array, place: number): boolean => {
  const own = joints[(shape.nodeAt[place] ?? 0) - shape.levelCount] ?? 0
  const drawn = isCut[place] === 1 ? 0 : own
  if (draw[place] === drawn) return false
  draw[place] = drawn
  return true
}

const loadPlaces = (work: Work, { levels, joints }: Network): boolean => {
  const { blocks, nodeAt, levelCount } = work.shape
  const firstLevel = nodeAt.length - levelCount
  let place = 0
  for (let block = 0; block < blocks.isBranch.length; block += 1)
    for (; place < (blocks.start[block + 1] ?? 0); place += 1)
      if (loadDraw(work, joints, place)) work.isChanged[block] = 1
  for (; place < firstLevel; place += 1) loadDraw(work, joints, place)
  work.head.set(levels, firstLevel)
  return joints.every(Number.isFinite) && levels.every(Number.isFinite)
}

const loadPumps = (
  { pumps }: Work,
  { curve, speed }: Network['pumps'],
  curves: readonly PumpCurve[],
): boolean => {
  pumps.length = 0
  curve.forEach((index, pump) => {
    const its = curves[index]
    if (its !== undefined) pumps.push({ curve: its, speed: speed[pump] ?? 0 })
  })
  return speed.every((share) => share >= 0 && share < Infinity)
}

/**
 * Writes a network of the shape into the arrays of work and marks the blocks where something has changed; flows and the
 * heads of joints stay as they are. False where some number is none that it may be.
 */
export const load = (
  work: Work,
  network: Network,
  curves: readonly PumpCurve[],
  kinematicM2S: number,
): boolean => {
  if (work.kinematicM2S !== kinematicM2S) {
    forget(work.links)
    forget(work.mouths)
    work.kinematicM2S = kinematicM2S
  }
  const areLinksSound = loadLinks(work, network)
  const arePumpsSound = loadPumps(work, network.pumps, curves)
  markCut(work)
  const areMouthsSound = loadMouths(work, network)
  const arePlacesSound = loadPlaces(work, network)
  return areLinksSound && arePumpsSound && areMouthsSound && arePlacesSound
}
