import type { CurvePoints, Fault } from './network'
import { GRAVITY } from './properties'

/** A pump's head against its flow at full speed: through all its points, smooth, and nowhere rising. */
export interface PumpCurve extends CurvePoints {
  readonly ok: true
  /** How the head changes with the flow at each point, s/m2; never above 0. */
  readonly slope: Float64Array
}

const FEWEST_POINTS = 3

const fault = (sentence: string): Fault => ({ ok: false, sentence })

const faultAtPoint = ({ flowM3S, headM }: CurvePoints, i: number): string | undefined => {
  const [flow = NaN, head = NaN] = [flowM3S[i], headM[i]]
  const [flowBefore = NaN, headBefore = NaN] = [flowM3S[i - 1], headM[i - 1]]
  if (!Number.isFinite(flow) || !Number.isFinite(head)) return `has no number at point ${i + 1}`
  if (head < 0) return `has a head of ${head} m, less than none, at point ${i + 1}`
  if (i > 0 && flow <= flowBefore)
    return `must rise in flow from point to point; point ${i + 1} has ${flow} m3/s after ${flowBefore}`
  if (i > 0 && head > headBefore)
    return `rises in head from ${headBefore} to ${head} m between points ${i} and ${i + 1}; with a curve that rises a pump hunts between two flows`
  return undefined
}

const faultIn = (points: CurvePoints): string | undefined => {
  const { flowM3S, headM } = points
  const count = flowM3S.length
  if (headM.length !== count) return `has ${count} flows but ${headM.length} heads`
  if (count < FEWEST_POINTS) return `needs ${FEWEST_POINTS} points or more; it has ${count}`
  if (flowM3S[0] !== 0) return `must begin at no flow; it begins at ${flowM3S[0]} m3/s`
  for (let i = 0; i < count; i += 1) {
    const found = faultAtPoint(points, i)
    if (found !== undefined) return found
  }
  return headM[count - 1] === headM[count - 2]
    ? 'is flat between its last two points, so that nothing says where it ends'
    : undefined
}

/** Slope at the point between two stretches: that of the parabola through all three points. */
const parabolaSlope = (widthA: number, chordA: number, widthB: number, chordB: number): number =>
  (widthB * chordA + widthA * chordB) / (widthA + widthB)

/** Slope at an end: that of the parabola through the three points nearest to it. */
const endSlope = (width: number, chord: number, nextWidth: number, nextChord: number): number =>
  chord + ((chord - nextChord) * width) / (width + nextWidth)

/**
 * Slopes with which a cubic between each two points nowhere rises. Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980)
 * 238: within a stretch, in chords of it, they may lie in a circle of radius 3.
 */
const keepFalling = (slope: Float64Array, chord: Float64Array): void => {
  chord.forEach((each, i) => {
    const [left = 0, right = 0] = [slope[i], slope[i + 1]]
    const reach = each === 0 ? Infinity : Math.hypot(left / each, right / each)
    if (reach <= 3) return
    slope[i] = (3 / reach) * left
    slope[i + 1] = (3 / reach) * right
  })
}

const slopesOf = ({ flowM3S, headM }: CurvePoints): Float64Array => {
  const stretches = flowM3S.length - 1
  const at = (of: Float64Array, i: number) => of[i] ?? NaN
  const width = Float64Array.from({ length: stretches }, (_, i) => at(flowM3S, i + 1) - at(flowM3S, i))
  const chord = width.map((each, i) => (at(headM, i + 1) - at(headM, i)) / each)
  const ends = (i: number, inward: number) =>
    endSlope(at(width, i), at(chord, i), at(width, i + inward), at(chord, i + inward))
  const slope = Float64Array.from(flowM3S, (_, i) => {
    if (i === 0) return Math.min(0, ends(0, 1))
    // Never flatter than the last chord: straight on, the curve must come to no head somewhere near.
    if (i === stretches) return Math.min(ends(stretches - 1, -1), at(chord, stretches - 1))
    return parabolaSlope(at(width, i - 1), at(chord, i - 1), at(width, i), at(chord, i))
  })
  keepFalling(slope, chord)
  return slope
}

