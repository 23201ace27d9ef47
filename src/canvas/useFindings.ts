import { useEffect, useState } from 'react'
import type { findingsOf } from '../evaluate/8-checks'

type FindingsOf = typeof findingsOf

const none: FindingsOf = () => []

/** What the rules find in a bay; nothing until the rules have come, behind the first drawing of the plan. */
export const useFindings = (): FindingsOf => {
  const [find, setFind] = useState<FindingsOf>(() => none)
  useEffect(() => {
    void import('../evaluate/8-checks').then((come) => setFind(() => come.findingsOf))
  }, [])
  return find
}
