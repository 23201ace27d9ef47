import { useState } from 'react'
import type { PartId } from '../../model/ids'
import { usePlannerState } from '../../store/react'
import { fedParts, shownRow, worstRow } from './bayWater'

/** The row to show; while something slides it stays the same, though another may have become the worst. */
export const useShownRow = (): PartId | undefined => {
  const [evaluation, selection, isPreviewed] = usePlannerState((state) => [
    state.evaluation,
    state.selection,
    state.preview !== undefined,
  ])
  const [held, setHeld] = useState<PartId>()
  const shown = shownRow(
    fedParts(evaluation),
    selection,
    isPreviewed ? held : undefined,
    worstRow(evaluation.bay.water),
  )
  if (shown !== held) setHeld(shown)
  return shown
}
