import { stature } from '../../../catalogue/stature'
import type { RowHandling } from '../../../evaluate/handling/handling'
import type { Side } from '../../../evaluate/handling/hung'
import type { PlotSize } from '../chart/plot'

/** Whose figure is drawn. */
export const people = {
  woman5Mm: 'Small woman (5th percentile)',
  woman50Mm: 'Middling woman',
  man50Mm: 'Middling man',
  man95Mm: 'Tall man (95th percentile)',
} as const
export type Person = keyof typeof people

const HEAD_MM = 105
const OVER_EYES_MM = 110

/** Shoulder joint to grip: what a straight arm reaches from the shoulder blades, less the joint’s own way before them. Drawn only. */
const JOINT_MM = 100

/** So far anyone leans before they step, mm. Drawn only. */
const LEAN_MM = 320

/** The scale of the end view and where its floor and centreline are, px. */
export interface EndView {
  readonly xOf: (v: number) => number
  readonly yOf: (overFloorMm: number) => number
  readonly pxPerMm: number
}

/** Room over a row for words, and beside it for a person who stands there, mm. */
const OVER_MM = 260
const BESIDE_MM = 420

export const endView = ({ left, right, barTopMm }: RowHandling, { width, height }: PlotSize): EndView => {
  const fromV = left.standV - BESIDE_MM
  const toV = right.standV + BESIDE_MM
  const topMm = Math.max(barTopMm, stature.eyes.man95Mm + OVER_EYES_MM) + OVER_MM
  const pxPerMm = Math.min(width / (toV - fromV), (height - 26) / topMm)
  const middle = width / 2 - ((fromV + toV) / 2) * pxPerMm
  return { pxPerMm, xOf: (v) => middle + v * pxPerMm, yOf: (mm) => height - 20 - mm * pxPerMm }
}

/** A person in strokes, all in mm: right of the centreline and over the floor. */
export interface Figure {
  readonly ankle: readonly [number, number]
  readonly hip: readonly [number, number]
  readonly shoulder: readonly [number, number]
  readonly head: readonly [number, number]
  readonly headMm: number
  readonly hand: readonly [number, number]
  /** Whether a straight arm comes to the hook from there. */
  readonly isInReach: boolean
}

/** A person who stands on a side and reaches for a line at a height. */
export const figureOf = (
  { left, right, handsMm }: RowHandling,
  side: Side,
  lineV: number,
  person: Person,
): Figure => {
  const { standV } = side === 'left' ? left : right
  const inward = side === 'left' ? 1 : -1
  const shoulderMm = stature.shoulder[person]
  const armMm = stature.gripAhead[person] - JOINT_MM
  const up = handsMm - shoulderMm
  const across = Math.abs(lineV - standV)
  const reachMm = Math.sqrt(Math.max(0, armMm * armMm - up * up))
  const lean = Math.min(LEAN_MM, Math.max(0, across - reachMm))
  const shoulder = [standV + inward * lean, shoulderMm] as const
  return {
    ankle: [standV, 0],
    hip: [standV - inward * lean * 0.15, shoulderMm * 0.63],
    shoulder,
    head: [shoulder[0] + inward * 30, stature.eyes[person]],
    headMm: HEAD_MM,
    hand: [lineV, handsMm],
    isInReach: Math.hypot(across - lean, up) <= armMm + 1,
  }
}
