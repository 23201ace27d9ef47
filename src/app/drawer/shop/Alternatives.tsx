import { useState } from 'react'
import { type Alternative, alternatives } from '../../../evaluate/shop/alternatives'
import { setSettings } from '../../../layout/bayEdits'
import type { Layout } from '../../../layout/schema'
import { commitEdited } from '../../../sidebar/commitEdited'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { feet, type Units } from '../../../units/length'
import { parseLength } from '../../../units/parseLength'
import { thousands } from '../../../units/thousands'
import { writeStock } from '../../../units/writeStock'
import { writerFor } from '../../../units/writer'
import { HeadRow } from '../chart/HeadRow'
import { useAnswer } from '../useAnswer'
import { priceWords } from '../../../sheets/shop/shopWords'

/** What a truck and its rack carry, until somebody measures theirs. */
const TRUCK_MM = feet(16)

/** `10 ft`, `10 or 12 ft` as far as lengths share their unit. */
const lengthsWords = (lumberMm: readonly number[], units: Units): string =>
  lumberMm.map((mm) => writeStock(mm, units)).join(', ')

interface ChoiceProps {
  readonly choice: Alternative
  readonly longestMm: number
  readonly currency: string
  readonly units: Units
}

function Choice({ choice, longestMm, currency, units }: ChoiceProps) {
  const planner = usePlanner()
  const { lumberMm, isChosen, boards, waste, cents, unmade } = choice
  const name = lengthsWords(lumberMm, units)
  const take = () =>
    commitEdited(planner, `Lumber of ${name}`, (layout) => setSettings(layout, { lumberMm: [...lumberMm] }))
  return (
    <tr className={isChosen ? 'water-chosen' : undefined} aria-current={isChosen}>
      <th scope="row">{lumberMm.length === 1 ? `All ${name}` : name}</th>
      <td>{thousands(boards)}</td>
      <td>{writerFor(units).share(waste)}</td>
      <td>{priceWords(cents, currency)}</td>
      <td>
        {unmade > 0 && `${unmade} ${unmade === 1 ? 'piece' : 'pieces'} too long`}
        {isChosen && <b>As chosen</b>}
        {lumberMm.some((mm) => mm > longestMm) && ', longer than the truck carries'}
        {unmade === 0 && !isChosen && (
          <button aria-label={`Take these lengths: ${name}`} onClick={take}>
            Take these lengths
          </button>
        )}
      </td>
    </tr>
  )
}

function Choices({ layout, longestMm }: { readonly layout: Layout; readonly longestMm: number }) {
  const units = usePlannerState((state) => state.units)
  const { answer } = useAnswer('lumber', [layout, longestMm], () => alternatives(layout, longestMm))
  if (!answer) return <p className="water-none">Planning every length …</p>
  return (
    <div className="chart-table" role="region" aria-label="Other lengths of lumber" tabIndex={0}>
      <table>
        <HeadRow columns={['From', 'Boards', 'Waste', 'Cost', '']} />
        <tbody>
          {answer.map((choice) => (
            <Choice
              key={choice.lumberMm.join(' ')}
              choice={choice}
              longestMm={longestMm}
              currency={layout.counter.currency}
              units={units}
            />
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** What the lumber would come to from other lengths that the yard has and the truck carries; found when it is asked for. */
export function Alternatives() {
  const [layout, units] = usePlannerState((state) => [state.settled.layout, state.units])
  const [longestMm, setLongestMm] = useState(TRUCK_MM)
  const [asked, setAsked] = useState<Layout>()
  const takeLength = (typed: string) => {
    const read = parseLength(typed, units)
    if (!read.ok) return read.sentence
    if (read.mm <= 0) return 'It must be longer than nothing.'
    setLongestMm(read.mm)
    return undefined
  }
  return (
    <div className="shop-lengths">
      <TypedField
        label="Longest that the truck carries"
        shown={writeStock(longestMm, units)}
        onTyped={takeLength}
      />
      {asked === layout ? (
        <Choices layout={layout} longestMm={longestMm} />
      ) : (
        <p>
          <button onClick={() => setAsked(layout)}>Compare lengths</button>
        </p>
      )}
      <p className="water-note">
        Each is the bay built anew with only these lengths on offer, cut by the first answer of the cutter:
        halved risers and runners follow the boards. Cost is with the spares and breaks of the price book.
        Leftovers on hand are used first in all of them.
      </p>
    </div>
  )
}
