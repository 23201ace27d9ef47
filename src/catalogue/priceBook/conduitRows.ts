import type { PriceRow } from '../../model/priceRow'
import { packed, rowsOn } from './placeholderRow'

const counter = rowsOn({
  group: 'conduit',
  supplier: 'Electrical counter',
  aisle: 'Conduit fittings',
  leadDays: 1,
})

/** What goes on rails and hanger bars. */
export const conduitRows: readonly PriceRow[] = [
  counter('end-cap', 300, packed('bag', 10)),
  counter('bar-stop', 120, packed('bag', 10)),
  counter('rail-stop', 35),
]
