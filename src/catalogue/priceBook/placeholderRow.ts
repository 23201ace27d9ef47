import type { PriceRow } from '../../model/priceRow'
import { fittingOf, fittings } from '../fittings'

/** Whose shelf a group of things lies on: what all of its rows have in common. */
export type Shelf = Pick<PriceRow, 'group' | 'supplier' | 'aisle' | 'leadDays'>

const INVENTED = 'Placeholder, invented; put your own'

/** What a row is unless it says otherwise: sold by the piece, none to spare, invented, taxed, taken back. */
const plain = {
  unit: 'piece',
  pack: 1,
  breaks: [],
  waste: { kind: 'none' },
  isWholePack: true,
  isTaxed: true,
  isReturnable: true,
  date: '',
  note: INVENTED,
} as const satisfies Partial<PriceRow>

/** A row of a shelf; `cents` is undefined for what nobody can put even an invented price on. */
export const placeholderRow = (
  shelf: Shelf,
  row: Pick<PriceRow, 'key' | 'name' | 'spec' | 'cents'> & Partial<PriceRow>,
): PriceRow => ({ ...plain, ...shelf, ...row })

/** `Elbow` and `3/4 in poly pipe` of the title `Elbow, 3/4 in poly pipe`. */
const nameAndSpec = (title: string): Pick<PriceRow, 'name' | 'spec'> => {
  const comma = title.indexOf(', ')
  return comma < 0 ? { name: title, spec: '' } : { name: title.slice(0, comma), spec: title.slice(comma + 2) }
}

/** Rows of counted things on one shelf: `row('hook', 60, { waste: share(0.05) })`; name and spec are of the catalogue's title. */
export const rowsOn =
  (shelf: Shelf) =>
  (key: string, cents: number | undefined, more: Partial<PriceRow> = {}): PriceRow =>
    placeholderRow(shelf, { key, cents, ...nameAndSpec(fittingOf(key).title), ...more })

/** The same in every size that the catalogue has: `rowsIn(roofing)('gutter-joiner', 340)`. */
export const inEverySize =
  (row: ReturnType<typeof rowsOn>) =>
  (noun: string, cents: number | undefined, more: Partial<PriceRow> = {}): readonly PriceRow[] =>
    fittings.filter((item) => item.noun === noun).map(({ key }) => row(key, cents, more))

export const share = (of: number) => ({ waste: { kind: 'share', share: of } }) as const

export const spares = (count: number) => ({ waste: { kind: 'spares', count } }) as const

/** Sold in boxes, bags or packs of so many. */
export const packed = (unit: string, pack: number) => ({ unit, pack }) as const
