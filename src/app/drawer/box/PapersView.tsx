import { useMemo, useState } from 'react'
import { sheets } from '../../../sheets'
import type { Sheet } from '../../../sheets/sheet'
import type { PaperState, SheetState } from '../../../sheets/sheetState'
import { CHANGE_NOTE } from '../../../sheets/sheetStates'
import { StateMark } from '../../../sidebar/StateMark'
import { useAnswer } from '../useAnswer'
import { inOne } from '../steps'
import { heldState, paperRanks, stateSteps } from './issueSteps'
import { pagesIn, pageWords, setSteps, type SheetPages } from './paperSet'
import './papers.css'
import { SetDeeds } from './SetDeeds'
import { SheetChoices } from './SheetChoices'
import { SheetDeeds } from './SheetDeeds'
import { SheetPreview } from './SheetPreview'
import { useIssuedProven, usePaperPlan } from './usePaperPlan'

interface SheetListProps {
  readonly shown: Sheet
  /** undefined while it is counted. */
  readonly made: readonly SheetPages[] | undefined
  /** What became of a sheet of the last issue; undefined before the first. */
  readonly stateOf: (sheet: Sheet) => PaperState | undefined
  readonly onShow: (sheet: Sheet) => void
}

const countWords = (sheet: Sheet, made: SheetListProps['made']): string => {
  const pages = made?.find((each) => each.sheet === sheet)?.pages.length
  if (pages === undefined) return '…'
  return pages === 0 ? 'not needed here' : pageWords(pages)
}

/** Every sheet with who holds it; a press shows it. */
function SheetList({ shown, made, stateOf, onShow }: SheetListProps) {
  return (
    <ul className="box-sheets" aria-label="Sheets">
      {sheets.map((sheet) => {
        const state = stateOf(sheet)
        return (
          <li key={sheet.id}>
            <button
              data-selected={sheet === shown}
              aria-pressed={sheet === shown}
              onClick={() => onShow(sheet)}
            >
              <b>{sheet.code}</b>
              <span>{sheet.title}</span>
              <small>{sheet.reader}</small>
              <small>{countWords(sheet, made)}</small>
              {state && <StateMark word={state} rank={paperRanks[state]} />}
            </button>
          </li>
        )
      })}
    </ul>
  )
}

const [first] = sheets
const notes = sheets.filter(({ id }) => id === CHANGE_NOTE)
const othersThanNote = sheets.filter(({ id }) => id !== CHANGE_NOTE)

const NONE: readonly SheetState[] = []

/** The crew's papers: each looked at as it will be printed, and handed over one by one or all at once. */
export default function PapersView() {
  const plain = usePaperPlan()
  useIssuedProven(plain.plan)
  const { answer: states } = useAnswer('states', [plain], () => stateSteps(plain))
  const set = useMemo(() => (states ? { ...plain, plan: { ...plain.plan, states } } : plain), [plain, states])
  const [shown, setShown] = useState<Sheet | undefined>(first)
  // The note alone waits for what became of the others.
  const { answer: others } = useAnswer('set', [plain], () => setSteps(othersThanNote, plain))
  const { answer: note } = useAnswer('note', [set], () => setSteps(notes, set))
  const made = others && note && [...others, ...note]
  const stateOf = ({ id }: Sheet) => {
    const isNeeded = made?.some(({ sheet, pages: found }) => sheet.id === id && found.length > 0)
    const state = heldState(set.plan, states ?? NONE, id)
    return state === 'Current' && !isNeeded ? undefined : state
  }
  const about = useMemo(() => [set, shown], [set, shown])
  const { answer: pages, isCurrent } = useAnswer(shown?.id ?? '', about, () =>
    inOne(() => (shown ? pagesIn(shown, set) : [])),
  )
  if (!shown) return null
  return (
    <div className="box">
      <div className="box-set">
        <SetDeeds set={set} />
        <SheetList shown={shown} made={made} stateOf={stateOf} onShow={setShown} />
      </div>
      <div className="box-sheet">
        <div className="box-bar">
          <SheetChoices sheet={shown} set={set} />
          <SheetDeeds sheet={shown} pages={pages ?? []} set={set} />
        </div>
        <SheetPreview key={shown.id} sheet={shown} pages={pages} isCurrent={isCurrent} />
      </div>
    </div>
  )
}