/**
 * The smooth curve through a pump's points (flow in m3/s rising from 0, head in m, at full speed), or a fault with a
 * sentence that begins with what the curve does. Level stretches are taken, rising ones are not.
 */
export const pumpCurveOf = (points: CurvePoints): PumpCurve | Fault => {
  const found = faultIn(points)
  if (found !== undefined) return fault(`The pump curve ${found}.`)
  return { ok: true, flowM3S: points.flowM3S, headM: points.headM, slope: slopesOf(points) }
}

/** A cubic stretch of the curve, and how far along it a flow lies. */
interface Stretch {
  readonly width: number
  readonly share: number
  readonly headA: number
  readonly headB: number
  readonly slopeA: number
  readonly slopeB: number
}

const stretchAt = ({ flowM3S, headM, slope }: PumpCurve, flow: number): Stretch => {
  let i = 0
  while (i < flowM3S.length - 2 && flow > (flowM3S[i + 1] ?? 0)) i += 1
  const [flowA = 0, flowB = 0] = [flowM3S[i], flowM3S[i + 1]]
  const [headA = 0, headB = 0] = [headM[i], headM[i + 1]]
  const [slopeA = 0, slopeB = 0] = [slope[i], slope[i + 1]]
  const width = flowB - flowA
  return { width, share: (flow - flowA) / width, headA, headB, slopeA, slopeB }
}

const headAtFullSpeed = (curve: PumpCurve, flow: number): number => {
  const { width, share: t, headA, headB, slopeA, slopeB } = stretchAt(curve, Math.max(0, flow))
  if (t > 1) return headB + slopeB * width * (t - 1)
  const u = 1 - t
  return (
    u * u * ((1 + 2 * t) * headA + t * width * slopeA) + t * t * ((3 - 2 * t) * headB - u * width * slopeB)
  )
}

const slopeAtFullSpeed = (curve: PumpCurve, flow: number): number => {
  if (flow < 0) return 0
  const { width, share: t, headA, headB, slopeA, slopeB } = stretchAt(curve, flow)
  if (t > 1) return slopeB
  const chord = (headB - headA) / width
  return slopeA + t * (6 * chord - 4 * slopeA - 2 * slopeB + 3 * t * (slopeA + slopeB - 2 * chord))
}

/**
 * Lift of the pump at a flow, m. `speed` is a share of the speed that the points were taken at; by the affinity laws
 * flow goes with it and head with its square. 0 for a pump that stands. Beyond the last point the curve runs straight
 * on, through no head and below: there the water drags the pump. Under no flow the shut-off head stands.
 */
export const headAt = (curve: PumpCurve, flowM3S: number, speed: number): number =>
  speed > 0 ? speed * speed * headAtFullSpeed(curve, flowM3S / speed) : 0

/** How the lift changes with the flow, s/m2; never above 0. */
export const slopeAt = (curve: PumpCurve, flowM3S: number, speed: number): number =>
  speed > 0 ? speed * slopeAtFullSpeed(curve, flowM3S / speed) : 0

/** Halvings that narrow a stretch of the curve down to the last digit of a double. */
const HALVINGS = 54

/**
 * Most flow at which the pump still lifts by `headM`, m3/s; 0 where it can't lift so high, and for one that stands. The
 * curve's end, straight on, answers for heads under its last point.
 */
export const flowAt = (curve: PumpCurve, headM: number, speed: number): number => {
  if (!(speed > 0)) return 0
  const head = headM / (speed * speed)
  const last = curve.flowM3S.length - 1
  const [lastFlow = 0, lastHead = 0, endsWith = -1] = [
    curve.flowM3S[last],
    curve.headM[last],
    curve.slope[last],
  ]
  if (head <= lastHead) return speed * (lastFlow + (head - lastHead) / endsWith)
  let low = 0
  let high = lastFlow
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2
    if (headAtFullSpeed(curve, middle) >= head) low = middle
    else high = middle
  }
  return speed * low
}

/** Power that the water takes up, W; the motor draws more by pump and motor efficiency. */
export const hydraulicWatts = (flowM3S: number, headM: number, densityKgM3: number): number =>
  densityKgM3 * GRAVITY * flowM3S * headM
