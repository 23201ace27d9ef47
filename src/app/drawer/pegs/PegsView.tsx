import type { Words } from '../../../checks/context'
import { digCautions } from '../../../model/digCautions'
import type { DrainRun } from '../../../model/levels'
import { rankOf } from '../../../model/finding'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { useTrenchWriter } from '../longCut/LongCutDrawing'
import { PartChoice } from '../PartChoice'
import { RowFigures } from '../RowFigures'
import { drainFigures } from '../../../sheets/pegs/drainFigures'
import { endWords, type PegRow, pegRows, type TrenchWords } from '../../../sheets/pegs/pegRows'
import './pegs.css'
import { RowLevels } from './RowLevels'
import { shownDrain } from './shownDrain'

const COLUMNS: readonly { readonly key: keyof PegRow; readonly title: string }[] = [
  { key: 'number', title: 'Peg' },
  { key: 'fromLow', title: 'From the low end' },
  { key: 'why', title: 'Why it stands there' },
  { key: 'cut', title: 'Cut below peg top' },
  { key: 'hole', title: 'Hole' },
  { key: 'invert', title: 'Invert' },
  { key: 'floor', title: 'Floor' },
  { key: 'pegTop', title: 'Peg top' },
  { key: 'dig', title: 'Dig' },
]

interface PegTableProps {
  readonly title: string
  /** What the line ends in, which distances are measured from. */
  readonly from: string
  readonly rows: readonly PegRow[]
}

function PegTable({ title, from, rows }: PegTableProps) {
  const [first, ...rest] = COLUMNS
  return (
    <div className="chart-table pegs-table" role="region" aria-label={title} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {COLUMNS.map(({ key, title: column }) => (
              <th key={key} scope="col" className={`pegs-${key}`}>
                {key === 'fromLow' ? `From ${from}` : column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.number}>
              <th scope="row">{first ? row[first.key] : ''}</th>
              {rest.map(({ key }) => (
                <td key={key} className={`pegs-${key}`}>
                  {row[key]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

interface DugProps {
  readonly run: DrainRun
}

/** What whoever digs must be told, beside the depths; buried lines of the bay by name. */
function DigWords({ run }: DugProps) {
  const units = usePlannerState((state) => state.units)
  const services = usePlannerState((state) => state.evaluation.layout.house.services)
  const deepestMm = Math.max(run.high.digMm, run.low.digMm, ...run.pegs.map(({ digMm }) => digMm))
  const names = services.map(({ name }) => `“${name}”`).join(', ')
  return (
    <div className="pegs-cautions">
      {digCautions(deepestMm, units).map((words) => (
        <p key={words}>{words}</p>
      ))}
      {names !== '' && <p>Buried lines of this bay, to be marked first: {names}.</p>}
    </div>
  )
}

interface DrainProps {
  readonly run: DrainRun
  readonly words: Words & TrenchWords
}

function Drain({ run, words }: DrainProps) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { bay } = evaluation
  const facts = bay.builtOf.get(run.part)?.drain
  const running = bay.returns.drains.get(run.part)
  const drains = [...bay.levels.drains.keys()]
  return (
    <>
      <div className="pegs-drain">
        <PartChoice label="Drain" shown={run.part} parts={drains} words={words.name} />
        {running && (
          <StateMark word={running.state} rank={rankOf({ subject: 'drain', state: running.state })} />
        )}
      </div>
      <div className="pegs-pegs">
        {run.pegs.length > 0 ? (
          <PegTable
            title={`Pegs of ${words.name(run.part)}`}
            from={endWords(run, bay)}
            rows={pegRows(run, bay, words)}
          />
        ) : (
          <p className="water-none">This line has no pegs: give it two points apart.</p>
        )}
        <p className="water-note">
          Pegs count from the low end up. Measure the cut straight down from the peg’s top to the bottom of
          the trench, sand bed included: nothing is left to subtract. Holes are cut on the crown.
        </p>
      </div>
      <div className="pegs-side">
        {facts && <RowFigures figures={drainFigures(run, facts, running, words)} />}
        <DigWords run={run} />
      </div>
      <RowLevels words={words} />
    </>
  )
}

/** The peg table of a drain as the trench crew reads it, and the levels of the lines that fall into it. */
export default function PegsView() {
  const [evaluation, selection] = usePlannerState((state) => [state.evaluation, state.selection])
  const words = { ...useWords(evaluation.layout.parts), ...useTrenchWriter() }
  const drain = shownDrain(evaluation, selection)
  const run = drain === undefined ? undefined : evaluation.bay.levels.drains.get(drain)
  if (!run)
    return (
      <p className="water-none">
        No drain line is laid in this bay yet, so there is nothing to dig. Drag a drain line from the shelf,
        or let the warning of a row lay one under its outlets.
      </p>
    )
  return (
    <div className="pegs">
      <Drain run={run} words={words} />
    </div>
  )
}
