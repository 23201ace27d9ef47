import { inches, onTick } from '../units/length'
import { MINUTES_PER_HOUR } from '../units/time'
import {
  DRAIN_BACK_UNDER_OVERFLOW_MM,
  INLET_OVER_OVERFLOW_MM,
  levelAt,
  litresAt,
  OVERFLOW_UNDER_EDGE_MM,
  type PitFacts,
} from './pitFacts'

/** What the water of a pit asks of its levels. */
export interface PitAsks {
  /** Invert of the lowest drain that comes in, mm from the benchmark's zero. */
  readonly inletMm: number
  /** What must find room over the running level when the pump stops, L. */
  readonly designL: number
  /** What leaves the pit while its pumps run, L/h. */
  readonly pumpLph: number
  /** What is used in a day, L: the pit lasts as long if make-up fails. */
  readonly dayL: number
  /** Water that should stand over the intake, mm. */
  readonly submergenceMm: number
}

/** The levels that follow, mm from the benchmark's zero. */
export type WorkingLevels = Pick<
  PitFacts,
  | 'overflowMm'
  | 'drainBackMm'
  | 'runningMm'
  | 'makeUpMm'
  | 'lowAlarmMm'
  | 'pumpOffMm'
  | 'intakeMm'
  | 'bottomMm'
>

/** Marks on a pit's wall are set to this step. */
const STEP_MM = inches(1 / 4)

/** From running down to pump off the pump empties the pit in this long with no return: 2 to 4 min. Common practice, no source. */
const SWING_MIN = 3

/** Over the intake at pump off: 6 to 8 in. Common practice, no source. */
const LEAST_OVER_INTAKE_MM = inches(6)

/** Floats closer than this answer to one wave: make-up under running, and the low alarm over pump off. Common practice, no source. */
const MAKE_UP_UNDER_RUNNING_MM = inches(1)
const ALARM_OVER_PUMP_OFF_MM = inches(2)
const RUNNING_OVER_PUMP_OFF_MM = inches(4)

/** No pit that is dug in a greenhouse is deeper under its rim. */
const DEEPEST_MM = inches(96)

/** Down to the step; what is on it but for rounding stays. */
const stepped = (levelMm: number): number => onTick(Math.floor(levelMm / STEP_MM + 1e-6) * STEP_MM)

/** The same pit dug to another bottom; sloped sides keep their width at rim and bottom. */
const dugTo = (pit: PitFacts, bottomMm: number): PitFacts => {
  const { basin, rimMm } = pit
  const depthMm = Math.max(rimMm - bottomMm, 1)
  return { ...pit, bottomMm, basin: basin.shape === 'sloped' ? { ...basin, depthMm } : basin }
}

/** Running level and pump off with a bottom given; undefined where what is between them is too little. */
const levelsOn = (pit: PitFacts, overflowMm: number, intakeOverMm: number, asks: PitAsks) => {
  const drainBackMm = overflowMm - DRAIN_BACK_UNDER_OVERFLOW_MM
  const runningMm = stepped(levelAt(pit, litresAt(pit, drainBackMm) - asks.designL))
  const intakeMm = pit.bottomMm + intakeOverMm
  const pumpOffMm = onTick(intakeMm + Math.max(asks.submergenceMm, LEAST_OVER_INTAKE_MM))
  const swingL = litresAt(pit, runningMm) - litresAt(pit, pumpOffMm)
  const wantedL = Math.max((asks.pumpLph / MINUTES_PER_HOUR) * SWING_MIN, asks.dayL)
  if (runningMm - pumpOffMm < RUNNING_OVER_PUMP_OFF_MM || swingL < wantedL) return undefined
  return {
    overflowMm,
    drainBackMm: onTick(drainBackMm),
    runningMm,
    makeUpMm: onTick(runningMm - MAKE_UP_UNDER_RUNNING_MM),
    lowAlarmMm: onTick(pumpOffMm + ALARM_OVER_PUMP_OFF_MM),
    pumpOffMm,
    intakeMm,
    bottomMm: pit.bottomMm,
  }
}

/**
 * The levels of a pit from its inlet down, on a 1/4 in step: the overflow 1 in under the inlet and a hand under the rim, what
 * drains back 1 in under that, the running level under the room for what comes home, pump off over the intake. The bottom
 * stays where it leaves 3 min of the pump's flow and a day's use between running and pump off; else it is dug deeper.
 * Undefined where no depth does: the pit must be wider.
 */
export const workingLevels = (pit: PitFacts, asks: PitAsks): WorkingLevels | undefined => {
  const highestMm = Math.min(asks.inletMm - INLET_OVER_OVERFLOW_MM, pit.rimMm - OVERFLOW_UNDER_EDGE_MM)
  const overflowMm = stepped(highestMm)
  const intakeOverMm = pit.intakeMm - pit.bottomMm
  for (
    let bottomMm = pit.bottomMm;
    bottomMm >= pit.rimMm - DEEPEST_MM;
    bottomMm = stepped(bottomMm - STEP_MM)
  ) {
    const levels = levelsOn(dugTo(pit, bottomMm), overflowMm, intakeOverMm, asks)
    if (levels) return levels
  }
  return undefined
}
