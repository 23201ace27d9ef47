import type { PriceRow } from '../../model/priceRow'
import { inEverySize, packed, rowsOn } from './placeholderRow'

const counter = rowsOn({
  group: 'conduit',
  supplier: 'Electrical counter',
  aisle: 'Conduit fittings',
  leadDays: 1,
})

const inTrade = inEverySize(counter)

/** Drilled by the crew: there is nothing to buy, and it costs its time alone. */
const drilled = rowsOn({ group: 'conduit', supplier: 'Made here', aisle: '', leadDays: 0 })

const hole = { unit: 'hole', isTaxed: false, isReturnable: false, note: 'Drilled on site' } as const

/** What goes on rails and hanger bars. */
export const conduitRows: readonly PriceRow[] = [
  ...inTrade('end-cap', 300, packed('bag', 10)),
  ...inTrade('bar-stop', 120, packed('bag', 10)),
  ...inTrade('rail-stop', 35),
  drilled('rail-hole', 0, hole),
  drilled('sleeve-hole', 0, hole),
]
