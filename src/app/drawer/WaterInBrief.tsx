import { StateMark } from '../../sidebar/StateMark'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { fedParts, flowRank } from './bayWater'
import { briefWords, rowStates } from './briefWords'

/** The bay's water in one line, while the drawer is shut: rows by their state, then what runs where. */
export function WaterInBrief() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const { water } = evaluation.bay
  return (
    <p className="frame-foot-brief">
      {rowStates(water).map(({ state, rows }) => (
        <StateMark key={state} word={state} rank={flowRank(state)} count={rows} />
      ))}
      <span>{briefWords(water, fedParts(evaluation), words.name, words)}</span>
    </p>
  )
}
