import { useEffect, useState } from 'react'
import type * as drawn from './drawDifference'

/** What draws how the plan differs from another; undefined until it has come, for the first time that it is switched on. */
export const useDifference = (isWanted: boolean): typeof drawn | undefined => {
  const [difference, setDifference] = useState<typeof drawn>()
  useEffect(() => {
    if (isWanted) void import('./drawDifference').then((come) => setDifference(() => come))
  }, [isWanted])
  return difference
}
