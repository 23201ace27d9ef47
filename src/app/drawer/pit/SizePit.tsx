import { sizeMend } from '../../../checks/pitAsks'
import { applyMend } from '../../../layout/mend'
import type { PartId } from '../../../model/ids'
import { usePlanner, usePlannerState } from '../../../store/react'

interface SizePitProps {
  readonly part: PartId
  readonly name: string
}

/** All levels of a pit from its inlet down, set as its water asks, at one press. */
export function SizePit({ part, name }: SizePitProps) {
  const planner = usePlanner()
  const { layout, bay } = usePlannerState((state) => state.settled)
  const mend = sizeMend(bay, part)
  if (!mend)
    return <p className="water-note">No depth of this pit holds what comes home: make it longer or wider.</p>
  const isSized = applyMend(layout, mend) === layout
  return isSized ? (
    <p className="water-note">Its levels are as its water asks.</p>
  ) : (
    <button onClick={() => planner.commit(`Levels of ${name} sized`, (before) => applyMend(before, mend))}>
      Size the pit
    </button>
  )
}
