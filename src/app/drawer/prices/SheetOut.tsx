import { useState } from 'react'
import { layerBook, sheetText, wholeBook } from '../../../layout/quoteSheet'
import type { Separator } from '../../../model/csv'
import type { PriceLayer } from '../../../model/priceRow'
import { usePlannerState } from '../../../store/react'
import { download, fileName } from '../../files/download'

type Which = PriceLayer | 'whole'

const WHICH: Readonly<Record<Which, string>> = {
  whole: 'The whole book as it stands',
  quote: 'This job’s quotes',
  book: 'The supplier’s book',
  base: 'What came with the program',
}

const isWhich = (value: string): value is Which => Object.hasOwn(WHICH, value)

/** The book, or a layer of it, as a file for a spreadsheet. */
export function SheetOut() {
  const [counter, title] = usePlannerState((state) => [
    state.evaluation.layout.counter,
    state.evaluation.layout.title,
  ])
  const [which, setWhich] = useState<Which>('whole')
  const [separator, setSeparator] = useState<Separator>(',')
  const rows = which === 'whole' ? wholeBook(counter) : layerBook(which, counter)
  const save = () =>
    download(
      new Blob([sheetText(rows, separator)], { type: 'text/csv;charset=utf-8' }),
      fileName(`${title} prices`, '.csv'),
    )
  return (
    <section className="prices-sheet">
      <h3>Export a sheet</h3>
      <p className="prices-deeds">
        <label>
          Of{' '}
          <select value={which} onChange={({ target }) => isWhich(target.value) && setWhich(target.value)}>
            {Object.entries(WHICH).map(([value, words]) => (
              <option key={value} value={value}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label>
          Written{' '}
          <select value={separator} onChange={({ target }) => setSeparator(target.value === ';' ? ';' : ',')}>
            <option value=",">a,b and 9.60</option>
            <option value=";">a;b and 9,60</option>
          </select>
        </label>
        <button disabled={rows.length === 0} onClick={save}>
          Save {rows.length === 1 ? '1 row' : `${rows.length} rows`}
        </button>
      </p>
      <p className="water-note">
        A CSV file. Cells that a spreadsheet would run as a formula have an apostrophe before them, which is
        taken off again when the file is read here.
      </p>
    </section>
  )
}
