import { sizeMend } from '../../../checks/pitAsks'
import { applyMend } from '../../../layout/mend'
import type { Layout, Part } from '../../../layout/schema'
import type { PartId } from '../../../model/ids'
import { usePlanner, usePlannerState } from '../../../store/react'

interface SizePitProps {
  readonly part: PartId
  readonly name: string
}

const partOf = ({ parts }: Layout, id: PartId): Part | undefined => parts.find((part) => part.id === id)

/** Whether a part is as it was, field by field. */
const isSame = (before: Part | undefined, after: Part | undefined): boolean =>
  JSON.stringify(before) === JSON.stringify(after)

/** All levels of a pit from its inlet down, set as its water asks, at one press. */
export function SizePit({ part, name }: SizePitProps) {
  const planner = usePlanner()
  const { layout, bay } = usePlannerState((state) => state.settled)
  const mend = sizeMend(bay, part)
  if (!mend)
    return <p className="water-note">No depth of this pit holds what comes home: make it longer or wider.</p>
  const isSized = isSame(partOf(layout, part), partOf(applyMend(layout, mend), part))
  return isSized ? (
    <p className="water-note">Its levels are as its water asks.</p>
  ) : (
    <button onClick={() => planner.commit(`Levels of ${name} sized`, (before) => applyMend(before, mend))}>
      Size the pit
    </button>
  )
}
