import { rankOf } from '../../model/finding'
import type { Returns } from '../../model/returns'
import { StateMark } from '../../sidebar/StateMark'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { fedParts, flowRank } from './bayWater'
import { briefWords, homeStates, rowStates } from './briefWords'

/** How the water falls home, told by the worst drain and the worst pit. */
function HomeInBrief({ returns }: { readonly returns: Returns }) {
  const { drain, pit } = homeStates(returns)
  return (
    <>
      {drain && (
        <span className="frame-foot-state">
          Drains <StateMark word={drain} rank={rankOf({ subject: 'drain', state: drain })} />
        </span>
      )}
      {pit && (
        <span className="frame-foot-state">
          Pits <StateMark word={pit} rank={rankOf({ subject: 'pit', state: pit })} />
        </span>
      )}
    </>
  )
}

/** The bay's water in one line, while the drawer is shut: its way home, rows by their state, then what runs where. */
export function WaterInBrief() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const { water, returns } = evaluation.bay
  return (
    <p className="frame-foot-brief">
      <HomeInBrief returns={returns} />
      {rowStates(water).map(({ state, rows }) => (
        <StateMark key={state} word={state} rank={flowRank(state)} count={rows} />
      ))}
      <span>{briefWords(water, fedParts(evaluation), words.name, words)}</span>
    </p>
  )
}
