import { describe, expect, test } from 'vitest'
import { feedVariant } from '../../../src/evaluate/water/feedVariant'
import { benchStepMm, gradedRow } from '../../../src/evaluate/water/gradedRow'
import { rowAlone } from '../../../src/evaluate/water/rowAlone'
import { rackRowSchema, type RackRow } from '../../../src/parts/rack-row/schema'
import { inches } from '../../../src/units/length'
import { bay } from '../../support/bay'
import { drawnWater, rowOf } from '../../support/drawnWater'

const layout = bay('30 x 96 ft').row('A', [100, 60], { lines: 2, laterals: 1, header: 'pe-2' }).layout()
const row = rowOf(layout)
const water = drawnWater(layout)
const graded = (values: Partial<RackRow> = {}, stepMm?: number) =>
  gradedRow({ ...row, ...values }, water, stepMm)!

const stations = (runs: readonly { from: number; to: number }[]) =>
  runs.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i))

describe('the worked lateral of the trade notes, hand arithmetic', () => {
  const { groups, exactMm, before, after, gradedTubes } = graded()

  // 58-1/2 in at the inlet for a lateral with 15 in before the first station and nothing lost where it is fed.
  test('of exact lengths from 58-1/2 to 36 in', () => {
    expect(exactMm).toHaveLength(24)
    expect(Math.abs(exactMm[0]! / inches(1) - 58.5)).toBeLessThan(0.6)
    expect(exactMm.at(-1)! / inches(1)).toBeCloseTo(36, 6)
  })

  // 3, 4, 5 and 12 stations bring 31.6 down to 9.5 per cent.
  test('in four groups spreads by less than 9.6 per cent instead of 32', () => {
    expect(100 * before.figures.spread).toBeGreaterThan(31)
    expect(100 * after.figures.spread).toBeLessThan(9.6)
    expect(groups).toHaveLength(4)
  })

  test('has a card that counts every station and every tube once', () => {
    expect(groups.flatMap((group) => stations(group.stations)).toSorted((a, b) => a - b)).toEqual(
      Array.from({ length: 24 }, (_, i) => i + 1),
    )
    expect(groups.map(({ label }) => label)).toEqual(['A', 'B', 'C', 'D'])
    for (const { stations: runs, fromEntry, tubes, lengthMm } of groups) {
      expect(runs).toEqual([fromEntry])
      expect(tubes).toBe(2 * (fromEntry.to - fromEntry.from + 1))
      expect(lengthMm / inches(1)).toBeCloseTo(Math.round(lengthMm / inches(1)), 9)
    }
    expect(groups.map(({ lengthMm }) => lengthMm)).toEqual(gradedTubes.map(({ lengthMm }) => lengthMm))
  })

  test('is what the row has once it is written into it, and the schema takes it', () => {
    const written = rackRowSchema.parse({ ...row, gradedTubes })
    expect(written.gradedTubes).toEqual(gradedTubes)
    const alone = rowAlone(feedVariant(written, {}, water).built, water)!
    expect(alone.figures.spread).toBeCloseTo(after.figures.spread, 9)
  })
})

test('water in at the other end turns the card round', () => {
  const [there, back] = [graded(), graded({ inlet: 'end' })]
  expect(back.gradedTubes).toEqual(there.gradedTubes)
  back.groups.forEach(({ stations: runs }, i) => {
    const { from, to } = there.groups[i]!.stations[0]!
    expect(runs).toEqual([{ from: 25 - to, to: 25 - from }])
  })
})

// Each half of 12 stations is fed from between stations 12 and 13: by symmetry the groups lie on either side.
test('a split row has its groups on both sides of where the water enters', () => {
  const { groups, exactMm, before, after } = graded({ feed: 'centre-split', lateral: 'pe-1/2' })
  expect(exactMm).toHaveLength(12)
  expect(after.figures.spread).toBeLessThan(before.figures.spread)
  const [first] = groups
  const reach = first!.fromEntry.to
  expect(first!.stations).toEqual([{ from: 13 - reach, to: 12 + reach }])
  expect(groups.at(-1)!.stations).toHaveLength(2)
  expect(groups.reduce((sum, { tubes }) => sum + tubes, 0)).toBe(48)
})

test('a double-split row and a ring have every tube in one group, and no worse a spread', () => {
  for (const values of [{ feed: 'double-split' }, { feed: 'ring', laterals: 2 }] as const) {
    const found = graded({ ...values, lateral: 'pe-1/2' })
    expect(found.groups.reduce((sum, { tubes }) => sum + tubes, 0)).toBe(48)
    expect(found.after.figures.spread).toBeLessThanOrEqual(found.before.figures.spread)
  }
})

test('stations without towers keep their place in the count', () => {
  const { groups, exactMm } = graded({ takenOut: [4, 5, 20, 21] })
  expect(exactMm).toHaveLength(24)
  expect(groups.reduce((sum, { tubes }) => sum + tubes, 0)).toBe(44)
  expect(groups.at(-1)!.fromEntry.to).toBe(24)
})

test('a bench cuts whole inches, or 25 mm', () => {
  expect(benchStepMm({ units: 'feet-inches' })).toBeCloseTo(25.4, 9)
  expect(benchStepMm({ units: 'metric' })).toBe(25)
  for (const { lengthMm } of graded({}, 25).groups) expect(lengthMm % 25).toBe(0)
})

test('no tube is cut too short to turn a tower', () => {
  const { groups } = graded({ microtubeMm: inches(6), lateral: 'pe-1' })
  const least = feedVariant({ ...row, microtubeMm: inches(6) }, {}, water).built.feed!.tubes[0]!.lengthMm
  for (const { lengthMm } of groups) expect(lengthMm).toBeGreaterThanOrEqual(least - inches(1))
})

test('a row without towers has no card', () => {
  expect(gradedRow({ ...row, takenOut: Array.from({ length: 48 }, (_, i) => i) }, water)).toBeUndefined()
})
