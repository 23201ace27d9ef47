import type { PriceRow } from '../../model/priceRow'
import { packed, rowsOn, share } from './placeholderRow'

const hardware = rowsOn({
  group: 'fasteners',
  supplier: 'Hardware store',
  aisle: 'Screws and nails',
  leadDays: 1,
})

const ties = rowsOn({ group: 'fasteners', supplier: 'Hardware store', aisle: 'Ties and straps', leadDays: 1 })

/** Spares, common practice, no source: 5 % of screws, 10 % of ties are dropped, stripped or cut off again. */
export const fastenerRows: readonly PriceRow[] = [
  hardware('screw', 1080, {
    ...packed('box', 100),
    ...share(0.05),
    breaks: [{ from: 20, cents: 960 }],
  }),
  hardware('sleeve-screw', 480, { ...packed('box', 50), ...share(0.05) }),
  ties('row-tie', 650),
  ties('zip-tie', 300, { ...packed('bag', 100), ...share(0.1) }),
]
