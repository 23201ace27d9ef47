import { useId, useState } from 'react'
import type { TrenchWords } from '../../../sheets/pegs/pegRows'
import { levelStack } from '../../../evaluate/levelStack'
import { rackParts } from './shownDrain'
import type { PartId } from '../../../model/ids'
import { StateMark } from '../../../sidebar/StateMark'
import { usePlannerState } from '../../../store/react'
import { PartChoice } from '../PartChoice'
import { type GapRow, gapRows } from '../../../sheets/levels/stackRows'
import { HeadRow } from '../chart/HeadRow'

interface GapsProps {
  readonly rows: readonly GapRow[]
  readonly words: TrenchWords
}

function Gaps({ rows, words: { onTape } }: GapsProps) {
  return (
    <div className="chart-table pegs-gaps" role="region" aria-label="Gaps that rules look at" tabIndex={0}>
      <table>
        <HeadRow columns={['From', 'down to', 'Gap', 'Least', 'State']} />
        <tbody>
          {rows.map(({ from, to, gapMm, leastMm, state, rank }) => (
            <tr key={`${from.name} ${to.name}`}>
              <th scope="row">{from.name}</th>
              <td>{to.name}</td>
              <td>
                <b>{onTape(gapMm)}</b>
              </td>
              <td>{leastMm === undefined ? '—' : onTape(leastMm)}</td>
              <td>
                <StateMark word={state} rank={rank} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

interface LevelsProps {
  readonly row: PartId
  readonly line: number
  readonly words: TrenchWords
}

function Levels({ row, line, words }: LevelsProps) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const outlets = evaluation.bay.builtOf.get(row)?.mouths.filter(({ role }) => role === 'trough-outlet') ?? []
  const at = (outlets.find((mouth) => mouth.line === line) ?? outlets[0])?.at
  if (!at) return <p className="water-none">{words.name(row)} has no troughs, so no water falls from it.</p>
  const stack = levelStack(evaluation, row, { at, line })
  const falling = stack.levels.toSorted((a, b) => b.levelMm - a.levelMm)
  return (
    <div className="pegs-stack">
      <div className="chart-table" role="region" aria-label={`Levels of ${stack.whose}`} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">Level of {stack.whose}</th>
              <th scope="col">At</th>
              <th scope="col">To the next</th>
            </tr>
          </thead>
          <tbody>
            {falling.map(({ name, levelMm }, index) => {
              const next = falling[index + 1]
              return (
                <tr key={`${name} ${index}`}>
                  <th scope="row">{name}</th>
                  <td>{words.level(levelMm)}</td>
                  <td>{next ? words.onTape(levelMm - next.levelMm) : ''}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
      <Gaps rows={gapRows(evaluation, stack)} words={words} />
    </div>
  )
}

/** Every level on the way of one line's water, from the bar to the bottom of the pit, and the gaps between those that count. */
export function RowLevels({ words }: { readonly words: TrenchWords }) {
  const [evaluation, selection] = usePlannerState((state) => [state.evaluation, state.selection])
  const [line, setLine] = useState(1)
  const id = useId()
  const rows = rackParts(evaluation)
  const row = selection.find((part) => rows.includes(part)) ?? rows[0]
  if (row === undefined) return null
  const lines = evaluation.bay.builtOf.get(row)?.rack?.lines ?? 1
  const shown = Math.min(line, lines)
  return (
    <section className="pegs-levels">
      <h3>Levels of a row’s lines</h3>
      <div className="pegs-choice">
        <PartChoice label="Row" shown={row} parts={rows} words={words.name} />
        <div className="water-choice">
          <label htmlFor={id}>Line</label>
          <select id={id} value={shown} onChange={(event) => setLine(Number(event.target.value))}>
            {Array.from({ length: lines }, (_, index) => (
              <option key={index} value={index + 1}>
                {index + 1}
              </option>
            ))}
          </select>
        </div>
      </div>
      <Levels row={row} line={shown} words={words} />
    </section>
  )
}
