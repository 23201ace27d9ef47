import { useMemo } from 'react'
import { levelReading } from '../layout/levelReading'
import type { LevelReading } from '../units/writeLevel'
import { usePlannerState } from './react'

/** How the bay on the screen has its levels read, in fields and in words alike; the same object until that changes. */
export const useLevelReading = (): LevelReading => {
  const { zeroMm, in: unit } = usePlannerState(({ evaluation: { layout } }) =>
    levelReading(layout.settings, layout.house.benchmark),
  )
  return useMemo(() => ({ zeroMm, in: unit }), [zeroMm, unit])
}
