import type { PriceRow } from '../../model/priceRow'
import { inEverySize, rowsOn, spares } from './placeholderRow'

const roofing = rowsOn({
  group: 'gutter',
  supplier: 'Hardware store',
  aisle: 'Roof gutter',
  leadDays: 3,
})

const inSizes = inEverySize(roofing)

/** What joins, ends, empties and holds a trough; an outlet to spare, since a hole sawn askew costs one. */
export const gutterRows: readonly PriceRow[] = [
  ...inSizes('gutter-joiner', 340),
  ...inSizes('gutter-end-cap', 210),
  roofing('gutter-outlet-1/2', 310, spares(1)),
  roofing('gutter-outlet-3/4', 340, spares(1)),
  roofing('gutter-outlet-1', 390, spares(1)),
  roofing('gutter-outlet-2', 520, spares(1)),
  ...inSizes('gutter-strap', 42),
  ...inSizes('gutter-shim', 12),
]
