import fc from 'fast-check'
import { FORMAT, layoutSchema, VERSION, type Layout } from '../../src/layout/schema'
import { fromTicks, inches, toTicks } from '../../src/units/length'

/** A length of whole ticks between bounds in inches, mm. */
const ticks = (fromInches: number, toInches: number) =>
  fc.integer({ min: toTicks(inches(fromInches)) + 1, max: toTicks(inches(toInches)) - 1 }).map(fromTicks)

const place = fc.record({ x: ticks(-2000, 2000), y: ticks(-2000, 2000) })
const heading = fc.constantFrom(0, 90, 180, 270)
const locked = fc.boolean()

const row = fc
  .record({
    kind: fc.constant('rack-row'),
    at: place,
    heading,
    locked,
    racks: fc.integer({ min: 1, max: 20 }),
    barsPerRack: fc.integer({ min: 4, max: 12 }),
    lines: fc.integer({ min: 1, max: 5 }),
    rackLengthMm: ticks(48, 120),
    towerMm: ticks(24, 96),
    riserMm: fc.option(ticks(24, 120)),
    joint: fc.constantFrom('J1', 'J3'),
    fallsTo: fc.constantFrom('start', 'end'),
    gutterFall: fc.double({ min: 3, max: 40, noNaN: true }),
    out: fc.uniqueArray(fc.nat(1199), { maxLength: 12 }),
  })
  .map(({ out, ...values }) => ({
    ...values,
    takenOut: out.filter((i) => i < values.racks * values.barsPerRack * values.lines).sort((a, b) => a - b),
  }))

const post = fc.record({
  kind: fc.constant('obstacle'),
  what: fc.constantFrom('post', 'heater', 'tank'),
  at: place,
  heading,
  locked,
  shape: fc.constantFrom('box', 'round'),
  lengthMm: ticks(1, 60),
  widthMm: ticks(1, 60),
  clearLeftMm: ticks(0, 48),
  footingMm: ticks(0, 24),
})

const drain = fc.record({
  kind: fc.constant('drain-line'),
  points: fc.array(place, { minLength: 2, maxLength: 6 }),
  locked,
  slope: fc.double({ min: 0, max: 40, noNaN: true }),
  startInvertMm: fc.option(ticks(-40, 0)),
})

const main = fc.record({
  kind: fc.constant('main'),
  points: fc.array(place, { minLength: 2, maxLength: 6 }),
  locked,
})

const pit = fc.record({ kind: fc.constant('sump'), at: place, heading, locked, lengthMm: ticks(12, 120) })

const door = fc.record({ kind: fc.constant('opening'), at: place, heading, widthMm: ticks(12, 120) })

const house = fc.record({ width: ticks(100, 2000), length: ticks(100, 4000) }).map(({ width, length }) => ({
  outline: [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
    { x: 0, y: length },
  ],
  spotLevels: [{ at: { x: 0, y: length }, levelMm: fromTicks(Math.round(-length)) }],
}))

const title = fc.string({ minLength: 1, maxLength: 40 })

/** Layouts that the schema accepts: up to a dozen parts of six kinds anywhere on and off the floor, all on the tick. */
export const arbitraryLayout: fc.Arbitrary<Layout> = fc
  .record({
    title,
    house,
    parts: fc.array(fc.oneof(row, post, drain, main, pit, door), { maxLength: 12 }),
    names: fc.array(fc.string({ maxLength: 20 }), { minLength: 12, maxLength: 12 }),
  })
  .map(({ names, parts, ...rest }) =>
    layoutSchema.parse({
      format: FORMAT,
      version: VERSION,
      settings: {},
      ...rest,
      parts: parts.map((part, index) => ({
        ...part,
        id: `${part.kind}-${index + 1}`,
        name: names[index] ?? '',
      })),
    }),
  )

/** One seed for all layout laws, so that a failure is the same failure on every machine. */
export const LAYOUT_SEED = 20_251_125
