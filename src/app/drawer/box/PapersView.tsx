import { useMemo, useState } from 'react'
import { sheets } from '../../../sheets'
import type { Sheet } from '../../../sheets/sheet'
import { useAnswer } from '../useAnswer'
import { inOne } from '../steps'
import { pagesIn, pageWords, setSteps, type SheetPages } from './paperSet'
import './papers.css'
import { SetDeeds } from './SetDeeds'
import { SheetChoices } from './SheetChoices'
import { SheetDeeds } from './SheetDeeds'
import { SheetPreview } from './SheetPreview'
import { usePaperPlan } from './usePaperPlan'

interface SheetListProps {
  readonly shown: Sheet
  /** undefined while it is counted. */
  readonly made: readonly SheetPages[] | undefined
  readonly onShow: (sheet: Sheet) => void
}

const countWords = (sheet: Sheet, made: SheetListProps['made']): string => {
  const pages = made?.find((each) => each.sheet === sheet)?.pages.length
  if (pages === undefined) return '…'
  return pages === 0 ? 'not needed here' : pageWords(pages)
}

/** Every sheet with who holds it; a press shows it. */
function SheetList({ shown, made, onShow }: SheetListProps) {
  return (
    <ul className="box-sheets" aria-label="Sheets">
      {sheets.map((sheet) => (
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
          </button>
        </li>
      ))}
    </ul>
  )
}

const [first] = sheets

/** The crew's papers: each looked at as it will be printed, and handed over one by one or all at once. */
export default function PapersView() {
  const set = usePaperPlan()
  const [shown, setShown] = useState<Sheet | undefined>(first)
  const { answer: made } = useAnswer('set', [set], () => setSteps(sheets, set))
  const about = useMemo(() => [set, shown], [set, shown])
  const { answer: pages, isCurrent } = useAnswer(shown?.id ?? '', about, () =>
    inOne(() => (shown ? pagesIn(shown, set) : [])),
  )
  if (!shown) return null
  return (
    <div className="box">
      <div className="box-set">
        <SetDeeds set={set} />
        <SheetList shown={shown} made={made} onShow={setShown} />
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
