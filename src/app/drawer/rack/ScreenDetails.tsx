import type { Words } from '../../../checks/context'
import { lengthOf } from '../../../checks/found'
import { quantityWords } from '../../../checks/measuredWords'
import { pitsBeside } from '../../../evaluate/loads/pitBeside'
import type { PartId } from '../../../model/ids'
import type { Screen } from '../../../model/strength'
import { type Basis, strengthBasis } from '../../../model/strengthBasis'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import '../../../sidebar/warnings.css'
import { usePlannerState } from '../../../store/react'
import './screenDetails.css'
import { loadWords, usedWords } from './screenWords'
import { strengthRank } from './shownRack'

/** Pits that bear feet of the row with their walls: which pit, which foot, how far and how deep. */
const usePits = (row: PartId, words: Words) => {
  const bay = usePlannerState((state) => state.evaluation.bay)
  return pitsBeside(bay, row).flatMap(({ pit, gapMm, deepMm, footU, footV }) => [
    {
      name: `${words.name(pit)} is dug beside the ${footV < 0 ? 'left' : 'right'} foot at ${words.length(footU)} along the row, clear of it by`,
      quantity: lengthOf(gapMm),
    },
    {
      name: `${words.name(pit)} is deeper than that, so its wall bears the foot`,
      quantity: lengthOf(deepMm),
    },
  ])
}

function Sum({ screen, row, words }: ScreenDetailsProps) {
  const pits = usePits(row, words)
  const rows = [
    ...screen.terms,
    ...(screen.id === 'ground-bearing' ? pits : []),
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
  readonly row: PartId
  readonly words: Words
}

/** What a screen of a member stands on: its numbers in the order of the sum by hand, then formula, limit, source and assumptions. */
export function ScreenDetails({ screen, row, words }: ScreenDetailsProps) {
  return (
    <div className="arithmetic screen-details">
      <p>
        <StateMark word={screen.state} rank={strengthRank(screen.state)} /> {usedWords(screen.used)},{' '}
        {loadWords[screen.under]}
      </p>
      <Sum screen={screen} row={row} words={words} />
      <BasisWords basis={strengthBasis[screen.id]} />
      <p className="screen-not-rating">A screening, not a rating.</p>
    </div>
  )
}
