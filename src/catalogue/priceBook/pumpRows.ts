import type { PriceRow } from '../../model/priceRow'
import { inEverySize, rowsOn, spares } from './placeholderRow'

const pumps = rowsOn({ group: 'pump', supplier: 'Pump dealer', aisle: 'Pumps and filters', leadDays: 10 })

const inSizes = inEverySize(pumps)

/** A spare of every valve, common practice, no source; a second pump is the grower's own choice and asks for its own rule. */
export const pumpRows: readonly PriceRow[] = [
  ...inSizes('pump', 54_000),
  pumps('foot-strainer', 5200),
  ...inSizes('check-valve', 7800, spares(1)),
  ...inSizes('filter', 22_000),
  ...inSizes('bypass-valve', 6400, spares(1)),
  pumps('head-box', 8500),
  pumps('overflow-tee', 950),
  pumps('head-box-stand', 4200),
]
