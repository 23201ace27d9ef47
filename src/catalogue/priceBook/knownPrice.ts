import type { KnownPrice, PriceLayer, PriceLayers, PriceRow } from '../../model/priceRow'
import { rowIn } from './stockPrices'
import { baseRow } from './baseBook'

const known = (row: PriceRow, layer: PriceLayer): KnownPrice => ({
  row,
  layer,
  isPlaceholder: row.date === '' && row.cents !== undefined && row.cents > 0,
})

/**
 * What a thing costs as the layers lie over each other: this job's quote before the supplier's book before what comes with
 * the program. The highest row holds whole, even where it has no price: someone was asked and gave no answer, and an invented
 * price underneath must not come to light for it. Undefined for a key that the catalogue does not know.
 */
export const knownPrice = (key: string, { book, quotes }: PriceLayers): KnownPrice | undefined => {
  const base = baseRow(key)
  if (!base) return undefined
  const quote = rowIn(quotes, key)
  if (quote) return known(quote, 'quote')
  const supplied = rowIn(book, key)
  return supplied ? known(supplied, 'book') : known(base, 'base')
}

/** How prices are asked for by what does not know where they lie. Undefined is no such thing, never 0. */
export type PriceOf = (key: string) => KnownPrice | undefined

/** The prices of a job with quotes and book, or, without any, those that come with the program. */
export const pricesOf =
  (layers: PriceLayers = { book: [], quotes: [] }): PriceOf =>
  (key) =>
    knownPrice(key, layers)

/** What so many pieces cost without thought of packs or breaks, to the cent; undefined without a price. */
export const centsOf = ({ row }: KnownPrice, count: number): number | undefined =>
  row.cents === undefined ? undefined : Math.round((row.cents * count) / row.pack)

/** What a length of a coil or a stick costs as a part of it, to the cent; undefined without a price, and for what has no length. */
export const centsOfLength = ({ row }: KnownPrice, lengthMm: number): number | undefined =>
  row.cents === undefined || row.stockMm === undefined
    ? undefined
    : Math.round((row.cents * lengthMm) / row.stockMm)
