import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { fedParts } from './bayWater'
import { briefWords } from './briefWords'

/** The bay's water in one line, while the drawer is shut. */
export function WaterInBrief() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  return (
    <p className="frame-foot-brief">
      {briefWords(evaluation.bay.water, fedParts(evaluation), words.name, words)}
    </p>
  )
}
