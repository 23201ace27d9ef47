import { Calculator, Check, Hammer, LocateFixed, Wrench } from 'lucide-react'
import { useEffect, useRef, useState } from 'react'
import type { Rule, Words } from '../checks/context'
import { mendWords, tellingWords } from '../checks/words'
import { type Finding, rankOf } from '../model/finding'
import { usePlanner } from '../store/react'
import { AcceptForm } from './AcceptForm'
import { Arithmetic } from './Arithmetic'
import { Said } from './Said'
import { StateMark } from './StateMark'
import { jumpTo, mendNow, showMends } from './floorActions'

const ICON = { size: 15, 'aria-hidden': true } as const

interface WarningCardProps {
  readonly rule: Rule
  readonly finding: Finding
  readonly words: Words
  readonly isChosen: boolean
}

/** One finding: what is wrong and by how much, where it is, what would mend it, and how the program knows. */
export function WarningCard({ rule, finding, words: given, isChosen }: WarningCardProps) {
  const words = tellingWords(finding, given)
  const planner = usePlanner()
  const card = useRef<HTMLLIElement>(null)
  const [opened, setOpened] = useState<'acceptance' | 'arithmetic'>()
  const turn = (what: typeof opened) => setOpened(opened === what ? undefined : what)
  const { mend } = finding
  const said = rule.say(finding, words)
  useEffect(() => {
    if (isChosen) card.current?.scrollIntoView({ block: 'nearest' })
  }, [isChosen])
  return (
    <li ref={card} className="warning" data-chosen={isChosen}>
      <p>
        <StateMark word={finding.state} rank={rankOf(finding)} /> <Said words={said} />
      </p>
      {mend && (
        <button className="warning-mend" onClick={() => mendNow(planner, finding, mend, words)}>
          <Wrench {...ICON} />{' '}
          <span>
            <Said words={mendWords(mend, finding, words)} />
          </span>
        </button>
      )}
      <div className="warning-does">
        <button onClick={() => jumpTo(planner, finding)} aria-label={`Show on the plan: ${said}`}>
          <LocateFixed {...ICON} /> Show
        </button>
        {rule.over === 'frame' && (
          <button onClick={() => showMends(planner, finding)} aria-label={`Mends of: ${said}`}>
            <Hammer {...ICON} /> Mends
          </button>
        )}
        <button
          aria-expanded={opened === 'arithmetic'}
          aria-label={`Arithmetic of: ${said}`}
          onClick={() => turn('arithmetic')}
        >
          <Calculator {...ICON} /> Arithmetic
        </button>
        <button
          aria-expanded={opened === 'acceptance'}
          aria-label={`Accept with a reason: ${said}`}
          onClick={() => turn('acceptance')}
        >
          <Check {...ICON} /> Accept
        </button>
      </div>
      {opened === 'acceptance' && <AcceptForm finding={finding} onDone={() => setOpened(undefined)} />}
      {opened === 'arithmetic' && <Arithmetic rule={rule} finding={finding} words={words} />}
    </li>
  )
}
