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
