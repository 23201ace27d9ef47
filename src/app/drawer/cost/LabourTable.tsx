import { labourNormOf } from '../../../catalogue/labour'
import { COMMON_PRACTICE } from '../../../catalogue/lookup'
import type { Labour, LabourLine } from '../../../model/shop'
import { mostOf } from '../../../layout/counter'
import { commitEdited } from '../../../sidebar/commitEdited'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner } from '../../../store/react'
import type { Units } from '../../../units/length'
import { parseMinutes } from '../../../units/parseWater'
import { HeadRow } from '../chart/HeadRow'
import { countWords, hourWords, unitWords } from './labourWords'
import { setNorm } from './normEdit'

function Task({ line, units }: { readonly line: LabourLine; readonly units: Units }) {
  const planner = usePlanner()
  const { task, title, minutesEach, count, hours } = line
  const { minutes, source } = labourNormOf(task)
  const set = (own: number | undefined) =>
    commitEdited(planner, `Minutes: ${title}`, (layout) => setNorm(layout, task, own))
  const take = (typed: string) => {
    if (typed.trim() === '') return set(undefined)
    const read = parseMinutes(typed)
    if (!read.ok) return read.sentence
    return read.value >= 0 && read.value <= mostOf.minutes
      ? set(read.value)
      : `It can be 0 to ${mostOf.minutes} min.`
  }
  return (
    <tr>
      <th scope="row">
        {title}
        {source !== COMMON_PRACTICE && <small>, {source}</small>}
      </th>
      <td>{countWords(count)}</td>
      <td>{unitWords(line, units)}</td>
      <td>
        <TypedField
          label={`Minutes: ${title}`}
          isLabelHidden
          shown={String(minutesEach)}
          help={minutesEach === minutes ? undefined : `Norm ${minutes}`}
          onTyped={take}
        />
      </td>
      <td>{hourWords(hours)}</td>
    </tr>
  )
}

const COLUMNS = ['Task', 'How often', 'Of', 'Minutes each', 'Hours'] as const

/** The work of the bay, task by task, each by a norm that the crew can put its own minutes in place of. */
export function LabourTable({ labour, units }: { readonly labour: Labour; readonly units: Units }) {
  return (
    <div className="chart-table labour-table" role="region" aria-label="Hours by task" tabIndex={0}>
      <table>
        <HeadRow columns={COLUMNS} />
        <tbody>
          {labour.lines.map((line) => (
            <Task key={line.task} line={line} units={units} />
          ))}
        </tbody>
      </table>
    </div>
  )
}
