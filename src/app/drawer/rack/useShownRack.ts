import { useState } from 'react'
import { strengthOf } from '../../../evaluate/5-loads'
import type { PartId } from '../../../model/ids'
import { usePlannerState } from '../../../store/react'
import { rackRows, shownRack, worstLoaded } from './shownRack'

/** The row of racks to show; it stays the same while nothing else is selected, though another may have become the worst. */
export const useShownRack = (): PartId | undefined => {
  const [bay, selection] = usePlannerState((state) => [state.evaluation.bay, state.selection])
  const [held, setHeld] = useState<PartId>()
  const shown = shownRack(rackRows(bay), selection, held, held ?? worstLoaded(strengthOf(bay)))
  if (shown !== held) setHeld(shown)
  return shown
}
