import { wantedOf } from '../../../evaluate/shop/wanted'
import { wholeBook } from '../../../layout/quoteSheet'
import type { CountLine } from '../../../model/countLine'
import type { CutList } from '../../../model/cutList'
import { type KnownPrice, type PriceGroup, priceGroups, type PriceLayers } from '../../../model/priceRow'
import { isStale } from '../../../model/quoteDate'

/** A row of the price book as the view shows it. */
export interface BookLine extends KnownPrice {
  /** The bay as drawn has it in it. */
  readonly isNeeded: boolean
  readonly isStale: boolean
}

/** Keys of all that the bay as drawn buys, what is bought and sawn already with it. */
export const neededKeys = (cuts: readonly CutList[], counts: readonly CountLine[]): ReadonlySet<string> =>
  new Set(wantedOf(cuts, counts, 'counted').map(({ key }) => key))

/** Every row as it stands on a day. */
export const bookLines = (
  layers: PriceLayers,
  needed: ReadonlySet<string>,
  today: string,
): readonly BookLine[] =>
  wholeBook(layers).map((known) => ({
    ...known,
    isNeeded: needed.has(known.row.key),
    isStale: isStale(known.row, today),
  }))

/** What a row may want of its reader. */
export type Flaw = 'unpriced' | 'placeholder' | 'stale'

export const hasFlaw = ({ row, isPlaceholder, isStale: isOld }: BookLine, flaw: Flaw): boolean => {
  if (flaw === 'unpriced') return row.cents === undefined
  return flaw === 'placeholder' ? isPlaceholder : isOld
}

/** What of the book is looked at. */
export interface Sought {
  readonly isBayOnly: boolean
  readonly flaw: Flaw | undefined
  readonly words: string
}

const isFound = ({ row }: BookLine, words: string): boolean => {
  const text = [row.name, row.spec, row.supplier, row.aisle, row.group, row.key].join(' ').toLowerCase()
  return words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}

export interface BookSection {
  readonly group: PriceGroup
  readonly lines: readonly BookLine[]
}

/** The rows sought, group by group in the order of the book; groups without any are left out. */
export const sectionsOf = (
  lines: readonly BookLine[],
  { isBayOnly, flaw, words }: Sought,
): readonly BookSection[] => {
  const found = lines.filter(
    (line) =>
      (line.isNeeded || !isBayOnly) && (flaw === undefined || hasFlaw(line, flaw)) && isFound(line, words),
  )
  return priceGroups
    .map((group) => ({ group, lines: found.filter(({ row }) => row.group === group) }))
    .filter((section) => section.lines.length > 0)
}
