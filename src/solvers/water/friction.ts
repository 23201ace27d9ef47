import { GRAVITY } from './properties'

/** Drawn plastic: Moody's chart (Trans. ASME 66, 1944) gives drawn tubing 5e-6 ft, 1.5e-6 m; many texts print 0. */
export const ROUGHNESS_M = 1.5e-6

/** Below it flow is smooth: 64/Re. */
export const LAMINAR_RE = 2000

/** From it on flow is churned: Swamee-Jain. Between the two it is either, and nobody can say which. */
export const TURBULENT_RE = 4000

/** A pipe, or a microtube: length and bore in m, and minor losses as multiples of its own velocity head. */
export interface Pipe {
  readonly lengthM: number
  readonly boreM: number
  readonly lossK: number
}

/** A number and how fast it grows with the Reynolds number. */
interface Valued {
  readonly value: number
  readonly slope: number
}

/** Swamee and Jain, J. Hydraulics Div. ASCE 102 (1976) 657. */
const turbulent = (reynolds: number, relativeRoughness: number): Valued => {
  const smoothPart = 5.74 / reynolds ** 0.9
  const inner = relativeRoughness / 3.7 + smoothPart
  const log = Math.log(inner)
  const value = 0.25 / (log / Math.LN10) ** 2
  return { value, slope: (1.8 * value * smoothPart) / (log * inner * reynolds) }
}

/**
 * The cubic that takes over value and slope of both neighbours (Dunlop's interpolation: EPANET 2 Users Manual, 2000,
 * appendix D). A law that jumps or kinks would make Newton's method go round for ever.
 */
const between = (reynolds: number, relativeRoughness: number): Valued => {
  const span = TURBULENT_RE - LAMINAR_RE
  const low = 64 / LAMINAR_RE
  const lowSlope = (-low / LAMINAR_RE) * span
  const high = turbulent(TURBULENT_RE, relativeRoughness)
  const highSlope = high.slope * span
  const rise = high.value - low
  const square = 3 * rise - 2 * lowSlope - highSlope
  const cube = lowSlope + highSlope - 2 * rise
  const t = (reynolds - LAMINAR_RE) / span
  return {
    value: low + t * (lowSlope + t * (square + t * cube)),
    slope: (lowSlope + t * (2 * square + t * 3 * cube)) / span,
  }
}

const factor = (reynolds: number, relativeRoughness: number): Valued =>
  reynolds < TURBULENT_RE ? between(reynolds, relativeRoughness) : turbulent(reynolds, relativeRoughness)

/**
 * Darcy's friction factor, four times Fanning's, for a Reynolds number > 0 and a roughness as a share of the bore:
 * 64/Re up to 2,000, Swamee-Jain from 4,000, a smooth cubic between.
 */
export const frictionFactor = (reynolds: number, relativeRoughness: number): number =>
  reynolds <= LAMINAR_RE ? 64 / reynolds : factor(reynolds, relativeRoughness).value

/**
 * f Re^2 for a Reynolds number >= 0: what the loss grows with, and, unlike f, finite in water that stands. The loss of
 * a length L of bore D is f Re^2 nu^2 L / (2 g D^3).
 */
export const lossNumber = (reynolds: number, relativeRoughness: number): number =>
  reynolds <= LAMINAR_RE ? 64 * reynolds : factor(reynolds, relativeRoughness).value * reynolds * reynolds

/** How fast `lossNumber` grows with the Reynolds number. */
export const lossNumberSlope = (reynolds: number, relativeRoughness: number): number => {
  if (reynolds <= LAMINAR_RE) return 64
  const { value, slope } = factor(reynolds, relativeRoughness)
  return reynolds * (2 * value + reynolds * slope)
}

/** Mean velocity, m/s. */
export const velocityMS = (flowM3S: number, boreM: number): number =>
  (4 * flowM3S) / (Math.PI * boreM * boreM)

/** Reynolds number of the flow, >= 0 whichever way it runs. */
export const reynoldsNumber = (flowM3S: number, boreM: number, kinematicM2S: number): number =>
  (4 * Math.abs(flowM3S)) / (Math.PI * boreM * kinematicM2S)

/** Head lost in a fitting, m: `lossK` velocity heads of its bore. Negative where the flow is. */
export const fittingLoss = (flowM3S: number, boreM: number, lossK: number): number => {
  const velocity = velocityMS(flowM3S, boreM)
  return (lossK * velocity * Math.abs(velocity)) / (2 * GRAVITY)
}

/** How fast `fittingLoss` grows with the flow, s/m2; never negative. */
export const fittingLossSlope = (flowM3S: number, boreM: number, lossK: number): number =>
  (lossK * Math.abs(velocityMS(flowM3S, boreM)) * velocityMS(1, boreM)) / GRAVITY

/** Head that one unit of `lossNumber` takes over the length, m. */
const headPerNumber = ({ lengthM, boreM }: Pipe, kinematicM2S: number): number =>
  (kinematicM2S * kinematicM2S * lengthM) / (2 * GRAVITY * boreM ** 3)

/**
 * Head lost along a plastic pipe with its fittings, m (Darcy-Weisbach). Negative where the flow is: turning the flow
 * round turns the loss round.
 */
export const pipeLoss = (flowM3S: number, pipe: Pipe, kinematicM2S: number): number => {
  const { boreM, lossK } = pipe
  const number = lossNumber(reynoldsNumber(flowM3S, boreM, kinematicM2S), ROUGHNESS_M / boreM)
  const friction = number * headPerNumber(pipe, kinematicM2S)
  return (flowM3S < 0 ? -friction : friction) + fittingLoss(flowM3S, boreM, lossK)
}

/** How fast `pipeLoss` grows with the flow, s/m2; positive, and the laminar resistance at no flow. */
export const pipeLossSlope = (flowM3S: number, pipe: Pipe, kinematicM2S: number): number => {
  const { boreM, lossK } = pipe
  const reynolds = reynoldsNumber(flowM3S, boreM, kinematicM2S)
  const growth = lossNumberSlope(reynolds, ROUGHNESS_M / boreM) * reynoldsNumber(1, boreM, kinematicM2S)
  return growth * headPerNumber(pipe, kinematicM2S) + fittingLossSlope(flowM3S, boreM, lossK)
}
