import type { Rule } from '../checks/context'
import { quantityWords } from '../checks/measuredWords'
import type { Finding } from '../model/finding'
import type { Writer } from '../units/writer'

interface ArithmeticProps {
  readonly rule: Rule
  readonly finding: Finding
  readonly words: Writer
}

/** What a verdict stands on: the numbers that went in, the limit, where the limit comes from. */
export function Arithmetic({ rule, finding, words }: ArithmeticProps) {
  return (
    <div className="arithmetic">
      <table>
        <tbody>
          {finding.terms.map(({ name, quantity }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{quantityWords(quantity, words)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Measured</th>
            <td>{quantityWords(finding.measured, words)}</td>
          </tr>
          <tr>
            <th scope="row">Limit here</th>
            <td>{quantityWords(finding.limit, words)}</td>
          </tr>
        </tbody>
      </table>
      <dl>
        <dt>Rule</dt>
        <dd>{rule.limit}</dd>
        <dt>Source</dt>
        <dd>{rule.source}</dd>
        <dt>How it is usually mended</dt>
        <dd>{rule.mending}</dd>
      </dl>
    </div>
  )
}
