import { useState } from 'react'
import type { Rule, Words } from '../checks/context'
import type { Finding } from '../model/finding'
import { usePlannerState } from '../store/react'
import { WarningCard } from './WarningCard'

/** Like findings beyond these wait behind one press. */
const FIRST_SHOWN = 8

interface RuleWarningsProps {
  readonly rule: Rule
  readonly findings: readonly Finding[]
  readonly words: Words
}

/** The findings of one rule. One that was jumped to is shown however far down it is. */
export function RuleWarnings({ rule, findings, words }: RuleWarningsProps) {
  const [isAll, setIsAll] = useState(false)
  const chosen = usePlannerState(({ finding }) =>
    findings.some(({ key }) => key === finding) ? finding : undefined,
  )
  const shown = findings.filter(({ key }, index) => isAll || index < FIRST_SHOWN || key === chosen)
  const hidden = findings.length - shown.length
  return (
    <div className="warnings-rule">
      <h3>
        {rule.title} <span>{findings.length > 1 && findings.length}</span>
      </h3>
      <ul>
        {shown.map((finding) => (
          <WarningCard
            key={finding.key}
            rule={rule}
            finding={finding}
            words={words}
            isChosen={finding.key === chosen}
          />
        ))}
      </ul>
      {hidden > 0 && <button onClick={() => setIsAll(true)}>{hidden} more</button>}
    </div>
  )
}
