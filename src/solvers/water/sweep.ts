import { sweepCore } from './coreSweep'
import { lossInSlot } from './linkLoss'
import { headBehind, isBlocked } from './oneWay'
import { flowUnder, found, passed } from './resistance'
import { PLAIN, type Work } from './work'

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
 */

/** Each mouth takes what its head drives through it, nothing where that is under its level, and never gives any. */
const takeMouths = ({ shape, mouths, mouthLevelM, head, conductance, supply }: Work): void => {
  const { mouthPlace } = shape
  for (let mouth = 0; mouth < mouthPlace.length; mouth += 1) {
    const place = mouthPlace[mouth] ?? 0
    const at = head[place] ?? 0
    const over = at - (mouthLevelM[mouth] ?? 0)
    if (!(over > 0)) continue
    flowUnder(mouths, mouth, over)
    conductance[place] = (conductance[place] ?? 0) + passed.perHead
    supply[place] = (supply[place] ?? 0) + passed.perHead * at - passed.flow
  }
}

const clearJoints = ({ conductance, supply, draw }: Work): void => {
  conductance.fill(0)
  for (let place = 0; place < draw.length; place += 1) supply[place] = -(draw[place] ?? 0)
}

const up = (work: Work): void => {
  const { shape, kind, head, conductance, supply, flow, offset, slope, share } = work
  const { upper, treeCount } = shape
  let misfit = 0
  for (let place = 0; place < treeCount; place += 1) {
    if (kind[place] !== PLAIN && isBlocked(work, place)) {
      share[place] = 0
      continue
    }
    lossInSlot(work, place)
    const above = upper[place] ?? 0
    const missed = Math.abs((head[above] ?? 0) - (head[place] ?? 0) - found.loss)
    if (missed > misfit) misfit = missed
    const lost = found.loss - found.slope * (flow[place] ?? 0)
    const takes = conductance[place] ?? 0
    const part = 1 / (1 + found.slope * takes)
    offset[place] = lost
    slope[place] = found.slope
    share[place] = part
    conductance[above] = (conductance[above] ?? 0) + part * takes
    supply[above] = (supply[above] ?? 0) + part * ((supply[place] ?? 0) + takes * lost)
  }
  work.misfit = misfit
}

const down = (work: Work): void => {
  const { shape, head, conductance, supply, flow, offset, slope, share } = work
  const { upper, treeCount } = shape
  let change = work.change
  for (let place = treeCount - 1; place >= 0; place -= 1) {
    const over = (head[upper[place] ?? 0] ?? 0) - (offset[place] ?? 0)
    const gives = supply[place] ?? 0
    const part = share[place] ?? 0
    const now = part === 0 ? headBehind(work, place) : part * (over + (slope[place] ?? 0) * gives)
    flow[place] = part * ((conductance[place] ?? 0) * over - gives)
    const by = Math.abs(now - (head[place] ?? 0))
    if (by > change) change = by
    head[place] = now
  }
  work.change = change
}

/** One sweep from the flows and heads at hand. */
export const sweep = (work: Work, isFirst: boolean): void => {
  work.change = 0
  clearJoints(work)
  takeMouths(work)
  finish(work, isFirst)
}

/** The rest of a sweep, once the mouths have been taken. */
export const finish = (work: Work, isFirst: boolean): void => {
  work.change = 0
  up(work)
  sweepCore(work, isFirst)
  down(work)
}
