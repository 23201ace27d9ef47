import type { PriceRow } from '../../model/priceRow'
import { packed, rowsOn, share } from './placeholderRow'

const growing = rowsOn({
  group: 'growing',
  supplier: 'Tower maker',
  aisle: 'Towers',
  leadDays: 21,
})

const ties = rowsOn({ group: 'fasteners', supplier: 'Hardware store', aisle: 'Ties and straps', leadDays: 1 })

/** Towers are made or bought in ways so different that even an invented price would mislead: they have none until it is put in. */
const ASK = 'No price until you put in your own'

/** What hangs from the bars. */
export const growingRows: readonly PriceRow[] = [
  growing('tower', undefined, { note: ASK }),
  growing('hook', undefined, { note: ASK }),
  ties('hook-tie', 340, { ...packed('bag', 100), ...share(0.05) }),
]
