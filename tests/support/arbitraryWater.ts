import fc from 'fast-check'
import type { Layout } from '../../src/layout/schema'
import { inches, onTick } from '../../src/units/length'
import { gph } from '../../src/units/flow'
import { bay } from './bay'

/** Bays whose water runs: a pit with pumps, a main past the starts of some rows, and every way to feed them ill. */

const inch = (min: number, max: number) => fc.integer({ min, max })

const row = fc.record({
  racks: inch(1, 3),
  barsPerRack: inch(4, 8),
  lines: inch(1, 4),
  feed: fc.constantFrom<('straight' | 'centre-split' | 'double-split' | 'ring')[]>(
    'straight',
    'straight',
    'centre-split',
    'double-split',
    'ring',
  ),
  laterals: inch(1, 4),
  lateral: fc.constantFrom<('pe-1/2' | 'pe-3/4' | 'pe-1' | 'drip-3/4')[]>(
    'pe-1/2',
    'pe-3/4',
    'pe-1',
    'drip-3/4',
  ),
  header: fc.constantFrom<('next-up' | 'pe-3/4' | 'drip-1')[]>('next-up', 'next-up', 'pe-3/4', 'drip-1'),
  lateralAt: fc.constantFrom<('above-bars' | 'under-rail')[]>('above-bars', 'above-bars', 'under-rail'),
  lateralSag: fc.constantFrom(0, 1 / 8, 1 / 8, 1),
  lateralRise: fc.constantFrom(0, 0, 0, 1, -1),
  microtube: fc.constantFrom<('tube-1/8' | 'tube-1/4')[]>('tube-1/8', 'tube-1/8', 'tube-1/4'),
  tubeMm: fc.constantFrom(18, 36, 36, 60).map(inches),
  flushEnd: fc.constantFrom<('cap' | 'valve' | 'none')[]>('cap', 'cap', 'valve', 'none'),
  sightTube: fc.constantFrom(true, true, true, false),
  valveSet: fc.constantFrom<('own' | 'shared')[]>('own', 'own', 'own', 'shared'),
  valve: fc.constantFrom<('open' | 'shut')[]>('open', 'open', 'open', 'open', 'shut'),
  trimTurns: fc.constantFrom(null, null, null, 1 / 2, 1, 2),
})

const pit = fc.record({
  pumps: inch(1, 2),
  pump: fc.constantFrom<('small' | 'middle' | 'large')[]>('small', 'small', 'middle', 'large'),
  discharge: fc.constantFrom<('pe-1' | 'pe-2')[]>('pe-1', 'pe-2'),
  running: fc.constantFrom(-22.5, -22.5, -26),
  lift: fc.constantFrom(0, 0, 0, -140),
})

const main = fc.record({
  pipe: fc.constantFrom<('pe-1' | 'pe-1-1/2' | 'pe-2')[]>('pe-1', 'pe-1-1/2', 'pe-2'),
  height: fc.constantFrom(4, 84),
  /** How far short of the pump it begins. */
  short: fc.constantFrom(0, 0, 0, 0, 200),
})

const settings = fc.record({
  targetLph: fc.constantFrom(1, 2, 4, 4, 5, 8).map(gph),
  waterC: fc.constantFrom(8, 20, 30),
  datum: fc.constantFrom<('bay' | 'row' | 'grade')[]>('bay', 'row', 'grade'),
})

const PIT_LEVELS = {
  overflow: -13,
  drainBack: -14,
  makeUp: -27,
  lowAlarm: -28,
  pumpOff: -29,
  bottom: -37,
} as const

interface Tubes {
  readonly microtube: 'tube-1/8' | 'tube-1/4'
  readonly tubeMm: number
}

/** Stock and length of the tubes, which the sketch's inches would mix up: both fields are called microtube. */
const withTubes = (parts: Layout['parts'], tubes: readonly Tubes[]): Layout['parts'] => {
  const left = [...tubes]
  return parts.map((part) => {
    const next = part.kind === 'rack-row' ? left.shift() : undefined
    return part.kind === 'rack-row' && next
      ? { ...part, microtube: next.microtube, microtubeMm: onTick(next.tubeMm) }
      : part
  })
}

/** Rows stand side by side along the main, 100 in apart, their starts 12 in from it. */
export const arbitraryWater: fc.Arbitrary<Layout> = fc
  .record({
    rows: fc.array(row, { minLength: 1, maxLength: 4 }),
    pit,
    main,
    settings,
    fall: fc.constantFrom(0, 0, 1, 6),
  })
  .map(({ rows: drawn, pit: { lift, running, ...pump }, main: { short, ...pipe }, settings: set, fall }) => {
    const rows = drawn.map(({ microtube: _stock, tubeMm: _length, ...values }) => values)
    const lowered = Object.entries({ ...PIT_LEVELS, running }).map(
      ([level, at]) => [level, at + lift] as const,
    )
    const floor = bay('60 x 60 ft')
      .level([0, 0], 0)
      .level([720, 0], 0)
      .level([720, 720], -fall)
      .level([0, 720], -fall)
    const sketch = floor
      .pit('Pit', { x: [20, 56], y: [20, 130] }, { ...pump, ...Object.fromEntries(lowered) })
      .main(
        'Main',
        [
          [38 + short, 130],
          [700, 130],
        ],
        pipe,
      )
    const withRows = rows.reduce(
      (at, values, k) => at.row(`Row ${k + 1}`, [150 + 130 * k, 145], { ...values, inlet: 'start' }),
      sketch,
    )
    const layout = withRows.layout()
    return { ...layout, settings: { ...layout.settings, ...set }, parts: withTubes(layout.parts, drawn) }
  })
