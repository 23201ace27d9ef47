import type { PriceRow } from '../../model/priceRow'
import { conduitRows } from './conduitRows'
import { drainRows } from './drainRows'
import { fastenerRows } from './fastenerRows'
import { footRows } from './footRows'
import { growingRows } from './growingRows'
import { gutterRows } from './gutterRows'
import { pitRows } from './pitRows'
import { pumpRows } from './pumpRows'
import { stockRowFor, stockRows } from './stockRows'
import { waterRows } from './waterRows'

/**
 * A row for everything that the catalogue counts or cuts. All prices are invented, to size the columns with, and say so: no date,
 * no brand, no shop that there is.
 */
export const baseBook: readonly PriceRow[] = [
  ...stockRows,
  ...growingRows,
  ...footRows,
  ...conduitRows,
  ...gutterRows,
  ...drainRows,
  ...waterRows,
  ...pumpRows,
  ...pitRows,
  ...fastenerRows,
]

const byKey = new Map(baseBook.map((row) => [row.key, row]))

/** The row that comes with the program, also for a stock in a length of the builder's own; undefined for an unknown key. */
export const baseRow = (key: string): PriceRow | undefined => byKey.get(key) ?? stockRowFor(key)
