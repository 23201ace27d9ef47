import { LAMINAR_RE, type Pipe, fittingLoss, pipeLoss, pipeLossSlope, reynoldsNumber } from './friction'
import { GRAVITY } from './properties'

/**
 * A microtube into free air is a pipe whose losses are those of its two ends: a sharp entry 0.5 and the whole velocity
 * head at the exit 1.0 (from memory of any text; White, Fluid Mechanics). The slow forming of smooth flow behind the
 * entry takes half to one velocity head more, which is not in it: a bucket test finds out.
 */
export const TUBE_LOSS_K = 1.5

/** Head over the open end that pushes `flowM3S` through, m; 0 where nothing flows. */
export const tubeHeadM = (flowM3S: number, tube: Pipe, kinematicM2S: number): number =>
  flowM3S > 0 ? pipeLoss(flowM3S, tube, kinematicM2S) : 0

/** Flow at a head if all of it were smooth: the larger root of K v^2/2g + 32 nu L v/(g D^2) = h, without cancellation. */
const smoothFlow = (headM: number, { lengthM, boreM, lossK }: Pipe, kinematicM2S: number): number => {
  const perVelocity = (32 * kinematicM2S * lengthM) / (GRAVITY * boreM * boreM)
  const perSquare = lossK / (2 * GRAVITY)
  const velocity = (2 * headM) / (perVelocity + Math.sqrt(perVelocity * perVelocity + 4 * perSquare * headM))
  return (velocity * Math.PI * boreM * boreM) / 4
}

/** A step of Newton that changes the flow by a smaller share ends the search. */
const CLOSE_SHARE = 1e-12
const MOST_STEPS = 60

/** Newton kept between two flows of which one is too small and the other too large; halves where a step leaves them. */
const flowBetween = (headM: number, least: number, most: number, tube: Pipe, nu: number): number => {
  let low = least
  let high = most
  let flow = high
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const missing = headM - pipeLoss(flow, tube, nu)
    if (missing > 0) low = flow
    else high = flow
    const aimed = flow + missing / pipeLossSlope(flow, tube, nu)
    const next = aimed >= low && aimed <= high ? aimed : (low + high) / 2
    if (Math.abs(next - flow) <= CLOSE_SHARE * next) return next
    flow = next
  }
  return flow
}

/**
 * Flow of a microtube, m3/s, under a head over its open end. 0 for no head or less: it runs dry, never backwards.
 * In closed form while the flow is smooth. Some length or some loss must be there.
 */
export const tubeFlowM3S = (headM: number, tube: Pipe, kinematicM2S: number): number => {
  if (headM <= 0) return 0
  const smooth = smoothFlow(headM, tube, kinematicM2S)
  const reynolds = reynoldsNumber(smooth, tube.boreM, kinematicM2S)
  if (reynolds <= LAMINAR_RE || tube.lengthM === 0) return smooth
  // Churned flow loses more than smooth flow would, so the smooth answer is the most it can be.
  return flowBetween(headM, (smooth * LAMINAR_RE) / reynolds, smooth, tube, kinematicM2S)
}

/**
 * Length that passes a flow > 0 at a head, m: tubes cut by it give equal flows under unequal heads. 0 where the losses
 * at the tube's ends alone take the head.
 */
export const tubeLengthM = (
  headM: number,
  flowM3S: number,
  boreM: number,
  lossK: number,
  kinematicM2S: number,
): number => {
  const left = headM - fittingLoss(flowM3S, boreM, lossK)
  const perM = pipeLoss(flowM3S, { lengthM: 1, boreM, lossK: 0 }, kinematicM2S)
  return Math.max(0, left / perM)
}

/** One tube run into a bucket: what came out, under which head over its open end, and how warm it was. */
export interface BucketTest {
  readonly flowM3S: number
  readonly headM: number
  readonly lengthM: number
  readonly kinematicM2S: number
}

/** No tube that anyone would hang on a tower is narrower or wider, m. */
const NARROWEST_M = 0.5e-3
const WIDEST_M = 25e-3

/** Halvings of the range between the two: the last is far below what a gauge could tell. */
const HALVINGS = 60

/**
 * Bore that explains a bucket test with the tube's end losses as given, m. The loss falls with the bore throughout, so
 * there is one; undefined where it is none that a tube could have.
 */
export const calibratedBoreM = (test: BucketTest, lossK: number): number | undefined => {
  const { flowM3S, headM, lengthM, kinematicM2S } = test
  const needs = (boreM: number) => tubeHeadM(flowM3S, { lengthM, boreM, lossK }, kinematicM2S)
  if (!(needs(NARROWEST_M) >= headM && needs(WIDEST_M) <= headM)) return undefined
  let narrow = NARROWEST_M
  let wide = WIDEST_M
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (narrow + wide) / 2
    if (needs(middle) > headM) narrow = middle
    else wide = middle
  }
  return wide
}

/**
 * End losses that explain a bucket test with the bore as marked, in velocity heads; undefined where the tube passed
 * more than a tube of that bore could without any: then the bore is larger than marked.
 */
export const calibratedLossK = (test: BucketTest, boreM: number): number | undefined => {
  const { flowM3S, headM, lengthM, kinematicM2S } = test
  const left = headM - tubeHeadM(flowM3S, { lengthM, boreM, lossK: 0 }, kinematicM2S)
  const lossK = left / fittingLoss(flowM3S, boreM, 1)
  return lossK >= 0 ? lossK : undefined
}
