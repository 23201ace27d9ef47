import type { Screen } from '../../../model/strength'
import { strengthBasis } from '../../../model/strengthBasis'
import { Fold } from '../../../sidebar/Fold'
import { StateMark } from '../../../sidebar/StateMark'
import type { Writer } from '../../../units/writer'
import { ScreenDetails } from './ScreenDetails'
import { usedWords } from './screenWords'
import { strengthRank } from './shownRack'

interface ScreenListProps {
  readonly screens: readonly Screen[]
  readonly words: Writer
}

/** Screens of members, worst first, each opening to what it stands on. */
export function ScreenList({ screens, words }: ScreenListProps) {
  return (
    <div className="screen-list">
      {screens.map((screen) => (
        <Fold
          key={`${screen.id}-${screen.mark}`}
          title={
            <span className="screen-head">
              <b>{screen.mark}</b>
              <span>{strengthBasis[screen.id].title}</span>
              <span className="screen-used">{usedWords(screen.used)}</span>
              <StateMark word={screen.state} rank={strengthRank(screen.state)} />
            </span>
          }
        >
          <ScreenDetails screen={screen} words={words} />
        </Fold>
      ))}
    </div>
  )
}
