import { Check, LocateFixed, Wrench } from 'lucide-react'
import { useEffect, useRef, useState } from 'react'
import type { Rule, Words } from '../checks/context'
import { mendWords } from '../checks/words'
import { type Finding, rankOf } from '../model/finding'
import { usePlanner } from '../store/react'
import { AcceptForm } from './AcceptForm'
import { Arithmetic } from './Arithmetic'
import { Fold } from './Fold'
import { StateMark } from './StateMark'
import { jumpTo, mendNow } from './warningActions'

interface WarningCardProps {
  readonly rule: Rule
  readonly finding: Finding
  readonly words: Words
  readonly isChosen: boolean
}

/** One finding: what is wrong and by how much, where it is, what would mend it, and how the program knows. */
export function WarningCard({ rule, finding, words, isChosen }: WarningCardProps) {
  const planner = usePlanner()
  const card = useRef<HTMLLIElement>(null)
  const [isAccepting, setIsAccepting] = useState(false)
  const { mend } = finding
  const said = rule.say(finding, words)
  useEffect(() => {
    if (isChosen) card.current?.scrollIntoView({ block: 'nearest' })
  }, [isChosen])
  return (
    <li ref={card} className="warning" data-chosen={isChosen}>
      <p>
        <StateMark word={finding.state} rank={rankOf(finding)} /> {said}
      </p>
      <div className="warning-does">
        <button onClick={() => jumpTo(planner, finding)} aria-label={`Show on the plan: ${said}`}>
          <LocateFixed size={15} aria-hidden="true" /> Show
        </button>
        {mend && (
          <button className="warning-mend" onClick={() => mendNow(planner, finding, mend, words)}>
            <Wrench size={15} aria-hidden="true" /> {mendWords(mend, finding, words)}
          </button>
        )}
        <button
          aria-expanded={isAccepting}
          aria-label={`Accept with a reason: ${said}`}
          onClick={() => setIsAccepting(!isAccepting)}
        >
          <Check size={15} aria-hidden="true" /> Accept
        </button>
      </div>
      {isAccepting && <AcceptForm finding={finding} onDone={() => setIsAccepting(false)} />}
      <Fold title="Arithmetic">
        <Arithmetic rule={rule} finding={finding} words={words} />
      </Fold>
    </li>
  )
}
