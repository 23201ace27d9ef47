import { useEffect, useState } from 'react'
import type { Bay } from '../../checks/context'
import type { PartId } from '../../model/ids'
import { type PumpStudy, studySteps } from './pumpStudy'

interface Studied {
  readonly bay: Bay
  readonly pit: PartId
  readonly study: PumpStudy
}

interface Known {
  /** Of this pit, the last that was finished; undefined before the first. */
  readonly study: PumpStudy | undefined
  /** It is of the bay as it stands. */
  readonly isCurrent: boolean
}

/** While something is dragged the bay changes more often than this, ms; a study then would hold the drag up. */
const QUIET_MS = 150

/** The study of a pit's pumps, one solution at a time between whatever else the page does, once the bay stands still. */
export const usePumpStudy = (bay: Bay, pit: PartId): Known => {
  const [studied, setStudied] = useState<Studied>()
  useEffect(() => {
    const steps = studySteps(bay, pit)
    const turn = () => {
      const step = steps.next()
      if (step.done) setStudied({ bay, pit, study: step.value })
      else timer = setTimeout(turn)
    }
    let timer = setTimeout(turn, QUIET_MS)
    return () => clearTimeout(timer)
  }, [bay, pit])
  const own = studied?.pit === pit ? studied : undefined
  return { study: own?.study, isCurrent: own?.bay === bay }
}
