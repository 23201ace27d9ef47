import { knownPrice } from '../catalogue/priceBook/knownPrice'
import { rowIn } from '../catalogue/priceBook/stockPrices'
import type { PriceRow } from '../model/priceRow'
import { setCounter } from './bayEdits'
import { done, refusal, type Edited } from './edited'
import type { BookReading, OwnLayer } from './quoteReading'
import type { Layout } from './schema'

/** Edits of the price book: this job's quotes one by one, and a file into a layer. */

/** The layer with rows put in, each in the place of the one with its key or at the end. */
const withRows = (layer: readonly PriceRow[], rows: readonly PriceRow[]): PriceRow[] => {
  const byKey = new Map(layer.map((row) => [row.key, row]))
  for (const row of rows) byKey.set(row.key, row)
  return [...byKey.values()]
}

/** The schema's lists can be written to, the rows that are handed round can't. */
const asKept = (rows: readonly PriceRow[]) =>
  rows.map(({ breaks, ...row }) => ({ ...row, breaks: breaks.map((each) => ({ ...each })) }))

const setLayer = (layout: Layout, layer: OwnLayer, rows: readonly PriceRow[]): Edited =>
  setCounter(layout, layer === 'book' ? { book: asKept(rows) } : { quotes: asKept(rows) })

/**
 * A quote of this job: what stands, with what is known better now. A price is dated, `cents: undefined` is asked and no answer;
 * a shelf or a rule of spares is not, so that it makes no invented price a quote. Refused for a key that the catalogue does
 * not know.
 */
export const quote = (layout: Layout, key: string, change: Partial<PriceRow>, today: string): Edited => {
  const known = knownPrice(key, layout.counter)
  if (!known) return refusal(`nothing has the key “${key}”`)
  const date = 'cents' in change || 'breaks' in change ? today : known.row.date
  const row = { ...known.row, ...change, key, date }
  return setLayer(layout, 'quotes', withRows(layout.counter.quotes, [row]))
}

/** Takes a row out of a layer, so that the price beneath holds again. */
export const dropRow = (layout: Layout, layer: OwnLayer, key: string): Edited => {
  const rows = layout.counter[layer]
  return rowIn(rows, key)
    ? setLayer(
        layout,
        layer,
        rows.filter((row) => row.key !== key),
      )
    : done(layout)
}

/** Empties a layer. */
export const clearLayer = (layout: Layout, layer: OwnLayer): Edited => setLayer(layout, layer, [])

/** Takes what a file said into its layer, all of it in one. */
export const takeReading = (layout: Layout, { layer, added, changed }: BookReading): Edited =>
  setLayer(
    layout,
    layer,
    withRows(
      layout.counter[layer],
      [...changed, ...added].map(({ after }) => after),
    ),
  )
