import { useMemo } from 'react'
import type { Words } from '../checks/context'
import type { Layout } from '../layout/schema'
import { nameOf } from '../store/partNames'
import { usePlannerState } from '../store/react'
import type { Units } from '../units/length'
import { writerFor } from '../units/writer'

/** The words of one reader for one layout. */
export const wordsFor = (parts: Layout['parts'], units: Units): Words => {
  const names = new Map(parts.map((part) => [part.id, nameOf(part)]))
  return { ...writerFor(units), name: (id) => names.get(id) ?? id }
}

/** The words of this page: its units, and the names of these parts. */
export const useWords = (parts: Layout['parts']): Words => {
  const units = usePlannerState((state) => state.units)
  return useMemo(() => wordsFor(parts, units), [parts, units])
}
