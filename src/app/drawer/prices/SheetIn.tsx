import { useMemo, useRef, useState } from 'react'
import { clearLayer, takeReading } from '../../../layout/quoteEdits'
import {
  type BookReading,
  type OwnLayer,
  type PriceChange,
  readBook,
  type SheetLine,
} from '../../../layout/quoteReading'
import { commitEdited } from '../../../sidebar/commitEdited'
import { usePlanner, usePlannerState } from '../../../store/react'
import { chooseFile } from '../../files/layoutFiles'
import { HeadRow } from '../chart/HeadRow'
import { changedWords, layerNames, priceWords, readingNotes, readingSentence, thingWords } from './priceWords'
import { LARGEST_BYTES, sheetLines, textOf } from './sheetLines'
import { today } from './today'

/** A file that was read, before anything of it is taken. */
interface Sheet {
  readonly name: string
  readonly lines: readonly SheetLine[]
}

const UNTOUCHED = 'No price was changed.'

const readSheet = async (file: File): Promise<Sheet | { readonly fault: string }> => {
  if (file.size > LARGEST_BYTES)
    return {
      fault: `“${file.name}” has ${Math.ceil(file.size / 1e6)} MB, and a price book at most ${LARGEST_BYTES / 1e6}, so it was not read. ${UNTOUCHED}`,
    }
  try {
    return { name: file.name, lines: await sheetLines(textOf(await file.arrayBuffer())) }
  } catch {
    return { fault: `“${file.name}” could not be read from the device. ${UNTOUCHED}` }
  }
}

function Changes({
  changes,
  currency,
}: {
  readonly changes: readonly PriceChange[]
  readonly currency: string
}) {
  return (
    <div className="chart-table" role="region" aria-label="What the file would change" tabIndex={0}>
      <table>
        <HeadRow columns={['Thing', 'Now', 'Then', 'What else']} />
        <tbody>
          {changes.map(({ before, after }) => (
            <tr key={after.key}>
              <th scope="row">{thingWords(after)}</th>
              <td>{priceWords(before, currency)}</td>
              <td>{priceWords(after, currency)}</td>
              <td>{changedWords(before, after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

interface PreviewProps {
  readonly name: string
  readonly reading: BookReading
  readonly onDone: () => void
}

/** What a file would do: nothing is taken before the person has seen it. */
function Preview({ name, reading, onDone }: PreviewProps) {
  const planner = usePlanner()
  const currency = usePlannerState((state) => state.evaluation.layout.counter.currency)
  const [refusal, setRefusal] = useState<string>()
  const { added, changed, refused } = reading
  const changes = [...changed, ...added]
  const take = () => {
    const sentence = commitEdited(planner, `Prices from ${name}`, (layout) => takeReading(layout, reading))
    setRefusal(sentence)
    if (sentence === undefined) onDone()
  }
  return (
    <div className="prices-preview">
      <p role="status">
        <b>{name}</b>: {readingSentence(reading)}
      </p>
      {readingNotes(reading).map((note) => (
        <p key={note}>{note}</p>
      ))}
      {changes.length > 0 && <Changes changes={changes} currency={currency} />}
      {refused.length > 0 && (
        <ul className="prices-refused" aria-label="Lines left out">
          {refused.map(({ line, why }) => (
            <li key={line}>
              Line {line}: {why}
            </li>
          ))}
        </ul>
      )}
      {refusal !== undefined && <p role="alert">{refusal}</p>}
      <p className="prices-deeds">
        <button disabled={changes.length === 0} onClick={take}>
          Take {changes.length === 1 ? '1 row' : `${changes.length} rows`}
        </button>
        <button onClick={onDone}>Leave it</button>
      </p>
    </div>
  )
}

/** A sheet of prices from the device: into which layer it goes, and what it would change. */
export function SheetIn() {
  const planner = usePlanner()
  const counter = usePlannerState((state) => state.evaluation.layout.counter)
  const [layer, setLayer] = useState<OwnLayer>('book')
  const [sheet, setSheet] = useState<Sheet | { readonly fault: string }>()
  const button = useRef<HTMLButtonElement>(null)
  const reading = useMemo(() => {
    if (!sheet) return undefined
    return 'fault' in sheet ? sheet : readBook(sheet.lines, { layer, layers: counter, today: today() })
  }, [sheet, layer, counter])
  const choose = async () => {
    const file = await chooseFile('.csv,.txt,text/csv')
    if (file) setSheet(await readSheet(file))
  }
  const empty = () => {
    // The button goes with the rows, and the focus must not.
    button.current?.focus()
    commitEdited(planner, `Empty ${layerNames[layer]}`, (layout) => clearLayer(layout, layer))
  }
  const finish = () => {
    setSheet(undefined)
    button.current?.focus()
  }
  return (
    <section className="prices-sheet">
      <h3>Import a sheet</h3>
      <p className="prices-deeds">
        <label>
          Into{' '}
          <select
            value={layer}
            onChange={({ target }) => setLayer(target.value === 'book' ? 'book' : 'quotes')}
          >
            <option value="book">the supplier’s book</option>
            <option value="quotes">this job’s quotes</option>
          </select>
        </label>
        <button ref={button} onClick={() => void choose()}>
          Choose a file …
        </button>
        {counter[layer].length > 0 && <button onClick={empty}>Empty {layerNames[layer]}</button>}
      </p>
      <p className="water-note">
        A CSV file with a column “key” and any of the others, parted by commas, semicolons or tabs; prices
        with a point or a comma; up to {LARGEST_BYTES / 1e6} MB. An empty price means asked, and no answer.
      </p>
      {reading && 'fault' in reading && <p role="alert">{reading.fault}</p>}
      {sheet && 'name' in sheet && reading && !('fault' in reading) && (
        <Preview name={sheet.name} reading={reading} onDone={finish} />
      )}
    </section>
  )
}
