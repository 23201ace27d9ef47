import type { CutOfStock, LineState } from '../../../evaluate/sawn/whatsCut'
import { hasMark, memberName } from '../../../sidebar/memberNames'
import { isCoil, lengthWriter } from '../../../sheets/cutWords'
import { lackWords } from '../../../sheets/saw/boardSaid'
import { Said } from '../../../sidebar/Said'
import type { CutList } from '../../../model/cutList'
import { canKeepRule } from '../../../solvers/cutting/problem'
import { fromTicks, type Units } from '../../../units/length'
import '../chart/chart.css'
import { HeadRow } from '../chart/HeadRow'
import { CutSoFar } from './CutSoFar'
import type { Sawing } from './sawDeeds'
import { minusWords, sawnHow } from '../../../sheets/saw/sawWords'

interface StopTableProps {
  readonly list: CutList
  readonly cut: CutOfStock
  readonly sawing: Sawing
  readonly units: Units
}

function Members({ marks }: { readonly marks: readonly string[] }) {
  return (
    <ul className="saw-members">
      {marks.map((mark) => (
        <li key={mark}>
          {hasMark(mark) && <b>{mark}</b>} {memberName(mark)}
        </li>
      ))}
    </ul>
  )
}

function StopRow({ state, list, cut, sawing, units }: StopTableProps & { readonly state: LineState }) {
  const { line, right } = state
  const { stock, problem } = list
  const stop = lengthWriter(stock, units)(fromTicks(line.lengthTicks))
  const asked = problem.pieces.find(
    ({ lengthTicks, rule }) => lengthTicks === line.lengthTicks && rule.kind === line.cut.kind,
  )
  const keepsRule = asked === undefined || canKeepRule(asked, problem)
  const lack = lackWords(state, list)
  const shorter = minusWords(line, units)
  return (
    <tr className={right >= line.count ? 'saw-done' : undefined}>
      <th scope="row">{stop}</th>
      <td>{line.count}</td>
      <td>
        <CutSoFar state={state} cut={cut} sawing={sawing} stop={stop} />
      </td>
      <td>
        <Members marks={line.marks} />
        <p className="saw-how">
          <Said words={sawnHow(line, stock, { keepsRule, saw: problem.saw }, units)} />
          {line.cut.kind === 'exact' && shorter !== '' && (
            <>
              , <Said words={shorter} />
            </>
          )}
          .{lack !== '' && <strong className="saw-lack"> No board makes it: {lack}.</strong>}
        </p>
      </td>
    </tr>
  )
}

/** One row a stop setting, longest first. How many are cut can be written in, wherever they came from. */
export function StopTable(props: StopTableProps) {
  const { list, cut } = props
  return (
    <div
      className="chart-table saw-stops"
      role="region"
      aria-label={`Stop settings, ${list.title}`}
      tabIndex={0}
    >
      <table>
        <HeadRow
          columns={[
            isCoil(list.stock) ? 'Length' : 'Stop',
            'Pieces',
            'Cut so far',
            'Members, and how they are cut',
          ]}
        />
        <tbody>
          {cut.lines.map((state) => (
            <StopRow
              key={`${state.line.lengthTicks} ${JSON.stringify(state.line.cut)}`}
              state={state}
              {...props}
            />
          ))}
        </tbody>
      </table>
    </div>
  )
}
