import type { PriceRow } from '../../model/priceRow'
import { inEverySize, packed, rowsOn, share } from './placeholderRow'

const counter = rowsOn({
  group: 'conduit',
  supplier: 'Electrical counter',
  aisle: 'Conduit fittings',
  leadDays: 1,
})

const inTrade = inEverySize(counter)

const straps = rowsOn({ group: 'conduit', supplier: 'Hardware store', aisle: 'Ties and straps', leadDays: 1 })

const coating = rowsOn({ group: 'conduit', supplier: 'Hardware store', aisle: 'Paint', leadDays: 1 })

/** Drilled by the crew: there is nothing to buy, and it costs its time alone. */
const drilled = rowsOn({ group: 'conduit', supplier: 'Made here', aisle: '', leadDays: 0 })

const hole = { unit: 'hole', isTaxed: false, isReturnable: false, note: 'Drilled on site' } as const

/** What goes on rails and hanger bars. */
export const conduitRows: readonly PriceRow[] = [
  ...inTrade('end-cap', 300, packed('bag', 10)),
  ...inTrade('bar-stop', 120, packed('bag', 10)),
  ...inTrade('rail-stop', 35),
  ...inTrade('rail-clamp', 160),
  straps('house-strap', 420),
  coating('conduit-paint', 1900, { ...packed('tin', 250), ...share(0.1) }),
  drilled('rail-hole', 0, hole),
  drilled('sleeve-hole', 0, hole),
]
