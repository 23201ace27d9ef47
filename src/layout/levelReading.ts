import type { LevelReading } from '../units/writeLevel'
import type { House } from './house'
import type { Settings } from './settings'

type Benchmark = Pick<House['benchmark'], 'valueMm' | 'levelMm'>

/** How this bay's levels are written: from its zero, or so that the benchmark has its value. */
export const levelReading = (
  { levelsFrom, levelsIn }: Pick<Settings, 'levelsFrom' | 'levelsIn'>,
  { valueMm, levelMm }: Benchmark,
): LevelReading => ({ zeroMm: levelsFrom === 'benchmark' ? valueMm - levelMm : 0, in: levelsIn })
