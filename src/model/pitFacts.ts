import { inches } from '../units/length'

/** A drain's inlet stands this far over the overflow, so that a full pit never stands in the drain. Common practice, no source. */
export const INLET_OVER_OVERFLOW_MM = inches(1)

/** What runs home when the pump stops stays this far under the overflow. Common practice, no source. */
export const DRAIN_BACK_UNDER_OVERFLOW_MM = inches(1)

/** The levels of a pit from its rim down, mm from the benchmark's zero, so that readers need not know its parameters. */
export interface PitFacts {
  readonly rimMm: number
  readonly overflowMm: number
  readonly drainBackMm: number
  readonly runningMm: number
  readonly makeUpMm: number
  readonly lowAlarmMm: number
  readonly pumpOffMm: number
  readonly bottomMm: number
}
