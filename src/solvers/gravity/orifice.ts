import { fromM3PerS, toM3PerS } from '../../units/flow'
import { headM, toHeadFeet, toHeadM } from '../../units/head'
import { feet, toInches } from '../../units/length'
import { GRAVITY } from '../water/properties'

/** How much of the ideal flow a hole passes. Encyclopaedia Britannica, 11th ed., vol. 14 (1910), Hydraulics. */
export const DISCHARGE = {
  /** A hole with a sharp edge in a thin wall: contraction 0.64 times velocity 0.97. */
  sharp: 0.62,
  /** A tube at least 1-1/2 bores long that runs full. */
  shortTube: 0.82,
  /** A tube that reaches into the water (Weisbach's value; 1/2 in theory). */
  reentrant: 0.5324,
  /** A hole rounded as the jet is. */
  rounded: 0.97,
} as const

const areaM2 = (diameterMm: number): number => (Math.PI * toHeadM(diameterMm) ** 2) / 4

/** Flow, L/h, of a round hole under a head, mm, over its middle: Q = C A sqrt(2 g h). 0 where there is none. */
export const orificeLph = (diameterMm: number, headMm: number, coefficient: number): number =>
  headMm <= 0 ? 0 : fromM3PerS(coefficient * areaM2(diameterMm) * Math.sqrt(2 * GRAVITY * toHeadM(headMm)))

/** The head, mm, that it takes; the inverse of `orificeLph`. */
export const orificeHeadMm = (diameterMm: number, flowLph: number, coefficient: number): number =>
  headM((toM3PerS(flowLph) / (coefficient * areaM2(diameterMm))) ** 2 / (2 * GRAVITY))

/**
 * Discharge coefficient of a sharp round hole: Unwin's fit, 0.6075 + 0.0098 / sqrt(head in ft) - 0.0037 x bore in inches.
 * Encyclopaedia Britannica, 11th ed., vol. 14 (1910), Hydraulics. @throws RangeError without a head.
 */
export const unwinCoefficient = (diameterMm: number, headMm: number): number => {
  if (!(headMm > 0)) throw new RangeError(`A hole under ${headMm} mm of head has no coefficient`)
  return 0.6075 + 0.0098 / Math.sqrt(toHeadFeet(headMm)) - 0.0037 * toInches(diameterMm)
}

/** Of a sharp level crest, in metric: Q = 1.84 L h^1.5 (Francis; USBR, Water Measurement Manual; from memory). */
export const CREST_M = 1.84

/** Flow, L/h, over a level crest, mm long, under a head, mm, without end contractions. */
export const crestLph = (lengthMm: number, headMm: number): number =>
  headMm <= 0 ? 0 : fromM3PerS(CREST_M * toHeadM(lengthMm) * toHeadM(headMm) ** 1.5)

/** The head, mm, over a level crest that passes a flow; the inverse of `crestLph`. */
export const crestHeadMm = (lengthMm: number, flowLph: number): number =>
  headM((toM3PerS(Math.max(0, flowLph)) / (CREST_M * toHeadM(lengthMm))) ** (2 / 3))

/** Flow, L/h, through a notch of 90 degrees: 2.49 h^2.48 in ft3/s and ft (USBR, Water Measurement Manual; from memory). */
export const notchLph = (headMm: number): number =>
  headMm <= 0 ? 0 : fromM3PerS(2.49 * toHeadFeet(headMm) ** 2.48 * toHeadM(feet(1)) ** 3)
