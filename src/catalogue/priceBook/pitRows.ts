import type { PriceRow } from '../../model/priceRow'
import { inEverySize, rowsOn, spares } from './placeholderRow'

const pits = rowsOn({ group: 'pit', supplier: 'Hardware store', aisle: 'Pond and pit', leadDays: 5 })
const plumbing = inEverySize(
  rowsOn({ group: 'pit', supplier: 'Plumbing counter', aisle: 'Drain fittings', leadDays: 2 }),
)
const alarms = rowsOn({
  group: 'electrics',
  supplier: 'Pump dealer',
  aisle: 'Floats and alarms',
  leadDays: 10,
})

const bySheet = { unit: 'square foot', isWholePack: false } as const

/** What lines, covers, fills and guards a pit. A spare of every float valve: common practice, no source. */
export const pitRows: readonly PriceRow[] = [
  pits('pit-lining', 220, bySheet),
  pits('pit-lid', 480, bySheet),
  pits('pit-boot', 2400),
  ...plumbing('overflow-pipe', 2400),
  ...plumbing('overflow-screen', 1250),
  pits('make-up-valve', 2400, spares(1)),
  alarms('pump-float', 3900, spares(1)),
  alarms('alarm-float', 3900),
]
