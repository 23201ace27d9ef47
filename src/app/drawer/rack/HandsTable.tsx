import type { LineLift, RowHandling } from '../../../evaluate/handling/handling'
import { type Lifted, liftRank } from '../../../evaluate/handling/lifted'
import { StateMark } from '../../../sidebar/StateMark'
import type { Writer } from '../../../units/writer'
import '../chart/chart.css'
import { HeadRow } from '../chart/HeadRow'
import { ARM_WORDS, indexWords, multiplierRows, sideWords } from './handsWords'

interface SumsProps {
  readonly lifted: Lifted
  readonly writer: Writer
}

function Sums({ lifted, writer }: SumsProps) {
  return (
    <table className="hands-sums">
      <tbody>
        {multiplierRows(lifted, writer).map(([name, input, multiplier]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{input}</td>
            <td>{multiplier}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

const keyOf = ({ line, side }: LineLift): string => `${line} ${side}`

interface HandsTableProps {
  readonly row: RowHandling
  readonly shown: LineLift | undefined
  readonly onShow: (key: string) => void
  readonly writer: Writer
}

/** Every line from each side where a person can stand; a press on a line draws the reach for it and opens its arithmetic. */
export function HandsTable({ row, shown, onShow, writer }: HandsTableProps) {
  const { onTape } = writer
  const open = row.lines.filter(({ isOpen }) => isOpen)
  return (
    <div className="hands-lines">
      <div className="chart-table" role="region" aria-label="Each line from each side" tabIndex={0}>
        <table>
          <HeadRow columns={['Line, from', 'Reach', 'Hands at', 'Index', 'It is']} />
          <tbody>
            {open.map((lift) => (
              <tr key={keyOf(lift)} className={row.best.includes(lift) ? 'hands-best' : undefined}>
                <th scope="row">
                  <button type="button" aria-pressed={shown === lift} onClick={() => onShow(keyOf(lift))}>
                    {lift.line}, {sideWords[lift.side].toLowerCase()}
                  </button>
                </th>
                <td title={ARM_WORDS[lift.arm]}>{onTape(lift.lift.reachMm)}</td>
                <td>{onTape(lift.lift.handsMm)}</td>
                <td>{indexWords(lift)}</td>
                <td className="hands-state">
                  <StateMark word={lift.word} rank={liftRank(lift.word)} />
                </td>
              </tr>
            ))}
            {(
              [
                ['Off the cart', row.fromCart],
                ['Off the floor', row.fromFloor],
              ] as const
            ).map(([name, lifted]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{onTape(lifted.lift.reachMm)}</td>
                <td>{onTape(lifted.lift.handsMm)}</td>
                <td>{indexWords(lifted)}</td>
                <td className="hands-state">
                  <StateMark word={lifted.word} rank={liftRank(lifted.word)} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {shown && (
        <details open className="hands-arithmetic">
          <summary>
            Line {shown.line} from the {shown.side}: {ARM_WORDS[shown.arm]} comes to it
          </summary>
          <Sums lifted={shown} writer={writer} />
        </details>
      )}
    </div>
  )
}

/** The lift that a key of the table names: `2 left`. */
export const liftOf = ({ lines, worst }: RowHandling, key: string | undefined): LineLift | undefined =>
  lines.find((lift) => lift.isOpen && keyOf(lift) === key) ?? worst
