import type { CountLine } from '../model/countLine'
import type { Units } from '../units/length'
import { writeCount } from '../units/writeCount'

interface CountedThingsProps {
  readonly counts: readonly CountLine[]
  readonly units: Units
}

/** What is counted and not cut, by name. The drawer's Take-off says how it is counted and where it is. */
export function CountedThings({ counts, units }: CountedThingsProps) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Thing</th>
          <th scope="col" className="cuts-number">
            Count
          </th>
        </tr>
      </thead>
      <tbody>
        {counts.map(({ item, title, count, unit }) => (
          <tr key={item}>
            <th scope="row">{title}</th>
            <td className="cuts-number">{writeCount(count, unit, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
