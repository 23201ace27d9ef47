import { headAt, slopeAt } from './pumpCurve'
import { found, lossOf } from './resistance'
import { CHECK, PUMP, SHUT, type Work } from './work'

/*
 * A check valve or a pump is held shut while the heads at its ends press it shut. Behind it joints may be left whose
 * towers have all run dry, and nothing but the head before it says where theirs comes to rest: they are drawn to it by a
 * conductance that passes nothing to speak of. So a pump that can't lift shows how high it would. From behind, and at a
 * shut valve, nothing draws: a joint that has nothing else keeps the head it had.
 */

/** By what a joint is drawn to the head before a check valve, and to that of a pump, m2/s. */
export const CHECK_DRAWS = 1e-15
export const PUMP_DRAWS = 1e-13

/** By what a joint in the core is kept at its head. */
export const KEEPS = 1e-18

/** A link that heads hold shut opens once they press it open by more, m. */
const OPENS_AT_M = 1e-8

/** A check valve that opens is taken to pass the flow that loses this much, m. */
const OPENING_LOSS_M = 1e-4

/** But never more, m3/s: one that loses next to nothing would be taken for a river. */
const MOST_AT_OPENING = 1e-3

/** 1 where the link's own way is from upper to lower, else -1. */
const wayOf = (work: Work, slot: number): number => (work.shape.isTurned[slot] === 1 ? -1 : 1)

/** Lift of a pump at a flow, m. */
export const liftOf = (work: Work, slot: number, flowM3S: number): number => {
  const pump = work.pumps[work.pumpAt[slot] ?? 0]
  return pump === undefined ? 0 : headAt(pump.curve, flowM3S, pump.speed)
}

const pumpSlope = (work: Work, slot: number, flowM3S: number): number => {
  const pump = work.pumps[work.pumpAt[slot] ?? 0]
  return pump === undefined ? 0 : -slopeAt(pump.curve, flowM3S, pump.speed)
}

/** Half of what a pump passes at the end of its curve, m3/s: where to begin. */
export const middleFlow = (work: Work, slot: number): number => {
  const pump = work.pumps[work.pumpAt[slot] ?? 0]
  return pump === undefined ? 0 : (pump.speed * (pump.curve.flowM3S.at(-1) ?? 0)) / 2
}

/** A standing pump never opens. */
const isStanding = (work: Work, slot: number): boolean =>
  work.kind[slot] === PUMP && !((work.pumps[work.pumpAt[slot] ?? 0]?.speed ?? 0) > 0)

export const isBlocked = ({ kind, isHeld }: Work, slot: number): boolean =>
  kind[slot] === SHUT || isHeld[slot] === 1

/** Head lost from upper to lower in a check or a pump that is not held, and how fast it grows, into `found`. */
export const lossOfOneWay = (work: Work, slot: number): void => {
  const way = wayOf(work, slot)
  const flow = way * (work.flow[slot] ?? 0)
  if (work.kind[slot] === CHECK) lossOf(work.links, slot, Math.max(0, flow))
  else {
    found.loss = -liftOf(work, slot, flow)
    found.slope = pumpSlope(work, slot, flow)
  }
  found.loss *= way
}

/** Head that a joint behind a held link is drawn to, m. */
export const drawnTo = (work: Work, slot: number, headBefore: number): number =>
  headBefore + (work.kind[slot] === PUMP ? liftOf(work, slot, 0) : 0)

/** Head of the place that hangs by a blocked link: that of its wet mouths, or what it is drawn to, or what it had. */
export const headBehind = (work: Work, place: number): number => {
  const takes = work.conductance[place] ?? 0
  if (takes > 0) return (work.supply[place] ?? 0) / takes
  const isDrawn = work.kind[place] !== SHUT && wayOf(work, place) > 0
  return isDrawn
    ? drawnTo(work, place, work.head[work.shape.upper[place] ?? 0] ?? 0)
    : (work.head[place] ?? 0)
}

/** A pump opens at no flow: from anywhere else its straightened curve would promise more head than it has. */
const openingFlow = (work: Work, slot: number): number => {
  const square = work.links.square[slot] ?? 0
  return work.kind[slot] === CHECK && square > 0
    ? Math.min(MOST_AT_OPENING, Math.sqrt(OPENING_LOSS_M / square))
    : 0
}

/** Sweeps over a link that has turned must not pass it over. */
const wake = ({ shape, isAwake }: Work, slot: number): void => {
  const { start } = shape.blocks
  if (slot >= shape.treeCount) return
  isAwake[start.findLastIndex((first) => first <= slot)] = 1
}

/** Whether a link that is not held runs backwards, or one that is held is pressed open. */
const mustTurn = (work: Work, slot: number): boolean => {
  const { shape, head, flow, isHeld, kind } = work
  const way = wayOf(work, slot)
  if (isHeld[slot] === 0) return way * (flow[slot] ?? 0) < 0
  const drop = way * ((head[shape.upper[slot] ?? 0] ?? 0) - (head[shape.lower[slot] ?? 0] ?? 0))
  const lift = kind[slot] === PUMP ? liftOf(work, slot, 0) : 0
  return drop + lift > OPENS_AT_M && !isStanding(work, slot)
}

/** Holds shut what would run backwards and opens what heads press open. Returns how many links have turned. */
export const turnOneWays = (work: Work): number => {
  let turned = 0
  for (const slot of work.oneWay) {
    if (!mustTurn(work, slot)) continue
    const wasHeld = work.isHeld[slot] === 1
    work.isHeld[slot] = wasHeld ? 0 : 1
    work.flow[slot] = wasHeld ? wayOf(work, slot) * openingFlow(work, slot) : 0
    wake(work, slot)
    turned += 1
  }
  return turned
}
