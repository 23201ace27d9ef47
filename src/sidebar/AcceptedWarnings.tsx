import type { Words } from '../checks/context'
import { ruleOf } from '../checks/index'
import { tellingWords } from '../checks/words'
import { unaccept } from '../layout/bayEdits'
import { type Finding, rankOf } from '../model/finding'
import { usePlanner } from '../store/react'
import { Fold } from './Fold'
import { Said } from './Said'
import { StateMark } from './StateMark'
import { jumpTo } from './floorActions'
import type { AcceptedFinding } from './warningGroups'

interface AcceptedWarningsProps {
  readonly accepted: readonly AcceptedFinding[]
  readonly words: Words
}

/** What the builder lives with, apart from what warns, each with its reason. */
export function AcceptedWarnings({ accepted, words }: AcceptedWarningsProps) {
  const planner = usePlanner()
  const warnAgain = ({ rule, key }: Finding) =>
    planner.commit(`Warn again: ${ruleOf(rule).title}`, (layout) => unaccept(layout, key))
  if (accepted.length === 0) return null
  return (
    <section className="warnings-accepted">
      <Fold title={<h2>Accepted {accepted.length}</h2>}>
        <ul>
          {accepted.map(({ finding, reason, by }) => (
            <li key={finding.key} className="warning">
              <p>
                <StateMark word={finding.state} rank={rankOf(finding)} />{' '}
                <Said words={ruleOf(finding.rule).say(finding, tellingWords(finding, words))} />
              </p>
              <blockquote>
                {reason}
                {by && <cite> {by}</cite>}
              </blockquote>
              <div className="warning-does">
                <button onClick={() => jumpTo(planner, finding)}>Show</button>
                <button onClick={() => warnAgain(finding)}>Warn again</button>
              </div>
            </li>
          ))}
        </ul>
      </Fold>
    </section>
  )
}
