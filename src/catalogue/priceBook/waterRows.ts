import type { PriceRow } from '../../model/priceRow'
import { polys } from '../pipe'
import { inEverySize, packed, rowsOn, share, type Shelf, spares } from './placeholderRow'

const irrigation = { supplier: 'Irrigation house', leadDays: 5 } as const
const barbed: Shelf = { ...irrigation, group: 'fittings', aisle: 'Barbed fittings' }
const fitting = rowsOn(barbed)
const valve = rowsOn({ ...irrigation, group: 'fittings', aisle: 'Valves and unions' })
const clamp = rowsOn({ ...irrigation, group: 'fittings', aisle: 'Clamps' })
const tubing = rowsOn({ ...irrigation, group: 'pipe', aisle: 'Microtube and barbs' })

/** A thing that is made in every size: what it costs in 1/2 in, cents, and the shelf and rule of its rows. */
interface Sized {
  readonly noun: string
  readonly cents: number
  readonly row: ReturnType<typeof rowsOn>
  readonly rule: Partial<PriceRow>
}

/** Spares, common practice, no source: one of every valve and union; clamps are sold in tens. */
const sized: readonly Sized[] = [
  { noun: 'elbow', cents: 35, row: fitting, rule: {} },
  { noun: 'tee', cents: 48, row: fitting, rule: {} },
  { noun: 'coupling', cents: 25, row: fitting, rule: {} },
  { noun: 'adapter', cents: 40, row: fitting, rule: {} },
  { noun: 'union', cents: 220, row: valve, rule: spares(1) },
  { noun: 'ball-valve', cents: 570, row: valve, rule: spares(1) },
  { noun: 'trim-valve', cents: 790, row: valve, rule: spares(1) },
  { noun: 'sight-tube-tee', cents: 62, row: fitting, rule: {} },
  { noun: 'lateral-flush-cap', cents: 30, row: fitting, rule: {} },
  { noun: 'lateral-flush-valve', cents: 260, row: valve, rule: spares(1) },
  { noun: 'lateral-plug', cents: 18, row: fitting, rule: {} },
  { noun: 'main-cap', cents: 30, row: fitting, rule: {} },
  { noun: 'nipple', cents: 45, row: valve, rule: {} },
  { noun: 'pipe-strap', cents: 35, row: fitting, rule: {} },
  { noun: 'clamp', cents: 180, row: clamp, rule: packed('bag', 10) },
]

/** How many times the 1/2 in price a size costs. */
const SIZE_FACTORS: Readonly<Record<string, number>> = {
  '1/2': 1,
  '3/4': 1.2,
  '1': 1.6,
  '1-1/4': 2.2,
  '1-1/2': 2.8,
  '2': 4,
}

const REDUCER_HALF_INCH_CENTS = 45

const sizeOf = (key: string): string => key.slice(key.indexOf('-') + 1)

const inSize = (cents: number, pipe: string): number => Math.round(cents * (SIZE_FACTORS[sizeOf(pipe)] ?? 1))

const clamped = polys.filter(({ family }) => family !== 'microtube')

const sizedRows = clamped.flatMap(({ key }) =>
  sized.map(({ noun, cents, row, rule }) => row(`${noun}-${key}`, inSize(cents, key), rule)),
)

/** Costs what it joins on its bigger side. */
const reducers = clamped.flatMap((big) =>
  clamped
    .filter(({ family, idMm }) => family === big.family && idMm < big.idMm)
    .map((small) =>
      fitting(
        `reducing-coupling-${big.key}-to-${sizeOf(small.key)}`,
        inSize(REDUCER_HALF_INCH_CENTS, big.key),
      ),
    ),
)

const byHand = {
  note: 'No shop sells it: put together from adapters; put in what yours costs',
} as const

/** Everything between the pump and the towers. */
export const waterRows: readonly PriceRow[] = [
  ...sizedRows,
  ...reducers,
  fitting('family-adapter', undefined, byHand),
  ...inEverySize(fitting)('saddle', 260),
  fitting('ptfe-tape', 220, { ...packed('roll', 43), ...share(0.1) }),
  tubing('sight-tube', 90),
  tubing('barb-1/8', 900, { ...packed('bag', 100), ...share(0.05) }),
  tubing('barb-1/4', 1000, { ...packed('bag', 100), ...share(0.05) }),
  // Counted as spares: 2 in 100 holes.
  tubing('goof-plug', 110, packed('bag', 25)),
]
