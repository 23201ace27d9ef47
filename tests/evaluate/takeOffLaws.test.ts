import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fittingOf, fittings } from '../../src/catalogue/fittings'
import { countRule } from '../../src/catalogue/countRules'
import { baseRow } from '../../src/catalogue/priceBook/baseBook'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { movePartsBy } from '../../src/layout/edits'
import type { Layout } from '../../src/layout/schema'
import { inches } from '../../src/units/length'
import { bay, type Sketch } from '../support/bay'

const RUNS = { seed: 20_251_126, numRuns: 20 }

const countsOf = (layout: Layout): Record<string, number> =>
  Object.fromEntries(beforeChecks(layout).counts.map(({ item, count }) => [item, count]))

/** A row with its drain and its main, all of it within 100 ft. */
interface Plot {
  readonly racks: number
  readonly lines: number
  readonly laterals: number
  readonly feed: 'straight' | 'centre-split' | 'double-split' | 'ring'
  readonly pipe: 'pe-1' | 'pe-1-1/2' | 'pe-2'
  readonly drain: 'drain-3in' | 'drain-4in'
}

const plots: fc.Arbitrary<Plot> = fc.record({
  racks: fc.integer({ min: 1, max: 4 }),
  lines: fc.integer({ min: 2, max: 4 }),
  laterals: fc.integer({ min: 1, max: 2 }),
  feed: fc.constantFrom('straight', 'centre-split', 'double-split', 'ring'),
  pipe: fc.constantFrom('pe-1', 'pe-1-1/2', 'pe-2'),
  drain: fc.constantFrom('drain-3in', 'drain-4in'),
})

const withPlot = (sketch: Sketch, { racks, lines, laterals, feed, pipe, drain }: Plot, y: number): Sketch =>
  sketch
    .row(`Row ${y}`, [200, y], { racks, lines, laterals, feed })
    .drain(
      `Drain ${y}`,
      [
        [100, y + racks * 120 - 15],
        [400, y + racks * 120 - 15],
      ],
      { pipe: drain },
    )
    .main(
      `Main ${y}`,
      [
        [100, y - 20],
        [300, y - 20],
      ],
      { pipe },
    )

const empty = () => bay('60 x 400 ft')

test('two plots in one house take what both take alone', () => {
  fc.assert(
    fc.property(plots, plots, (one, other) => {
      const both = countsOf(withPlot(withPlot(empty(), one, 100), other, 3000).layout())
      const [a, b] = [one, other].map((plot) => countsOf(withPlot(empty(), plot, 100).layout()))
      const sum: Record<string, number> = { ...a }
      for (const [item, count] of Object.entries(b ?? {})) sum[item] = (sum[item] ?? 0) + count
      expect(Object.keys(both).sort()).toEqual(Object.keys(sum).sort())
      for (const [item, count] of Object.entries(both))
        expect([item, count]).toEqual([item, expect.closeTo(sum[item]!, 6)])
    }),
    RUNS,
  )
})

test('a row moved on a level floor takes as much, but for what joins it to drain and main', () => {
  /** Drop, hole and what lies between main and row come and go with the reach. */
  const isJoint = (item: string) =>
    ['drop', 'drain-hole', 'saddle', 'tee', 'elbow', 'clamp', 'coupling', 'reducing-coupling'].includes(
      fittingOf(item).noun,
    )
  const steps = fc.integer({ min: -60, max: 200 })
  fc.assert(
    fc.property(plots, steps, steps, (plot, dx, dy) => {
      const before = withPlot(empty(), plot, 400).layout()
      const after = movePartsBy(before, ['rack-row-1'], inches(dx), inches(dy))
      const own = (layout: Layout) =>
        Object.fromEntries(Object.entries(countsOf(layout)).filter(([item]) => !isJoint(item)))
      expect(own(after)).toEqual(own(before))
    }),
    RUNS,
  )
})

test('the whole plot moved takes exactly as much', () => {
  const steps = fc.integer({ min: -60, max: 60 })
  fc.assert(
    fc.property(plots, steps, steps, (plot, dx, dy) => {
      const before = withPlot(empty(), plot, 400).layout()
      const all = before.parts.map(({ id }) => id)
      expect(countsOf(movePartsBy(before, all, inches(dx), inches(dy)))).toEqual(countsOf(before))
    }),
    RUNS,
  )
})

test('every thing of the catalogue has a rule in words and a row in the price book', () => {
  for (const { key } of fittings) {
    expect([key, countRule(key)]).toEqual([key, expect.stringMatching(/\.$/)])
    expect([key, baseRow(key)?.key]).toEqual([key, key])
  }
})

test('a main longer than a coil is joined: 250 ft of 2 in pipe is three coils, two couplings of two clamps an end', () => {
  const long = bay('60 x 300 ft').main('Main', [
    [100, 100],
    [100, 3100],
  ])
  const counts = countsOf(long.layout())
  expect(counts['coupling-pe-2']).toBe(2)
  // Couplings 2 x 2 barbs, caps 2 x 1, two clamps a barb.
  expect(counts['clamp-pe-2']).toBe((4 + 2) * 2)
})

test('a main hung overhead is strapped every 24 in, one on the floor is not', () => {
  const main = (height: number) =>
    countsOf(
      bay('60 x 60 ft')
        .main(
          'Main',
          [
            [100, 100],
            [340, 100],
          ],
          { height },
        )
        .layout(),
    )
  // 240 in are 10 steps.
  expect([main(84)['pipe-strap-pe-2'], main(4)['pipe-strap-pe-2']]).toEqual([10, undefined])
})

test('a line comes into a bigger one by a wye and a reducer, and a tee stands where the crown is too thin for a hole', () => {
  const drains = bay('40 x 60 ft')
    .drain('Big', [
      [100, 300],
      [400, 300],
    ])
    .drain(
      'Small',
      [
        [250, 500],
        [250, 300],
      ],
      { pipe: 'drain-3in' },
    )
  const counts = countsOf(drains.layout())
  expect([counts['drain-wye-4in'], counts['drain-reducer-4in-to-3in']]).toEqual([1, 1])
  // A 2 in outlet over a 2 in line: no crown would be left.
  const thin = bay('40 x 60 ft')
    .row('A', [200, 100])
    .drain(
      'D',
      [
        [100, 445],
        [400, 445],
      ],
      { pipe: 'drain-2in' },
    )
  const under = countsOf(thin.layout())
  expect([under['drain-tee-2in'], under['drain-hole']]).toEqual([4, undefined])
})

test('what is buried has two clamps an end', () => {
  const elbowed = (height: number) =>
    countsOf(
      bay('60 x 60 ft')
        .main(
          'Main',
          [
            [100, 100],
            [300, 100],
            [300, 300],
          ],
          { pipe: 'pe-1', height },
        )
        .layout(),
    )['clamp-pe-1']
  // An elbow 2 barbs and two caps 1 each.
  expect([elbowed(4), elbowed(-12)]).toEqual([4, 8])
})
