import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { RailLine, RowStrength } from '../../../src/model/strength'
import { kindOf } from '../../../src/parts'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches } from '../../../src/units/length'
import { build, row } from '../../support/rackRows'
import { frameOfBuilt, strengthOfBuilt, strengthOfRow } from './rowOf'

const SEED = 20_261_126

const inchesBetween = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarters) => inches(quarters / 4))

/** Rows of any joint, size and spacing, some towers taken out. */
const anyRow: fc.Arbitrary<Partial<RackRow>> = fc
  .record({
    joint: fc.constantFrom('J1', 'J2', 'J3', 'J4', 'J5'),
    racks: fc.integer({ min: 1, max: 4 }),
    barsPerRack: fc.integer({ min: 4, max: 9 }),
    midPairs: fc.integer({ min: 0, max: 3 }),
    lines: fc.integer({ min: 1, max: 5 }),
    lineSpacingMm: inchesBetween(8, 24),
    railSpacingMm: inchesBetween(14, 54),
    rackLengthMm: inchesBetween(84, 120),
    endInMm: inchesBetween(0, 20),
    rail: fc.constantFrom('1/2', '3/4', '1'),
    bar: fc.constantFrom('1/2', '3/4', '1'),
    base: fc.constantFrom('long-runners', 'short-runners'),
    carriedBy: fc.constantFrom('floor', 'house'),
    fallsTo: fc.constantFrom('start', 'end'),
    lateralAt: fc.constantFrom('above-bars', 'under-rail'),
    heading: fc.constantFrom(0, 90, 180, 270),
    out: fc.uniqueArray(fc.nat(199), { maxLength: 30 }),
  })
  .map(({ out, ...values }) => ({
    ...values,
    laterals: Math.min(2, values.lines),
    takenOut: out
      .filter((tower) => tower < values.racks * values.barsPerRack * values.lines)
      .toSorted((a, b) => a - b),
  }))

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

const HELD_BY_RAILS = ['RL', 'RL-b', 'SV', 'DW', 'HB', 'lateral', 'header']

const handedDown = ({ rails }: RowStrength): number =>
  sum(rails.flatMap(({ reactions }) => reactions.map(({ fullN }) => fullN)))

/** What the risers carry is what hangs on the rails, and the rails. */
const expectAllHandedDown = (strength: RowStrength): void => {
  const { byMark, towers, towerN } = strength.loads
  const hangsN = sum(HELD_BY_RAILS.map((mark) => byMark.get(mark) ?? 0)) + towers * towerN
  expect(Math.abs(handedDown(strength) / hangsN - 1)).toBeLessThan(1e-6)
}

/** Screens come worst first, and no riser carries less than its least or more than its most. */
const expectInOrder = ({ screens, rails, state }: RowStrength): void => {
  const ranks = screens.map((screen) => ['Within', 'Proof-load', 'Too long'].indexOf(screen.state))
  expect(ranks).toEqual(ranks.toSorted((a, b) => b - a))
  expect(screens[0]?.state).toBe(state)
  expect(screens.filter(({ used }) => Number.isNaN(used))).toEqual([])
  for (const { fullN, mostN, leastN } of rails.flatMap(({ reactions }) => reactions)) {
    expect(leastN).toBeLessThanOrEqual(fullN + 1e-6)
    expect(mostN).toBeGreaterThanOrEqual(fullN - 1e-6)
  }
}

const expectSpansBetweenRisers = ({ spans, reactions }: RailLine): void => {
  const places = reactions.map(({ u }) => u)
  for (const { fromU, toU, isOverhang } of spans)
    if (!isOverhang)
      for (const end of [fromU, toU])
        expect(Math.min(...places.map((u) => Math.abs(u - end)))).toBeLessThan(1.1)
}

describe('laws of a row', () => {
  test('nothing is lost and nothing twice; worst first; spans lie between risers', () => {
    fc.assert(
      fc.property(anyRow, (more) => {
        const strength = strengthOfRow(more)
        expectAllHandedDown(strength)
        expectInOrder(strength)
        strength.rails.forEach(expectSpansBetweenRisers)
      }),
      { seed: SEED, numRuns: 40 },
    )
  })
})

const figures = ({ screens, state, rails, loads }: RowStrength) => ({
  state,
  used: screens
    .filter(({ id }) => id.startsWith('rail') || id.startsWith('bar'))
    .map(({ id, mark, used }) => `${id} ${mark} ${used.toFixed(6)}`)
    .toSorted(),
  carried: rails.flatMap(({ reactions }) => reactions.map(({ mostN }) => mostN.toFixed(4))).toSorted(),
  ownN: loads.ownN.toFixed(4),
})

describe('wherever it stands', () => {
  test('a row that is turned is as strong, and so is one that is mirrored', () => {
    fc.assert(
      fc.property(anyRow, (more) => {
        const part = row({ ...more, heading: 0 })
        const known = figures(strengthOfBuilt(build(part)))
        for (const heading of [90, 180, 270] as const)
          expect(figures(strengthOfBuilt(build({ ...part, heading })))).toEqual(known)
        const mirrored = kindOf(part).mirror(part, { axis: 'y', atMm: 0 })
        expect(figures(strengthOfBuilt(build(mirrored as RackRow)))).toEqual(known) // the mirror of a row is a row
      }),
      { seed: SEED, numRuns: 8 },
    )
  })

  test('gutters that fall the other way change nothing of a row that is alike from both ends', () => {
    expect(figures(strengthOfRow({ fallsTo: 'start' })).used).toEqual(figures(strengthOfRow()).used)
  })
})

test('line by line, a tower more is a tower’s weight more on the risers', () => {
  const [all, less] = [strengthOfRow(), strengthOfRow({ takenOut: [40] })]
  expect(handedDown(all) - handedDown(less)).toBeCloseTo(all.loads.towerN, 6)
  expect(frameOfBuilt(build(row({ takenOut: [40] }))).towers).toHaveLength(95)
})
