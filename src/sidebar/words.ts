import { useMemo } from 'react'
import type { Words } from '../checks/context'
import type { Layout } from '../layout/schema'
import { nameOf } from '../store/partNames'
import { usePlannerState } from '../store/react'
import { useLevelReading } from '../store/useLevelReading'
import type { Units } from '../units/length'
import { atSaw } from '../units/precision'
import { type LevelReading, plainReading } from '../units/writeLevel'
import { writerFor } from '../units/writer'

/** The words of one reader for one layout. */
export const wordsFor = (
  parts: Layout['parts'],
  units: Units,
  reading: LevelReading = plainReading,
): Words => {
  const names = new Map(parts.map((part) => [part.id, nameOf(part)]))
  return { ...writerFor(units, atSaw, reading), name: (id) => names.get(id) ?? id }
}

/** The words of this page: its units, its reading of levels, and the names of these parts. */
export const useWords = (parts: Layout['parts']): Words => {
  const units = usePlannerState((state) => state.units)
  const reading = useLevelReading()
  return useMemo(() => wordsFor(parts, units, reading), [parts, units, reading])
}
