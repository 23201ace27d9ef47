import { memo, useDeferredValue, useMemo } from 'react'
import { findingsOf } from '../evaluate/8-checks'
import type { Evaluation } from '../evaluate/evaluation'
import { usePlannerState } from '../store/react'
import { AcceptedWarnings } from './AcceptedWarnings'
import { RuleWarnings } from './RuleWarnings'
import { StateMark } from './StateMark'
import { type AreaState, areaStates, sortedByAcceptance, warningGroups } from './warningGroups'
import './warnings.css'
import { useWords } from './words'

function AreaStates({ states }: { readonly states: readonly AreaState[] }) {
  return (
    <dl className="warnings-states">
      {states.map(({ area, states: counts }) => (
        <div key={area}>
          <dt>{area}</dt>
          <dd>
            {counts.length === 0 && <span className="warnings-none">nothing to check yet</span>}
            {counts.map((state) => (
              <StateMark key={state.word} {...state} />
            ))}
          </dd>
        </div>
      ))}
    </dl>
  )
}

const WarningList = memo(function WarningList({ evaluation }: { readonly evaluation: Evaluation }) {
  const { bay, layout } = evaluation
  const words = useWords(layout.parts)
  const { open, accepted } = sortedByAcceptance(findingsOf(bay), layout.settings.accepted)
  const groups = useMemo(() => warningGroups(open), [open])
  return (
    <div className="warnings">
      <AreaStates states={areaStates(groups, evaluation)} />
      {open.length === 0 && <p className="warnings-clear">Nothing in this bay warns.</p>}
      {groups.map(({ area, rules }) => (
        <section key={area} aria-label={area}>
          <h2>{area}</h2>
          {rules.map(({ rule, findings: list }) => (
            <RuleWarnings key={rule.id} rule={rule} findings={list} words={words} />
          ))}
        </section>
      ))}
      <AcceptedWarnings accepted={accepted} words={words} />
      <p className="warnings-foot">
        This is a screening, not a permit: local codes and licensed practice have the last word.
      </p>
    </div>
  )
})

/** Every finding that warns, and those that the builder lives with. A drag never waits for a long list to be drawn. */
export function Warnings() {
  return <WarningList evaluation={useDeferredValue(usePlannerState((state) => state.evaluation))} />
}
