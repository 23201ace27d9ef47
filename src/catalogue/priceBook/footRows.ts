import type { PriceRow } from '../../model/priceRow'
import { inEverySize, rowsOn } from './placeholderRow'

const masonry = rowsOn({ group: 'lumber', supplier: 'Lumber yard', aisle: 'Blocks and pavers', leadDays: 2 })

const anchors = rowsOn({ group: 'lumber', supplier: 'Hardware store', aisle: 'Ties and straps', leadDays: 1 })

/** What risers and troughs stand on. */
export const footRows: readonly PriceRow[] = [
  masonry('foot-plate', 220),
  ...inEverySize(masonry)('foot-shim', 18),
  masonry('trough-block', 240),
  anchors('ground-anchor', 1450),
]
