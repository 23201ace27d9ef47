import type { Words } from '../../../checks/context'
import { rankOf } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import type { PitStop } from '../../../model/stopRun'
import { StateMark } from '../../../sidebar/StateMark'
import type { Writer } from '../../../units/writer'
import type { StopAnswer } from './stopAnswer'

interface CellsProps {
  readonly pit: PitStop | undefined
  readonly words: Words
  readonly level: Writer['level']
}

/** Where one pit ends, what spills, and its state. */
function Cells({ pit, words, level }: CellsProps) {
  if (!pit) return <td colSpan={3}>—</td>
  const spiltL = pit.overflowL + pit.overRimL
  return (
    <>
      <td>{level(pit.endMm)}</td>
      <td>{spiltL > 0.05 ? words.volume(spiltL) : 'none'}</td>
      <td>
        <StateMark word={pit.state} rank={rankOf({ subject: 'pit', state: pit.state })} />
      </td>
    </>
  )
}

const spilt = (name: string) => [`Ends, ${name}`, 'Spills', 'State']

interface PitChoiceTableProps {
  readonly answer: StopAnswer
  readonly words: Words
  readonly level: Writer['level']
}

/** Every pit with and without check valves, side by side. */
export function PitChoiceTable({ answer: { withValve, without }, words, level }: PitChoiceTableProps) {
  const parts: readonly PartId[] = [...withValve.stop.pits.keys()]
  return (
    <div className="chart-table" role="region" aria-label="With and without a check valve" tabIndex={0}>
      <table>
        <thead>
          <tr>
            {['Pit', ...spilt('with'), ...spilt('without')].map((column, i) => (
              <th key={i} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => (
            <tr key={part}>
              <th scope="row">{words.name(part)}</th>
              <Cells pit={withValve.stop.pits.get(part)} words={words} level={level} />
              <Cells pit={without.stop.pits.get(part)} words={words} level={level} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
