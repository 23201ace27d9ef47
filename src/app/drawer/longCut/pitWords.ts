import { spread } from '../../../canvas/spread'
import type { CutPit } from '../../../evaluate/longCut/section'
import type { PitLevel } from '../../../model/pitFacts'
import type { CutScale } from './cutScale'

/** The levels of a pit as they are called on the section, from the rim down. */
export const LEVEL_NAMES: Readonly<Record<PitLevel, string>> = {
  rimMm: 'Rim',
  overflowMm: 'Overflow',
  drainBackMm: 'Drain-back',
  runningMm: 'Running',
  makeUpMm: 'Make-up',
  lowAlarmMm: 'Low alarm',
  pumpOffMm: 'Pump off',
  intakeMm: 'Intake',
  bottomMm: 'Bottom',
}

/** The least height of what a finger or a mouse takes hold of, px. */
export const LEAST_TARGET_PX = 24

/** Where the words of one level stand, and the level itself, px down the drawing. */
export interface LevelWords {
  readonly level: PitLevel
  readonly levelMm: number
  readonly y: number
  readonly at: number
}

/** The levels of a pit beside its far wall, each with room to be taken hold of; from the top down. */
export const levelWords = ({ facts }: CutPit, { yOf, bottom }: CutScale): readonly LevelWords[] => {
  // The names hold every level of a pit, by the type of the record.
  const levels = (Object.keys(LEVEL_NAMES) as PitLevel[]).toSorted((a, b) => facts[b] - facts[a])
  const wanted = levels.map((level) => yOf(facts[level]))
  const half = LEAST_TARGET_PX / 2
  const places = spread(wanted, LEAST_TARGET_PX, half, bottom + 46 - half)
  return levels.map((level, index) => {
    const y = wanted[index] ?? 0
    return { level, levelMm: facts[level], y, at: places[index] ?? y }
  })
}
