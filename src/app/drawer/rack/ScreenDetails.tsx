import { quantityWords } from '../../../checks/measuredWords'
import type { Screen } from '../../../model/strength'
import { type Basis, strengthBasis } from '../../../model/strengthBasis'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import '../../../sidebar/warnings.css'
import type { Writer } from '../../../units/writer'
import './screenDetails.css'
import { loadWords, usedWords } from './screenWords'
import { strengthRank } from './shownRack'

function Sum({ screen, words }: ScreenDetailsProps) {
  const rows = [
    ...screen.terms,
    { name: 'Found', quantity: screen.measured },
    { name: 'Allowed', quantity: screen.limit },
  ]
  return (
    <table>
      <tbody>
        {rows.map(({ name, quantity }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{quantityWords(quantity, words)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What a screen, or the stance of a row, rests on: formula, limit, source, assumptions. */
export function BasisWords({ basis }: { readonly basis: Basis }) {
  return (
    <dl>
      <dt>Formula</dt>
      <dd>
        <Said words={basis.formula} />
      </dd>
      <dt>Limit</dt>
      <dd>
        <Said words={basis.limit} />
      </dd>
      <dt>Source</dt>
      <dd>{basis.source}</dd>
      <dt>Assumed</dt>
      {basis.assumptions.map((assumption) => (
        <dd key={assumption}>
          <Said words={assumption} />
        </dd>
      ))}
    </dl>
  )
}

interface ScreenDetailsProps {
  readonly screen: Screen
  readonly words: Writer
}

/** What a screen of a member stands on: its numbers in the order of the sum by hand, then formula, limit, source and assumptions. */
export function ScreenDetails({ screen, words }: ScreenDetailsProps) {
  return (
    <div className="arithmetic screen-details">
      <p>
        <StateMark word={screen.state} rank={strengthRank(screen.state)} /> {usedWords(screen.used)},{' '}
        {loadWords[screen.under]}
      </p>
      <Sum screen={screen} words={words} />
      <BasisWords basis={strengthBasis[screen.id]} />
      <p className="screen-not-rating">A screening, not a rating.</p>
    </div>
  )
}
