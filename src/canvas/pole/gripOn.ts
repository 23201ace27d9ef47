import type { Units } from '../../units/length'
import { asTyped, inTrench } from '../../units/precision'
import { parseLevel } from '../../units/parseLevel'
import type { LevelReading } from '../../units/writeLevel'
import { writerFor } from '../../units/writer'
import type { GripOn } from './LevelGrip'
import { levelStep, onStep, stepped } from './levelSteps'
import type { PoleScale } from './poleScale'

/** What a grip does on a scale of this reading. */
export const gripOn = (
  units: Units,
  reading: LevelReading,
  scale: PoleScale,
  hands: Pick<GripOn, 'take' | 'letGo'>,
): GripOn => {
  const step = levelStep(units, reading)
  return {
    scale,
    write: writerFor(units, inTrench, reading).level,
    writeExactly: writerFor(units, asTyped, reading).level,
    read: (text) => parseLevel(text, units, reading),
    onStep: (levelMm) => onStep(levelMm, step, reading),
    step: (levelMm, up, isLarge) => stepped(levelMm, up, isLarge, step, reading),
    ...hands,
  }
}
