import type { PriceRow } from '../../model/priceRow'
import { rowsOn } from './placeholderRow'

const plumbing = rowsOn({
  group: 'drain',
  supplier: 'Plumbing counter',
  aisle: 'Drain fittings',
  leadDays: 2,
})

/** Drilled, sawn or bent by the crew: there is nothing to buy, and it costs its time alone. */
const made = rowsOn({ group: 'drain', supplier: 'Made here', aisle: '', leadDays: 0 })

export const drainRows: readonly PriceRow[] = [
  plumbing('drop', 320),
  made('drain-hole', 0, { unit: 'hole', isTaxed: false, isReturnable: false, note: 'Drilled on site' }),
  plumbing('drain-wye', 980),
  plumbing('drain-cap', 450),
  plumbing('drain-bend', 620),
  plumbing('drain-cleanout', 1650),
]
