import { depthMm, volumeL, type Basin } from '../solvers/gravity/basin'
import { inches } from '../units/length'

/** A drain's inlet stands this far over the overflow, so that a full pit never stands in the drain. Common practice, no source. */
export const INLET_OVER_OVERFLOW_MM = inches(1)

/** What runs home when the pump stops stays this far under the overflow. Common practice, no source. */
export const DRAIN_BACK_UNDER_OVERFLOW_MM = inches(1)

/** An overflow stands at least a hand under what the pit would spill over, for the water that stands over its invert as it runs. Common practice, no source. */
export const OVERFLOW_UNDER_EDGE_MM = inches(4)

/** Nominal bores of overflow pipes, mm, least first. */
export const OVERFLOW_BORES = {
  '1': inches(1),
  '1-1/2': inches(1.5),
  '2': inches(2),
  '3': inches(3),
  '4': inches(4),
} as const

/** A pump's intake stands this far over the bottom unless the builder says otherwise, for sludge. Common practice, no source. */
export const INTAKE_OVER_BOTTOM_MM = inches(2)

/** The levels of a pit, by name. */
export type PitLevel = Exclude<keyof PitFacts, 'basin' | 'hasOwnIntake' | 'overflowBoreMm' | 'makeUpLph'>

/** A level of a pit, its name in words, and how far the next one must stand under it at least, mm. */
export interface PitRung {
  readonly level: PitLevel
  readonly title: string
  readonly nextUnderMm: number
}

/** From the rim to the bottom: the order that every pit keeps. */
export const PIT_RUNGS: readonly PitRung[] = [
  { level: 'rimMm', title: 'rim', nextUnderMm: 0 },
  { level: 'overflowMm', title: 'overflow', nextUnderMm: DRAIN_BACK_UNDER_OVERFLOW_MM },
  { level: 'drainBackMm', title: 'drain-back level', nextUnderMm: 0 },
  { level: 'runningMm', title: 'running level', nextUnderMm: 0 },
  { level: 'makeUpMm', title: 'level at which make-up opens', nextUnderMm: 0 },
  { level: 'lowAlarmMm', title: 'low alarm', nextUnderMm: 0 },
  { level: 'pumpOffMm', title: 'pump-off level', nextUnderMm: 0 },
  { level: 'intakeMm', title: 'pump intake', nextUnderMm: 0 },
  { level: 'bottomMm', title: 'bottom', nextUnderMm: 0 },
]

/** The levels of a pit from its rim down, mm from the benchmark's zero, so that readers need not know its parameters. */
export interface PitFacts {
  readonly rimMm: number
  readonly overflowMm: number
  readonly drainBackMm: number
  readonly runningMm: number
  readonly makeUpMm: number
  readonly lowAlarmMm: number
  readonly pumpOffMm: number
  /** Where water goes into the pump; false where it goes with the bottom. */
  readonly intakeMm: number
  readonly hasOwnIntake: boolean
  readonly bottomMm: number
  /** Its inside, on `bottomMm`. */
  readonly basin: Basin
  /** Bore of the overflow pipe, and what the make-up valve lets in when it stands open. */
  readonly overflowBoreMm: number
  readonly makeUpLph: number
}

/** Litres that a pit holds under a level; 0 at and under its bottom. */
export const litresAt = (
  { basin, bottomMm }: Pick<PitFacts, 'basin' | 'bottomMm'>,
  levelMm: number,
): number => volumeL(basin, levelMm - bottomMm)

/** The level at which so many litres stand in a pit, mm from the benchmark's zero: the inverse of `litresAt`. */
export const levelAt = ({ basin, bottomMm }: Pick<PitFacts, 'basin' | 'bottomMm'>, litres: number): number =>
  bottomMm + depthMm(basin, litres)
