import type { Bay, Words } from '../../../checks/context'
import { stopInParts } from '../../../evaluate/returns/stopPump'
import type { WhatIfRow } from '../../../evaluate/returns/whatIfRow'
import { whatIfRows, zoneFlushes } from '../../../evaluate/returns/whatIfs'
import { rankOf } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import type { Writer } from '../../../units/writer'
import { useTrenchWriter } from '../longCut/LongCutDrawing'
import { PartChoice } from '../PartChoice'
import type { Steps } from '../steps'
import { useAnswer } from '../useAnswer'
import '../chart/chart.css'
import './stop.css'
import { WHAT_IF_TITLES, whatIfLine, whatIfStart } from './whatIfWords'
import { HeadRow } from '../chart/HeadRow'

type Rows = ReadonlyMap<PartId, readonly WhatIfRow[]>

function* whatIfSteps(bay: Bay): Steps<Rows> {
  yield
  const stopped = yield* stopInParts(bay, {})
  if (!stopped) return new Map()
  const flushes = yield* zoneFlushes(bay)
  yield
  return whatIfRows({ bay, stopped, flushes })
}

interface LineProps {
  readonly row: WhatIfRow
  readonly words: Words
  readonly level: Writer['level']
}

function Line({ row, words, level }: LineProps) {
  const { overflow, dry, happens, todo } = whatIfLine(row, words, level)
  return (
    <tr>
      <th scope="row">{WHAT_IF_TITLES[row.kind]}</th>
      <td>
        <StateMark word={row.state} rank={rankOf({ subject: 'pit', state: row.state })} />
      </td>
      <td>{overflow}</td>
      <td>{dry}</td>
      <td>
        <Said words={happens} /> <b>{todo}</b>
      </td>
    </tr>
  )
}

const COLUMNS = ['What if', 'The pit', 'Runs over', 'Pump off', 'What happens, and what to do']

function Table({ rows, words, level }: Omit<LineProps, 'row'> & { readonly rows: readonly WhatIfRow[] }) {
  return (
    <div className="chart-table what-if-table" role="region" aria-label="What if" tabIndex={0}>
      <table>
        <HeadRow columns={COLUMNS} />
        <tbody>
          {rows.map((row) => (
            <Line key={row.kind} row={row} words={words} level={level} />
          ))}
        </tbody>
      </table>
    </div>
  )
}

function WhatIfs({ rows }: { readonly rows: Rows }) {
  const [evaluation, selection] = usePlannerState((state) => [state.evaluation, state.selection])
  const words = useWords(evaluation.layout.parts)
  const { level } = useTrenchWriter()
  const pits = [...rows.keys()]
  const pit = selection.find((part) => rows.has(part)) ?? pits[0]
  const facts = pit === undefined ? undefined : evaluation.bay.builtOf.get(pit)?.pit
  if (pit === undefined || !facts) return <p>No pit stands in this bay yet.</p>
  return (
    <>
      {pits.length > 1 && <PartChoice label="Pit" shown={pit} parts={pits} words={words.name} />}
      <p>
        <Said words={whatIfStart(facts, level)} />
      </p>
      <Table rows={rows.get(pit) ?? []} words={words} level={level} />
    </>
  )
}

/** What goes wrong at a pit, the minutes that are left, and what to do. */
export default function WhatIfView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { answer, isCurrent } = useAnswer('what-if', [bay], () => whatIfSteps(bay))
  if (!answer) return <p className="water-none">Letting it go wrong, one thing at a time …</p>
  if (answer.size === 0)
    return (
      <p className="water-none">
        No water runs in this bay yet, so nothing can go wrong with it. Lay a main from a pit with a pump to
        the rows.
      </p>
    )
  return (
    <div className={isCurrent ? 'what-if' : 'what-if water-stale'} aria-busy={!isCurrent}>
      <WhatIfs rows={answer} />
    </div>
  )
}
