import { inches, type Units } from '../../units/length'
import { type LevelReading, unitsOfLevels } from '../../units/writeLevel'

/** How far a level goes with one press of a key, and with Shift, mm. */
export interface LevelStep {
  readonly smallMm: number
  readonly largeMm: number
}

/** 1/8 in is what a trench is dug to, and a whole mm on a metric rod. */
export const levelStep = (units: Units, reading: LevelReading): LevelStep =>
  unitsOfLevels(units, reading) === 'metric'
    ? { smallMm: 1, largeMm: 10 }
    : { smallMm: inches(1 / 8), largeMm: inches(1) }

/** Sums of ticks are a hair off a step. */
const HAIR = 1e-3

/** The level on the nearest step of the scale that the crew reads, mm from the benchmark's zero. */
export const onStep = (levelMm: number, { smallMm }: LevelStep, { zeroMm }: LevelReading): number =>
  Math.round((levelMm + zeroMm) / smallMm) * smallMm - zeroMm

/** The next step up or down; from between two steps, the one that lies there. A large step begins where the level is. */
export const stepped = (
  levelMm: number,
  up: 1 | -1,
  isLarge: boolean,
  { smallMm, largeMm }: LevelStep,
  { zeroMm }: LevelReading,
): number => {
  if (isLarge) return levelMm + up * largeMm
  const steps = (levelMm + zeroMm) / smallMm
  const next = up > 0 ? Math.floor(steps + HAIR) + 1 : Math.ceil(steps - HAIR) - 1
  return next * smallMm - zeroMm
}
