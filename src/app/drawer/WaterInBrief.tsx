import { findingsOf } from '../../evaluate/8-checks'
import type { Evaluation } from '../../evaluate/evaluation'
import { StateMark } from '../../sidebar/StateMark'
import { areaStates, sortedByAcceptance, warningGroups } from '../../sidebar/warningGroups'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { fedParts, flowRank } from './bayWater'
import { briefWords, rowStates } from './briefWords'

/** How the water falls home, in the words that the warnings have for it: the worst of the drains and of the pits. */
function HomeInBrief({ evaluation }: { readonly evaluation: Evaluation }) {
  const { open } = sortedByAcceptance(findingsOf(evaluation.bay), evaluation.layout.settings.accepted)
  return areaStates(warningGroups(open), evaluation)
    .filter(({ area, states }) => (area === 'Drains' || area === 'Pits') && states.length > 0)
    .map(({ area, states: [worst] }) => (
      <span key={area} className="frame-foot-state">
        {area} {worst && <StateMark word={worst.word} rank={worst.rank} />}
      </span>
    ))
}

/** The bay's water in one line, while the drawer is shut: its way home, rows by their state, then what runs where. */
export function WaterInBrief() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const { water } = evaluation.bay
  return (
    <p className="frame-foot-brief">
      <HomeInBrief evaluation={evaluation} />
      {rowStates(water).map(({ state, rows }) => (
        <StateMark key={state} word={state} rank={flowRank(state)} count={rows} />
      ))}
      <span>{briefWords(water, fedParts(evaluation), words.name, words)}</span>
    </p>
  )
}
