import { useEffect, useState } from 'react'
import type * as overDrains from './overDrains'

/** What draws over the drains; undefined until it has come, behind the first drawing of the plan. */
export const useOverDrains = (): typeof overDrains | undefined => {
  const [over, setOver] = useState<typeof overDrains>()
  useEffect(() => {
    void import('./overDrains').then((come) => setOver(() => come))
  }, [])
  return over
}
