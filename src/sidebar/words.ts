import { useMemo } from 'react'
import type { Words } from '../checks/context'
import type { Layout, Part } from '../layout/schema'
import { kindOf } from '../parts/index'
import { usePlannerState } from '../store/react'
import type { Units } from '../units/length'
import { writerFor } from '../units/writer'

/** What a part is called; a part without a name goes by its kind. */
export const nameOf = (part: Part): string => part.name || kindOf(part).title

/** The words of one reader for one layout. */
export const wordsFor = (parts: Layout['parts'], units: Units): Words => {
  const names = new Map(parts.map((part) => [part.id, nameOf(part)]))
  return { ...writerFor(units), name: (id) => names.get(id) ?? id }
}

/** One part by its name, several by their number. */
export const partsTitle = (parts: readonly Part[]): string => {
  const [first] = parts
  return parts.length === 1 && first ? nameOf(first) : `${parts.length} parts`
}

/** The words of this page: its units, and the names of these parts. */
export const useWords = (parts: Layout['parts']): Words => {
  const units = usePlannerState((state) => state.units)
  return useMemo(() => wordsFor(parts, units), [parts, units])
}
