import { Plus, X } from 'lucide-react'
import { type FormEvent, useId, useRef, useState } from 'react'
import { stockOf, stocks } from '../../../catalogue/stock'
import type { Leftover } from '../../../layout/bench'
import { addLeftover, removeLeftover, setLeftover } from '../../../layout/stockEdits'
import { commitEdited } from '../../../sidebar/commitEdited'
import { readCount, readLength } from '../../../sidebar/fieldText'
import { Said } from '../../../sidebar/Said'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { asTyped } from '../../../units/precision'
import { writerFor } from '../../../units/writer'
import { HeadRow } from '../chart/HeadRow'
import { useFocusKept } from '../saw/useFocusKept'

/** The title of a stock; what the catalogue does not know goes by its key. */
const titleOf = (stock: string): string =>
  stocks.some(({ key }) => key === stock) ? stockOf(stock).title : stock

interface LineProps {
  readonly leftover: Leftover
  readonly index: number
  /** Called before the line is taken away. */
  readonly onRemove: () => void
}

function Line({ leftover, index, onRemove }: LineProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const { stock, lengthMm, count } = leftover
  const length = writerFor(units, asTyped).onTape(lengthMm)
  const name = `${titleOf(stock)} of ${length}`
  const set = (changes: Partial<Leftover>) =>
    commitEdited(planner, 'Leftovers', (layout) => setLeftover(layout, index, changes))
  return (
    <tr>
      <th scope="row">{titleOf(stock)}</th>
      <td>
        <TypedField
          label={`Length of leftover ${name}`}
          isLabelHidden
          shown={length}
          onTyped={(text) => {
            const read = readLength(text, units)
            return read.ok ? set({ lengthMm: Number(read.value) }) : read.sentence
          }}
        />
      </td>
      <td>
        <TypedField
          label={`Number of leftover ${name}`}
          isLabelHidden
          shown={String(count)}
          onTyped={(text) => {
            const read = readCount(text)
            return read.ok ? set({ count: Number(read.value) }) : read.sentence
          }}
        />
      </td>
      <td>
        <button
          aria-label={`Take away leftover ${name}`}
          title="Take away"
          onClick={() => {
            onRemove()
            commitEdited(planner, 'Leftovers', (layout) => removeLeftover(layout, index))
          }}
        >
          <X size={14} aria-hidden="true" />
        </button>
      </td>
    </tr>
  )
}

/** What is typed of leftovers that are to be written down. */
const NOTHING = { length: '', count: '1' }

/** A form for what lies about: of which stock, how long, how many. */
function AddForm({ offered }: { readonly offered: readonly string[] }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const [chosen, setChosen] = useState<string>()
  const [typed, setTyped] = useState(NOTHING)
  const [refusal, setRefusal] = useState<string>()
  const id = useId()
  const stock = chosen !== undefined && offered.includes(chosen) ? chosen : (offered[0] ?? '')
  const add = (): string | undefined => {
    const length = readLength(typed.length, units)
    if (!length.ok) return length.sentence
    const count = readCount(typed.count)
    if (!count.ok) return count.sentence
    return commitEdited(planner, `Leftover of ${titleOf(stock)}`, (layout) =>
      addLeftover(layout, { stock, lengthMm: Number(length.value), count: Number(count.value) }),
    )
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const sentence = add()
    setRefusal(sentence)
    if (sentence !== undefined) return
    planner.say(`Leftover of ${titleOf(stock)} written down.`)
    setTyped(NOTHING)
  }
  return (
    <form className="stock-add" onSubmit={submit} aria-label="Write down a leftover" noValidate>
      <label htmlFor={`${id}-of`}>Of</label>
      <select id={`${id}-of`} value={stock} onChange={(event) => setChosen(event.target.value)}>
        {offered.map((key) => (
          <option key={key} value={key}>
            {titleOf(key)}
          </option>
        ))}
      </select>
      <label htmlFor={`${id}-long`}>Length</label>
      <input
        id={`${id}-long`}
        value={typed.length}
        autoComplete="off"
        aria-describedby={`${id}-said`}
        aria-invalid={refusal !== undefined}
        onChange={(event) => setTyped({ ...typed, length: event.target.value })}
      />
      <label htmlFor={`${id}-many`}>How many</label>
      <input
        id={`${id}-many`}
        value={typed.count}
        autoComplete="off"
        inputMode="numeric"
        aria-describedby={`${id}-said`}
        onChange={(event) => setTyped({ ...typed, count: event.target.value })}
      />
      <button type="submit">
        <Plus size={14} aria-hidden="true" /> Write down
      </button>
      <p id={`${id}-said`} className="field-refused" role={refusal && 'alert'}>
        {refusal && <Said words={refusal} />}
      </p>
    </form>
  )
}

/** Boards, sticks and offcuts that lie about and cost nothing: plans use them up before anything is bought. */
export function Leftovers() {
  const box = useRef<HTMLDivElement>(null)
  const keepFocus = useFocusKept(box)
  const [leftovers, cuts] = usePlannerState((state) => [
    state.evaluation.layout.bench.leftovers,
    state.evaluation.cuts,
  ])
  const offered = cuts.length > 0 ? cuts.map(({ stock }) => stock) : ['lumber-2x4']
  return (
    <div className="stock-part" ref={box} tabIndex={-1}>
      {leftovers.length > 0 && (
        <div className="chart-table stock-leftovers" role="region" aria-label="Leftovers" tabIndex={0}>
          <table>
            <HeadRow columns={['Material', 'Length', 'How many', '']} />
            <tbody>
              {leftovers.map((leftover, index) => (
                // A line has no name but its place; what it holds may stand twice.
                <Line key={index} leftover={leftover} index={index} onRemove={keepFocus} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <AddForm offered={offered} />
    </div>
  )
}
