import { type Bench, type Heads, headsAt, neediest, surplusM } from './zoneNeeds'

/** Towers get between these shares of what is wanted, or the pump is of another world. */
const LEAST_FACTOR = 0.02
const MOST_FACTOR = 16
/** From one trial to the next while the answer is not yet between two: near at first, then in longer strides. */
const FIRST_STRIDE = 1.08
const LONGEST_STRIDE = 2
/** A hundredth of a millimetre left over is nothing. */
const CLOSE_M = 1e-5
const MOST_ROUNDS = 40

export interface Tried {
  readonly factor: number
  readonly heads: Heads
  /** Left over at the neediest zone with its valves wide open, m; below 0 where the pump gives too little. */
  readonly leftM: number
}

/** All towers at `factor` times the target; undefined where the network can't be solved. */
export const tried = (bench: Bench, factor: number): Tried | undefined => {
  const heads = headsAt(bench, factor)
  return 'ok' in heads ? undefined : { factor, heads, leftM: surplusM(heads, neediest(heads)) }
}

/** Up or down in strides from a trial until something is left over, or nothing is. */
const stride = (bench: Bench, from: Tried): readonly [Tried, Tried] => {
  const isUp = from.leftM > 0
  let [before, now] = [from, from]
  let step = FIRST_STRIDE
  while (isUp === now.leftM > 0 && now.factor > LEAST_FACTOR && now.factor < MOST_FACTOR) {
    const next = tried(bench, isUp ? now.factor * step : now.factor / step)
    if (!next) break
    before = now
    now = next
    step = Math.min(step * step, LONGEST_STRIDE)
  }
  return isUp ? [before, now] : [now, before]
}

/**
 * The common factor on all targets at which the neediest zone just gets its share with its valves wide open; what is left
 * over falls as the factor rises. Where no pump curve goes so far, the last one tried. Undefined as for `tried`.
 */
export const commonFactor = (bench: Bench): Tried | undefined => {
  const one = tried(bench, 1)
  if (!one) return undefined
  let [low, high] = stride(bench, one)
  for (let round = 0; round < MOST_ROUNDS && low.leftM > CLOSE_M && high.leftM < 0; round += 1) {
    // Each third time the middle, so that a curve that bends can't hold one end fast.
    const share = round % 3 === 2 ? 0.5 : low.leftM / (low.leftM - high.leftM)
    const next = tried(bench, low.factor + (high.factor - low.factor) * share)
    if (!next) return low
    if (Math.abs(next.leftM) <= CLOSE_M) return next
    if (next.leftM > 0) low = next
    else high = next
  }
  return low
}
