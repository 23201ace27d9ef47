import type { PriceRow } from '../../../model/priceRow'
import { readPrice } from '../../../layout/quoteColumns'
import { dropRow, quote } from '../../../layout/quoteEdits'
import type { OwnLayer } from '../../../layout/quoteReading'
import { commitEdited } from '../../../sidebar/commitEdited'
import { usePlanner } from '../../../store/react'
import { thingWords } from './priceWords'
import { today } from './today'

const asSentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`

/** What a person does to one row; a refusal comes back as its sentence. */
export interface PriceEdit {
  readonly change: (change: Partial<PriceRow>) => string | undefined
  /** A typed price; an empty one says that nobody sells it at a price yet. */
  readonly price: (typed: string) => string | undefined
  readonly drop: (layer: OwnLayer) => string | undefined
}

export const usePriceEdit = (row: PriceRow): PriceEdit => {
  const planner = usePlanner()
  const change = (changed: Partial<PriceRow>) =>
    commitEdited(planner, `Quote for ${thingWords(row)}`, (layout) =>
      quote(layout, row.key, changed, today()),
    )
  return {
    change,
    price: (typed) => {
      if (typed.trim() === '') return change({ cents: undefined })
      const cents = readPrice(typed)
      return typeof cents === 'number' ? change({ cents }) : asSentence(cents.fault)
    },
    drop: (layer) =>
      commitEdited(planner, `No quote for ${thingWords(row)}`, (layout) => dropRow(layout, layer, row.key)),
  }
}
