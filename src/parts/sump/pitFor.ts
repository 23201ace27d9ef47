import { inches } from '../../units/length'
import { sumpSchema, type Sump } from './schema'

/** A drain's inlet stands this far over the overflow. Common practice, no source. */
const INLET_OVER_OVERFLOW_MM = inches(1)

const LEVELS = [
  'overflowMm',
  'drainBackMm',
  'runningMm',
  'makeUpMm',
  'lowAlarmMm',
  'pumpOffMm',
  'bottomMm',
] as const satisfies readonly (keyof Sump)[]

/** The usual levels of a pit, all let down together so that a drain at this invert comes in over the overflow. */
export const levelsForInlet = (inletMm: number): Partial<Sump> => {
  const usual = sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: { x: 0, y: 0 } })
  const shiftMm = inletMm - INLET_OVER_OVERFLOW_MM - usual.overflowMm
  return Object.fromEntries(LEVELS.map((level) => [level, usual[level] + shiftMm]))
}
