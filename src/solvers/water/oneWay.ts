import { headAt, slopeAt } from './pumpCurve'
import { found, lossOf } from './resistance'
import { CHECK, PUMP, type Work } from './work'

/** Resistance of what is shut, s/m2: at 10 m it would leak a tenth of a cubic millimetre in a thousand seconds. */
export const SHUT_SLOPE = 1e14

/** A link that heads hold shut opens once they press it open by more, m. */
const OPENS_AT_M = 1e-8

/** A check valve that opens is taken to pass the flow that loses this much, m. */
const OPENING_LOSS_M = 1e-4

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

/**
 * Head lost from upper to lower at the flow of the slot, and how fast it grows, into `found`: of a shut valve, or of a
 * check or a pump that may be held shut. What is shut is given a resistance that nothing to speak of leaks through.
 */
export const lossOfOneWay = (work: Work, slot: number): void => {
  const kind = work.kind[slot]
  const way = wayOf(work, slot)
  const flow = way * (work.flow[slot] ?? 0)
  if ((kind === CHECK || kind === PUMP) && work.isHeld[slot] === 0) {
    if (kind === CHECK) lossOf(work.links, slot, Math.max(0, flow))
    else {
      found.loss = -liftOf(work, slot, flow)
      found.slope = pumpSlope(work, slot, flow)
    }
    found.loss *= way
    return
  }
  found.loss = kind === PUMP ? -way * liftOf(work, slot, 0) : 0
  found.slope = SHUT_SLOPE
  work.flow[slot] = 0
}

/** A pump opens at no flow: from anywhere else its straightened curve would promise more head than it has. */
const openingFlow = (work: Work, slot: number): number => {
  const square = work.links.square[slot] ?? 0
  return work.kind[slot] === CHECK && square > 0 ? Math.sqrt(OPENING_LOSS_M / square) : 0
}

/** Holds shut what would run backwards and opens what heads press open. Returns how many links changed. */
export const turnOneWays = (work: Work): number => {
  const { shape, head, flow, isHeld, kind } = work
  let turned = 0
  for (const slot of work.oneWay) {
    const way = wayOf(work, slot)
    if (isHeld[slot] === 0) {
      if (way * (flow[slot] ?? 0) >= 0) continue
      isHeld[slot] = 1
      flow[slot] = 0
      turned += 1
      continue
    }
    const drop = way * ((head[shape.upper[slot] ?? 0] ?? 0) - (head[shape.lower[slot] ?? 0] ?? 0))
    const lift = kind[slot] === PUMP ? liftOf(work, slot, 0) : 0
    if (drop + lift <= OPENS_AT_M || isStanding(work, slot)) continue
    isHeld[slot] = 0
    flow[slot] = way * openingFlow(work, slot)
    turned += 1
  }
  return turned
}
