import { conduitsUsed } from '../../../../evaluate/loads/conduitUsed'
import type { Settings } from '../../../../layout/settings'
import type { StockMeasures } from '../../../../model/measuredStock'
import type { RailLine } from '../../../../model/strength'
import { Fold } from '../../../../sidebar/Fold'
import { StateMark } from '../../../../sidebar/StateMark'
import type { Writer } from '../../../../units/writer'
import { ChartTable } from '../../chart/ChartTable'
import { HeadRow } from '../../chart/HeadRow'
import { strengthRank } from '../shownRack'
import {
  alikeRows,
  governing,
  type NamedSpan,
  reactionCells,
  reactionColumns,
  type RestsOn,
  runsWords,
  spanCells,
  spanColumns,
} from './railWords'
import { evenLoad, spacingColumns, spacingRows } from './spacing'

interface RailTableProps {
  readonly line: RailLine
  readonly settings: Settings
  readonly write: Writer
}

/** Spans of a rail, those that are alike in one line; the one that governs is marked. */
export function SpanTable({
  line,
  named,
  settings,
  write,
}: RailTableProps & { readonly named: readonly NamedSpan[] }) {
  const worst = governing(line)?.name
  const rows = alikeRows(
    named,
    ({ name }) => name,
    (span) => [...spanCells(span, settings, write), span.span.state],
  )
  return (
    <div className="chart-table" role="region" aria-label="Spans" tabIndex={0}>
      <table>
        <HeadRow columns={spanColumns} />
        <tbody>
          {rows.map(({ names, first, cells }) => (
            <tr
              key={names[0]}
              className={worst !== undefined && names.includes(worst) ? 'rail-governs' : undefined}
            >
              <th scope="row">{runsWords(names)}</th>
              {cells.slice(0, -1).map((cell, column) => (
                <td key={column}>{cell}</td>
              ))}
              <td>
                <StateMark word={first.span.state} rank={strengthRank(first.span.state)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** What each riser, or strap, carries off this rail. */
export function ReactionTable({ line, write, restsOn }: RailTableProps & { readonly restsOn: RestsOn }) {
  const numbered = line.reactions.map((reaction, index) => ({ reaction, name: String(index + 1) }))
  const rows = alikeRows(
    numbered,
    ({ name }) => name,
    ({ reaction }) => reactionCells(reaction, write),
  )
  return (
    <ChartTable
      title={`What each ${restsOn} carries`}
      table={{
        columns: reactionColumns(restsOn),
        rows: rows.map(({ names, first, cells }) => [
          runsWords(names),
          names.length > 1 ? '' : write.length(first.reaction.u),
          ...cells,
        ]),
      }}
    />
  )
}

/** How far apart risers may stand for what hangs on this rail. */
export function SpacingFold({
  line,
  settings,
  write,
  measured,
}: RailTableProps & { readonly measured: readonly StockMeasures[] }) {
  const hung = evenLoad(line)
  if (hung === undefined) return null
  return (
    <Fold title={<h3>Longest riser spacing for this load</h3>}>
      <ChartTable
        title="Longest riser spacing"
        table={{
          columns: spacingColumns,
          rows: spacingRows(hung, conduitsUsed(measured), settings, write),
        }}
      />
      <p className="water-note">
        Each span by itself, what hangs on it spread evenly. Hangers hang where they hang, and the spans above
        count each of them: they have the last word. A screening, not a rating.
      </p>
    </Fold>
  )
}
