import { useEffect, useState } from 'react'
import type * as overPlan from './overPlan'

type OverPlan = typeof overPlan

/** What draws over a painted plan; undefined on a plain one, and until it has come. */
export const useOverPlan = (isPainted: boolean): OverPlan | undefined => {
  const [over, setOver] = useState<OverPlan>()
  useEffect(() => {
    if (isPainted) void import('./overPlan').then((come) => setOver(() => come))
  }, [isPainted])
  return isPainted ? over : undefined
}
