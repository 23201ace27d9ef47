import { useMemo } from 'react'
import type { Frame } from '../../../../evaluate/loads/frame'
import type { RowStrength } from '../../../../model/strength'
import { rowBuilt } from '../../../../sheets/assembly/rowBuilt'
import { usePlannerState } from '../../../../store/react'
import { atDrill, atSaw } from '../../../../units/precision'
import { writerFor } from '../../../../units/writer'
import type { BenchGiven } from './given'
import type { Stretch } from './stretch'

/** What the drawings are made of, the same while nothing of it changes, so that they are drawn once. */
export const useBenchGiven = (
  frame: Frame,
  strength: RowStrength | undefined,
  stretch: Stretch,
): BenchGiven => {
  const units = usePlannerState((state) => state.units)
  const yieldMpa = usePlannerState((state) => state.evaluation.layout.settings.conduitYieldMpa)
  return useMemo(() => {
    const racks = rowBuilt(frame.built, null)?.racks ?? []
    return {
      frame,
      rack: racks.find(({ number }) => number === (stretch.rack ?? 1)),
      stretch,
      strength,
      yieldMpa,
      write: writerFor(units, atSaw),
      drill: writerFor(units, atDrill),
    }
  }, [frame, strength, stretch, units, yieldMpa])
}
