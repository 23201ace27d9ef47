import { sweepCore } from './coreSweep'
import { headBehind, isBlocked, lossOfOneWay } from './oneWay'
import { flowUnder, found, lossEitherWay, passed } from './resistance'
import { PLAIN, type Work } from './work'

// An imported name is looked up at each use where modules are not bundled. What is asked at each place is bound once.
const plain = PLAIN
const flowThrough = flowUnder
const lossAt = lossEitherWay
const drawn = passed
const lost = found

/*
 * One sweep is one step of Newton's method for all heads and flows at once.
 *
 *   up     each mouth, then each joint from the leaves on, is a straight line: what it takes = conductance * head - supply.
 *          A link on the way to the joint above loses offset + slope * flow; in series with the joint below that is
 *              conductance' = conductance / (1 + slope * conductance)
 *              supply'      = (supply + conductance * offset) / (1 + slope * conductance)
 *          Slopes are only ever multiplied, so that open valves, flat pump curves and pipes of no length, slope 0, are
 *          nothing special, and sums are of positive terms only, so that nothing cancels.
 *   core   what is left of joints in rings is solved by elimination.
 *   down   heads and flows from the levels to the leaves.
 *
 * A branch that is asleep keeps its straight line from the last sweep that it was in.
 */

/**
 * Each mouth takes what its head drives through it, nothing where that is under its level, and never gives any. Its
 * straight line is the tangent. A wary sweep takes the chord from dry to where it is: flow bends down as head rises, so
 * that the tangent of a mouth far from dry says water still comes where there is none, and many such mouths behind one
 * throttled valve go from all dry to all wet for ever; the chord never leads past dry.
 */
const takeMouths = (work: Work, first: number, end: number): void => {
  const { shape, mouths, mouthLevelM, mouthFlow, mouthPerHead, head, conductance, supply, isWary } = work
  const { mouthPlace } = shape
  for (let mouth = first; mouth < end; mouth += 1) {
    const place = mouthPlace[mouth] ?? 0
    const at = head[place] ?? 0
    const over = at - (mouthLevelM[mouth] ?? 0)
    if (over > 0) {
      flowThrough(mouths, mouth, over)
      const { flow } = drawn
      const perHead = isWary ? flow / over : drawn.perHead
      mouthFlow[mouth] = flow
      mouthPerHead[mouth] = perHead
      conductance[place] = (conductance[place] ?? 0) + perHead
      supply[place] = (supply[place] ?? 0) + perHead * at - flow
    } else {
      mouthFlow[mouth] = 0
      mouthPerHead[mouth] = 0
    }
  }
}

const clear = ({ head, takenAt, conductance, supply, draw }: Work, first: number, end: number): void => {
  for (let place = first; place < end; place += 1) {
    takenAt[place] = head[place] ?? 0
    conductance[place] = 0
    supply[place] = -(draw[place] ?? 0)
  }
}

/** Adds the straight line of a place to that of the place above it. */
const hang = ({ shape, conductance, supply, offset, share }: Work, place: number): void => {
  const above = shape.upper[place] ?? 0
  const takes = conductance[place] ?? 0
  const part = share[place] ?? 0
  conductance[above] = (conductance[above] ?? 0) + part * takes
  supply[above] = (supply[above] ?? 0) + part * ((supply[place] ?? 0) + takes * (offset[place] ?? 0))
}

/** Straightens the links of a run of places from the leaves on; the most that one misses, m. */
const straighten = (work: Work, first: number, end: number): number => {
  const { shape, links, kind, head, conductance, flow, offset, slope, share } = work
  const { upper } = shape
  let misfit = 0
  for (let place = first; place < end; place += 1) {
    const through = flow[place] ?? 0
    if (kind[place] === plain) lossAt(links, place, through)
    else if (isBlocked(work, place)) {
      share[place] = 0
      continue
    } else lossOfOneWay(work, place)
    const { loss, slope: grows } = lost
    const missed = Math.abs((head[upper[place] ?? 0] ?? 0) - (head[place] ?? 0) - loss)
    if (missed > misfit) misfit = missed
    offset[place] = loss - grows * through
    slope[place] = grows
    share[place] = 1 / (1 + grows * (conductance[place] ?? 0))
    hang(work, place)
  }
  return misfit
}

