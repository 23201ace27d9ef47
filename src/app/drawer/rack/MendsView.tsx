import { useEffect, useRef, useState } from 'react'
import { strengthOf } from '../../../evaluate/5-loads'
import type { Evaluation } from '../../../evaluate/evaluation'
import { rowRank, stanceRank } from '../../../evaluate/strengthMends/ailments'
import { alikeRows } from '../../../evaluate/strengthMends/alikeRows'
import type { Mends, RowMend } from '../../../evaluate/strengthMends/mends'
import { setFields } from '../../../layout/setFields'
import type { PartId } from '../../../model/ids'
import type { RowStrength } from '../../../model/strength'
import { commitEdited } from '../../../sidebar/commitEdited'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlanner, usePlannerState } from '../../../store/react'
import { PartChoice } from '../PartChoice'
import { MendsFound } from './MendsFound'
import './mends.css'
import { inHandWords, mendLabel, type Reader } from './mendsWords'
import { NoRack } from './RackChoice'
import { rackRows, shownRack, strengthRank } from './shownRack'
import { useMends } from './useMends'

type Strengths = ReadonlyMap<PartId, RowStrength>

/** Rows that must be mended first, then the more loaded before the less. */
const worstFirst = (rows: readonly PartId[], strengths: Strengths): readonly PartId[] => {
  const rank = (id: PartId): number => {
    const row = strengths.get(id)
    return row ? rowRank(row) : 0
  }
  const used = (id: PartId): number => Math.min(Number.MAX_VALUE, strengths.get(id)?.screens[0]?.used ?? 0)
  return rows.toSorted((a, b) => rank(b) - rank(a) || used(b) - used(a))
}

/** The row that is looked at; it stays while another becomes the worst, as it does when it is mended. */
const useRow = ({ bay }: Evaluation, strengths: Strengths): [PartId | undefined, readonly PartId[]] => {
  const selection = usePlannerState((state) => state.selection)
  const [held, setHeld] = useState<PartId>()
  const rows = worstFirst(rackRows(bay), strengths)
  const shown = shownRack(rows, selection, held, undefined)
  if (shown !== held) setHeld(shown)
  return [shown, rows]
}

interface RowHeadProps {
  readonly shown: PartId
  readonly rows: readonly PartId[]
  readonly strengths: Strengths
  readonly reader: Reader
}

/** The choice of a row, and how it carries and stands. */
function RowHead({ shown, rows, strengths, reader }: RowHeadProps) {
  const row = strengths.get(shown)
  const words = (id: PartId) => {
    const each = strengths.get(id)
    return each ? `${reader.words.name(id)}: ${each.state}, ${each.stance.state}` : reader.words.name(id)
  }
  return (
    <div className="water-row-choice">
      <PartChoice label="Row" shown={shown} parts={rows} words={words} />
      {row && (
        <span className="mends-states">
          <StateMark word={row.state} rank={strengthRank(row.state)} />
          <StateMark word={row.stance.state} rank={stanceRank(row.stance)} />
        </span>
      )}
    </div>
  )
}

interface AlikeProps {
  readonly count: number
  readonly isAll: boolean
  readonly onAll: (isAll: boolean) => void
}

function Alike({ count, isAll, onAll }: AlikeProps) {
  return (
    <label className="mends-alike">
      <input type="checkbox" checked={isAll} onChange={(event) => onAll(event.target.checked)} />{' '}
      {count === 1 ? 'And the row that is built like it' : `And the ${count} rows that are built like it`}
    </label>
  )
}

/**
 * What was done, as long as the bay is as that left it: after an undo, or another edit, it is true no more. The focus goes there,
 * since the button goes with its line.
 */
const useDone = () => {
  const layout = usePlannerState((state) => state.layout)
  const [done, setDone] = useState({ words: '', layout })
  const says = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (done.words !== '') says.current?.focus()
  }, [done])
  return { words: done.layout === layout ? done.words : '', says, setDone }
}

interface AskedProps {
  readonly evaluation: Evaluation
  readonly rows: readonly PartId[]
  readonly reader: Reader
  readonly onMend: (mend: RowMend) => void
}

const isNothing = ({ mending, easing, refused }: Mends): boolean =>
  mending.length + easing.length + refused.length === 0

/** What would mend the rows, as far as it is known. */
function Asked({ evaluation, rows, reader, onMend }: AskedProps) {
  const { found, isCurrent, isOnItsWay } = useMends(evaluation, rows)
  const isOfNow = isCurrent || isOnItsWay
  return (
    <div className={isOfNow ? 'mends-asked' : 'mends-asked water-stale'} aria-busy={!isCurrent}>
      {found && !isNothing(found.mends) && (
        <MendsFound found={found} reader={reader} onMend={isOfNow ? onMend : undefined} />
      )}
      {found && isCurrent && isNothing(found.mends) && (
        <p>
          Nothing that is tried eases this row. Take weight off its bars, or lay it out anew with shorter
          racks.
        </p>
      )}
      {!isCurrent && (
        <p className="water-none" role="status">
          {isOnItsWay ? 'Trying more …' : 'Trying one change after another in the whole bay …'}
        </p>
      )}
    </div>
  )
}

const isAiling = (row: RowStrength | undefined): boolean => row !== undefined && rowRank(row) > 0

function RowMends({ evaluation, shown, rows, strengths, reader }: RowHeadProps & { evaluation: Evaluation }) {
  const planner = usePlanner()
  const { layout } = evaluation
  const [isAll, setIsAll] = useState(false)
  const { words: doneWords, says, setDone } = useDone()
  const alike = alikeRows(layout, shown)
  const asked = isAll ? alike : [shown]
  const isIll = asked.some((id) => isAiling(strengths.get(id)))
  const row = strengths.get(shown)
  const mend = (each: RowMend) => {
    const label = mendLabel(each, reader)
    const refused = commitEdited(planner, label, (now) => setFields(now, each.changes))
    setDone({
      words: refused ?? `${label}: done. Undo takes it back.`,
      layout: planner.store.getState().layout,
    })
  }
  return (
    <div className="water-view mends">
      <RowHead {...{ shown, rows, strengths, reader }} />
      <p ref={says} tabIndex={-1} role="status" className="mends-done">
        <Said words={doneWords} />
      </p>
      {alike.length > 1 && <Alike count={alike.length - 1} isAll={isAll} onAll={setIsAll} />}
      {isIll ? (
        <Asked evaluation={evaluation} rows={asked} reader={reader} onMend={mend} />
      ) : (
        row && (
          <p>
            <Said words={inHandWords(row, layout.settings.pushN, reader)} />
          </p>
        )
      )}
      <p className="water-note">
        Each change is tried in the whole bay: worked out, priced and checked again. It is offered only where
        it eases the row and no other warning is new or worse. Money is told between first plans by the price
        book: placeholders, until you put your own. A screening, not a rating.
      </p>
    </div>
  )
}

/** What would mend a row of racks that is not within or does not stand, cheapest first, and one press to do it. */
export default function MendsView() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const strengths = strengthOf(evaluation.bay)
  const [shown, rows] = useRow(evaluation, strengths)
  if (shown === undefined) return <NoRack />
  const reader = { words, currency: evaluation.layout.counter.currency }
  return <RowMends {...{ evaluation, shown, rows, strengths, reader }} />
}
