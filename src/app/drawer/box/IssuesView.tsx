import { Stamp } from 'lucide-react'
import { type FormEvent, useState } from 'react'
import { isAsIssued, issuePapers, nextIssue } from '../../../layout/issues'
import { changeNote } from '../../../sheets/change/changeNote'
import { changesSaid } from '../../../sheets/change/superseded'
import { pagesOf } from '../../../sheets/pagesOf'
import type { SheetState } from '../../../sheets/sheetState'
import { toldAgainst } from '../../../sheets/sheetStates'
import { commitEdited } from '../../../sidebar/commitEdited'
import { StateMark } from '../../../sidebar/StateMark'
import { usePlanner, usePlannerState } from '../../../store/react'
import { HeadRow } from '../chart/HeadRow'
import { today } from '../prices/today'
import { inOne } from '../steps'
import { useAnswer } from '../useAnswer'
import { dayWords } from '../../paperNames'
import { neededSteps, paperRanks, stateSteps } from './issueSteps'
import { optionsIn, type PaperSet } from '../../../sheets/paperSet'
import './papers.css'
import './versions.css'
import { Progress } from './SetDeeds'
import { SheetPreview } from './SheetPreview'
import { useMaking } from './useMaking'
import { useIssuedProven, usePaperPlan } from './usePaperPlan'

/** Hands out the next set. */
function IssueForm({ set }: { readonly set: PaperSet }) {
  const planner = usePlanner()
  const layout = usePlannerState((state) => state.layout)
  const [note, setNote] = useState('')
  const { making, make, stop } = useMaking()
  const number = nextIssue(layout)
  const issue = async () => {
    const needed = await make(neededSteps(set))
    if (!needed) return
    const fault = commitEdited(planner, `Issue ${number} of the papers`, (before) =>
      issuePapers(before, { date: today(), note, sheets: needed }),
    )
    if (fault !== undefined) return planner.set({ notice: { tone: 'trouble', text: fault } })
    planner.say(`Issue ${number} of the papers is out`)
    setNote('')
  }
  if (making) return <Progress making={making} onStop={stop} />
  const submit = (event: FormEvent) => {
    event.preventDefault()
    void issue()
  }
  return (
    <form className="box-words" onSubmit={submit}>
      <label>
        Why (may be left empty)
        <input value={note} maxLength={300} onChange={(event) => setNote(event.target.value)} />
      </label>
      <button type="submit">
        <Stamp size={18} /> Issue the papers as number {number}
      </button>
      <p className="water-note">
        {isAsIssued(layout) && layout.papers.issues.length > 0
          ? 'Nothing has changed since the last issue.'
          : 'Papers printed before that say that they are a draft.'}
      </p>
    </form>
  )
}

function Issues() {
  const issues = usePlannerState((state) => state.layout.papers.issues)
  if (issues.length === 0)
    return <p className="water-none">No set of papers has been issued of this bay yet.</p>
  return (
    <div className="chart-table" role="region" aria-label="Issues" tabIndex={0}>
      <table>
        <HeadRow columns={['Issue', 'Date', 'Sheets', 'Why']} />
        <tbody>
          {issues.toReversed().map(({ number, date, note, sheets: held }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td>{dayWords(date)}</td>
              <td>{held.length}</td>
              <td>{note}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** What a sheet says otherwise than the one that the crew holds. */
function Differing({ changes }: Pick<SheetState, 'changes'>) {
  const lines = changes.reduce((sum, { rows }) => sum + rows.length, 0)
  if (lines === 0) return null
  return (
    <details>
      <summary>{lines === 1 ? '1 line differs' : `${lines} lines differ`}</summary>
      <ul className="box-changes">
        {changesSaid(changes).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </details>
  )
}

function States({ states, number }: { readonly states: readonly SheetState[]; readonly number: number }) {
  return (
    <div className="chart-table" role="region" aria-label={`Sheets of issue ${number}`} tabIndex={0}>
      <table>
        <HeadRow columns={['Sheet', `Issue ${number} is`]} />
        <tbody>
          {states.map(({ sheet, state, changes }) => (
            <tr key={sheet.id}>
              <th scope="row">
                {sheet.code} {sheet.title}
                <small>{sheet.reader}</small>
              </th>
              <td>
                <StateMark word={state} rank={paperRanks[state]} />
                <Differing changes={changes} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** The note of changes as it will be printed. */
function Note({ set, states }: { readonly set: PaperSet; readonly states: readonly SheetState[] }) {
  const { answer: pages, isCurrent } = useAnswer('note', [set, states], () =>
    inOne(() => pagesOf(changeNote, { ...set.plan, states }, optionsIn(changeNote, set))),
  )
  if (pages?.length === 0)
    return <p className="water-none">Nothing has changed since the last issue: no note is due.</p>
  return <SheetPreview sheet={changeNote} pages={pages} isCurrent={isCurrent} />
}

/** Numbered sets of papers, what became of each sheet of the last one, and the note that tells the owner. */
export default function IssuesView() {
  const set = usePaperPlan()
  useIssuedProven(set.plan)
  const { issued, now } = set.plan
  const against = toldAgainst(set.plan)
  const { answer: states, isCurrent } = useAnswer('states', [set], () => stateSteps(set))
  return (
    <div className="box">
      <div className="box-issues">
        <IssueForm set={set} />
        {issued && isAsIssued(now.layout) && (
          <p>
            <StateMark word="Current" rank={0} /> Every sheet of issue {issued.number} holds.
          </p>
        )}
        <Issues />
        {against && states && <States states={states} number={against.number} />}
      </div>
      <div className="box-sheet" aria-busy={!isCurrent}>
        {against && !states && <p className="water-none">Holding the papers against the bay …</p>}
        {issued && states && <Note set={set} states={states} />}
        {!issued && (
          <p className="water-none">
            Once a set is issued, what you change in the bay marks the sheets that it makes wrong, and a note
            tells what moved and which pieces are cut already.
          </p>
        )}
      </div>
    </div>
  )
}
