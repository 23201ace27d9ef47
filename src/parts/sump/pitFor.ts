import { INLET_OVER_OVERFLOW_MM } from '../../model/pitFacts'
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