/** Heads and flows of a run of places from above; the most by which a head changes, m. */
export const comeDown = (work: Work, first: number, end: number): number => {
  const { shape, head, conductance, supply, flow, offset, slope, share } = work
  const { upper } = shape
  let change = 0
  for (let place = end - 1; place >= first; place -= 1) {
    const over = (head[upper[place] ?? 0] ?? 0) - (offset[place] ?? 0)
    const gives = supply[place] ?? 0
    const part = share[place] ?? 0
    const now = part === 0 ? headBehind(work, place) : part * (over + (slope[place] ?? 0) * gives)
    flow[place] = part * ((conductance[place] ?? 0) * over - gives)
    const by = Math.abs(now - (head[place] ?? 0))
    if (by > change) change = by
    head[place] = now
  }
  return change
}

const up = (work: Work, areMouthsTaken: boolean): void => {
  const { shape, isAwake, misfits } = work
  const { start, mouth, isBranch } = shape.blocks
  const blocks = isBranch.length
  const end = shape.nodeAt.length
  if (!areMouthsTaken) clear(work, shape.treeCount, end)
  for (let block = 0; block < blocks; block += 1) {
    const first = start[block] ?? 0
    const next = start[block + 1] ?? 0
    if (!areMouthsTaken && isAwake[block] === 1) clear(work, first, next)
  }
  for (let block = 0; block < blocks; block += 1) {
    const first = start[block] ?? 0
    const next = start[block + 1] ?? 0
    if (isAwake[block] === 0) {
      hang(work, next - 1)
      continue
    }
    if (!areMouthsTaken) takeMouths(work, mouth[block] ?? 0, mouth[block + 1] ?? 0)
    misfits[block] = straighten(work, first, next)
  }
  if (!areMouthsTaken) takeMouths(work, mouth[blocks] ?? 0, shape.mouthPlace.length)
}

const down = (work: Work, toleranceM: number): void => {
  const { shape, head, isAwake, misfits, solvedUnder } = work
  const { start, isBranch } = shape.blocks
  for (let block = isBranch.length - 1; block >= 0; block -= 1) {
    if (isAwake[block] === 0) continue
    const next = start[block + 1] ?? 0
    const change = comeDown(work, start[block] ?? 0, next)
    const misfit = misfits[block] ?? 0
    if (change > work.change) work.change = change
    if (misfit > work.misfit) work.misfit = misfit
    if (isBranch[block] === 0 || change >= toleranceM || misfit >= toleranceM) continue
    isAwake[block] = 0
    solvedUnder[block] = head[shape.upper[next - 1] ?? 0] ?? 0
  }
}

/**
 * One sweep from the flows and heads at hand. Branches that come to rest within the tolerance fall asleep. At the start
 * mouths may have been taken already, and the core's flows may be unknown.
 */
export const sweep = (work: Work, toleranceM: number, isFirst = false): void => {
  work.change = 0
  work.misfit = 0
  up(work, isFirst)
  sweepCore(work, isFirst)
  down(work, toleranceM)
}

/** Wakes every branch. */
export const wakeAll = ({ isAwake }: Work): void => {
  isAwake.fill(1)
}

/**
 * Solves each sleeping branch anew under the head above it where that has moved by more than `byM`, and wakes it if
 * told to. Returns how many there were.
 */
export const follow = (work: Work, byM: number, isWaking: boolean): number => {
  const { shape, head, isAwake, solvedUnder } = work
  const { start, isBranch } = shape.blocks
  let moved = 0
  for (let block = isBranch.length - 1; block >= 0; block -= 1) {
    if (isAwake[block] === 1) continue
    const next = start[block + 1] ?? 0
    const above = head[shape.upper[next - 1] ?? 0] ?? 0
    if (Math.abs(above - (solvedUnder[block] ?? 0)) <= byM) continue
    comeDown(work, start[block] ?? 0, next)
    solvedUnder[block] = above
    if (isWaking) isAwake[block] = 1
    moved += 1
  }
  return moved
}
