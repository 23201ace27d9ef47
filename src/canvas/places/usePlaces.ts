import { useEffect, useState } from 'react'
import type * as overPlaces from './overPlaces'

/** What points out the places of a counted thing; undefined until it has come, for the first thing that is pointed out. */
export const usePlaces = (isWanted: boolean): typeof overPlaces | undefined => {
  const [over, setOver] = useState<typeof overPlaces>()
  useEffect(() => {
    if (isWanted) void import('./overPlaces').then((come) => setOver(() => come))
  }, [isWanted])
  return over
}
