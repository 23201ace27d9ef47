import type { PriceLayers, PriceRow } from '../../model/priceRow'
import { rememberEach } from '../../model/remember'
import { feet } from '../../units/length'
import { stockKey } from '../stock'

/**
 * What lengths of stock cost, apart from the rest of the book: cutting asks for it on every frame of a drag, before anything else
 * of the book is wanted.
 */

/**
 * A foot, cents, of whatever length. Invented placeholders. Lumber costs alike by the foot in every length, so that a plan
 * which buys the least length is the cheapest too.
 */
const aFoot: Readonly<Record<string, number>> = {
  'lumber-1x4': 38,
  'lumber-2x3': 49,
  'lumber-2x4': 62,
  'lumber-2x6': 98,
  'lumber-4x4': 155,
  'conduit-1/2': 62,
  'conduit-3/4': 91.5,
  'conduit-1': 145,
  'conduit-1-1/4': 210,
  'gutter-5in': 125,
  'gutter-4in': 104,
  'drain-2in': 110,
  'drain-3in': 128,
  'drain-4in': 165,
  'drain-6in': 310,
  'drain-8in': 540,
  'pe-1/2': 16,
  'pe-3/4': 24,
  'pe-1': 33,
  'pe-1-1/4': 41,
  'pe-1-1/2': 49,
  'pe-2': 68,
  'drip-1/2': 14,
  'drip-3/4': 21,
  'drip-1': 30,
  'tube-1/8': 10,
  'tube-1/4': 13,
}

/** The placeholder for a length of stock as it is sold, whole cents; undefined for a stock that has none. */
export const placeholderStockCents = (stock: string, nominalMm: number): number | undefined => {
  const cents = aFoot[stock]
  return cents === undefined ? undefined : Math.round((cents * nominalMm) / feet(1))
}

/** Rows of a layer by key; of two with one key the later holds. Remembered for the very list. */
const byKey = rememberEach<readonly PriceRow[], null, ReadonlyMap<string, PriceRow>>(
  (rows) => new Map(rows.map((row) => [row.key, row])),
)

/** The row of a layer, undefined where the layer says nothing of the key. */
export const rowIn = (layer: readonly PriceRow[], key: string): PriceRow | undefined =>
  byKey(layer, null).get(key)

/**
 * What a stick or a coil of one length costs, whole cents: this job's quote, else the supplier's book, else the placeholder.
 * `nominalMm` is the length that it is sold by. Undefined where the highest of them that names it has no price. Breaks
 * are not in it.
 */
export const stockCents = (
  stock: string,
  nominalMm: number,
  { book, quotes }: PriceLayers,
): number | undefined => {
  const key = stockKey(stock, nominalMm)
  const row = rowIn(quotes, key) ?? rowIn(book, key)
  return row ? row.cents : placeholderStockCents(stock, nominalMm)
}
