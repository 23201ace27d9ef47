import { baseBook } from '../catalogue/priceBook/baseBook'
import { knownPrice } from '../catalogue/priceBook/knownPrice'
import { csvText, type Separator } from '../model/csv'
import type { KnownPrice, PriceLayer, PriceLayers } from '../model/priceRow'
import { columns } from './quoteColumns'

const isKnown = (known: KnownPrice | undefined): known is KnownPrice => known !== undefined

/** Every row as it stands: those that come with the program, then lengths of the builder's own that a layer has. */
export const wholeBook = (layers: PriceLayers): readonly KnownPrice[] => {
  const own = [...layers.book, ...layers.quotes].map(({ key }) => key)
  const keys = new Set([...baseBook.map(({ key }) => key), ...own])
  return [...keys].map((key) => knownPrice(key, layers)).filter(isKnown)
}

/** The rows of one layer as they stand in it. */
export const layerBook = (layer: PriceLayer, { book, quotes }: PriceLayers): readonly KnownPrice[] => {
  if (layer === 'base') return wholeBook({ book: [], quotes: [] })
  const only = layer === 'book' ? { book, quotes: [] } : { book: [], quotes }
  return (layer === 'book' ? book : quotes).map(({ key }) => knownPrice(key, only)).filter(isKnown)
}

/** Rows as a file, the layer of each behind it. Parted by semicolons its decimal sign is a comma. */
export const sheetText = (rows: readonly KnownPrice[], separator: Separator = ','): string => {
  const decimal = separator === ';' ? ',' : '.'
  const lines = rows.map(({ row, layer }) => [...columns.map(({ write }) => write(row, decimal)), layer])
  return csvText([[...columns.map(({ name }) => name), 'layer'], ...lines], separator)
}
