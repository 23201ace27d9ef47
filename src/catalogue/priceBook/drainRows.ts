import type { PriceRow } from '../../model/priceRow'
import { inEverySize, rowsOn } from './placeholderRow'

const plumbing = rowsOn({
  group: 'drain',
  supplier: 'Plumbing counter',
  aisle: 'Drain fittings',
  leadDays: 2,
})

const inDrains = inEverySize(plumbing)

/** Drilled, sawn or bent by the crew: there is nothing to buy, and it costs its time alone. */
const made = rowsOn({ group: 'drain', supplier: 'Made here', aisle: '', leadDays: 0 })

export const drainRows: readonly PriceRow[] = [
  plumbing('drop', 320),
  made('drain-hole', 0, { unit: 'hole', isTaxed: false, isReturnable: false, note: 'Drilled on site' }),
  ...inDrains('drain-tee', 890),
  ...inDrains('drain-wye', 980),
  ...inDrains('drain-reducer', 540),
  ...inDrains('drain-cap', 450),
  ...inDrains('drain-bend', 620),
  ...inDrains('drain-cleanout', 1650),
  made('bell-joint', 0, { unit: 'joint', isTaxed: false, isReturnable: false, note: 'Made on site' }),
]
