import type { Words } from '../../../../checks/context'
import type { RowStrength, Screen } from '../../../../model/strength'
import { strengthBasis } from '../../../../model/strengthBasis'
import { StateMark } from '../../../../sidebar/StateMark'
import '../bench.css'
import { ScreenDetails } from '../ScreenDetails'
import { loadWords, usedWords } from '../screenWords'
import { strengthRank } from '../shownRack'

/** Same screen, same key, whatever its numbers. */
export const screenKey = ({ id, mark }: Screen): string => `${id} ${mark}`

interface ScreensProps {
  readonly strength: RowStrength | undefined
  readonly words: Words
  /** Key of the one that is open. */
  readonly open: string | undefined
  readonly onOpen: (screen: Screen | undefined) => void
}

function Line({
  screen,
  isOpen,
  onOpen,
}: {
  readonly screen: Screen
  readonly isOpen: boolean
  readonly onOpen: () => void
}) {
  return (
    <button className="bench-line" aria-expanded={isOpen} onClick={onOpen}>
      <span className="bench-line-what">
        <b>{screen.mark}</b> {strengthBasis[screen.id].title}
      </span>
      <StateMark word={screen.state} rank={strengthRank(screen.state)} />
      <span className="bench-line-used">
        {usedWords(screen.used)}, {loadWords[screen.under]}
      </span>
    </button>
  )
}

/** Every screen of every member of a row, worst first. One that is opened shows its arithmetic. */
export function MemberScreens({ strength, words, open, onOpen }: ScreensProps) {
  if (!strength || strength.screens.length === 0)
    return <p className="water-note">Nothing of this row is screened.</p>
  return (
    <ul className="bench-lines" aria-label="Screens, worst first">
      {strength.screens.map((screen) => {
        const key = screenKey(screen)
        const isOpen = key === open
        return (
          <li key={key}>
            <Line screen={screen} isOpen={isOpen} onOpen={() => onOpen(isOpen ? undefined : screen)} />
            {isOpen && <ScreenDetails screen={screen} row={strength.part} words={words} />}
          </li>
        )
      })}
    </ul>
  )
}
