import { useEffect, useState } from 'react'
import type * as costChange from './costChange'

type CostChange = (typeof costChange)['costChange']

const none: CostChange = () => []

/** What a drag does to boards, money and hours; nothing until the price book has come, which is asked for at the first drag. */
export const useCostChange = (isMoving: boolean): CostChange => {
  const [find, setFind] = useState<CostChange>(() => none)
  useEffect(() => {
    if (isMoving) void import('./costChange').then((come) => setFind(() => come.costChange))
  }, [isMoving])
  return find
}
