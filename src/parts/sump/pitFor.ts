import { INLET_OVER_OVERFLOW_MM } from '../../model/pitFacts'
import { workingLevels, type PitAsks } from '../../model/workingLevels'
import { pitFactsOf } from './pitFacts'
import { sumpSchema, type Sump } from './schema'

const LEVELS = [
  'overflowMm',
  'drainBackMm',
  'runningMm',
  'makeUpMm',
  'lowAlarmMm',
  'pumpOffMm',
  'bottomMm',
] as const satisfies readonly (keyof Sump)[]

const levelsRaised = (pit: Sump, byMm: number): Partial<Sump> => ({
  ...Object.fromEntries(LEVELS.map((level) => [level, pit[level] + byMm])),
  ...(pit.intakeMm !== null && { intakeMm: pit.intakeMm + byMm }),
})

/** A pit dug less deep, or deeper where `byMm` is negative: all its levels go together, while its rim stays at the floor. */
export const raisedPit = (pit: Sump, byMm: number): Sump => ({ ...pit, ...levelsRaised(pit, byMm) })

/** The usual levels of a pit, all moved together so that a drain at this invert comes in over the overflow. */
export const levelsForInlet = (inletMm: number): Partial<Sump> => {
  const usual = sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: { x: 0, y: 0 } })
  return levelsRaised(usual, inletMm - INLET_OVER_OVERFLOW_MM - usual.overflowMm)
}

/** The levels of a pit sized for its water, from the inlet down; undefined where no depth of it would hold that. */
export const sizedPit = (pit: Sump, asks: PitAsks): Partial<Sump> | undefined => {
  const levels = workingLevels(pitFactsOf(pit), asks)
  if (!levels) return undefined
  const { intakeMm, ...rest } = levels
  // An intake left to the program goes with the bottom by itself.
  return pit.intakeMm === null ? rest : { ...rest, intakeMm }
}
