import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stanceAt, stanceOf } from '../../../src/evaluate/loads/stance'
import { standingPieces } from '../../../src/evaluate/loads/stanceBase'
import type { LoadState, Tip } from '../../../src/model/strength'
import { poundsForce, toPoundsForce } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { standing } from '../../support/standing'
import { workedRack, type Worked } from '../../support/workedRack'

const tipOf = (worked: Worked, under: LoadState): Tip =>
  stanceOf(workedRack(worked)).tips.find((tip) => tip.under === under)!

// Hand arithmetic, F = W x (B / 2) / 64 in against 50 lb: 23.5 ft of spruce 2x4 24.4 lb, two 10 ft rails of 1 in 13.4 lb, bars
// 11.5 lb. A factor of safety of 1.5 is what IBC 1807.2.3 asks of retaining walls.
describe('the worked rack tips at', () => {
  test.each([
    ['bare', 24.4, 0, 30, 5.7, 0.11, 'Tips'],
    ['bare', 24.4, 0, 60, 11.4, 0.23, 'Tips'],
    ['with rails', 37.8, 0, 30, 8.9, 0.18, 'Tips'],
    ['with rails', 37.8, 0, 60, 17.7, 0.35, 'Tips'],
    ['with ten towers', 49.3, 15, 30, 46.7, 0.93, 'Tips'],
    ['with ten towers', 49.3, 15, 60, 93.4, 1.87, 'Stands'],
    ['with ten towers', 49.3, 25, 30, 70.2, 1.4, 'Shaky'],
    ['with ten towers', 49.3, 25, 60, 140.3, 2.81, 'Stands'],
  ] as const)('%s, %d lb and towers of %d lb, on %d in: %d lb, %d times the push', (...given) => {
    const [, ownLb, towerLb, base, tipsAt, safety, state] = given
    const tip = tipOf({ base, ownLb, towerLb }, towerLb > 0 ? 'full' : 'empty')
    expect(Math.abs(toPoundsForce(tip.tipsAtN) - tipsAt)).toBeLessThan(0.06)
    expect(Math.abs(tip.safety - safety)).toBeLessThan(0.006)
    expect(tip).toMatchObject({ state, way: 'across' })
  })

  // Twenty towers of 25 lb: 549.3 x 15 / 64 = 128.7 lb and 2.57; x 30 / 64 = 257.5 lb and 5.15.
  test.each([
    [30, 128.7, 2.57],
    [60, 257.5, 5.15],
  ])('with twenty towers on %d in: %d lb, %d times the push', (base, tipsAt, safety) => {
    const tip = tipOf({ base, ownLb: 49.3, lines: [-9, 9] }, 'full')
    expect(Math.abs(toPoundsForce(tip.tipsAtN) - tipsAt)).toBeLessThan(0.06)
    expect(Math.abs(tip.safety - safety)).toBeLessThan(0.006)
  })

  // Towers straight over the edge add nothing about it: 49.3 x 15 = 740 lb-in, / 64 = 11.6 lb.
  test('towers of one side over the edge of the base as if they did not hang', () => {
    const tip = tipOf({ base: 30, ownLb: 49.3, lines: [-15, 15] }, 'one-side')
    expect(Math.abs(toPoundsForce(tip.tipsAtN) - 11.6)).toBeLessThan(0.06)
  })

  test('nothing at all, where towers of one side pull it over by themselves', () => {
    const tip = tipOf({ base: 30, ownLb: 49.3, lines: [-27, 27] }, 'one-side')
    expect(tip).toMatchObject({ tipsAtN: 0, safety: 0, state: 'Tips' })
  })
})

test.each([
  [1.5, 'Stands'],
  [1.4999, 'Shaky'],
  [1, 'Shaky'],
  [0.9999, 'Tips'],
] as const)('at %d times the push a row %s', (safety, state) => {
  expect(stanceAt(safety)).toBe(state)
})

// Rule of the trade, common practice: towers of one side no further out than 0.8 of half the base. By hand: half the base is
// (W + 3.5 + 2 x 1.5) / 2; four lines at 18 in on W = 40: (9 + 27) / 2 = 18 of 18.6; two lines at 20 in on W = 14: 10 of 8.2.
describe('towers of one side', () => {
  test('a default row hangs them at 18 in of 18.6', () => {
    const { baseHalfMm, oneSideMm, oneSideLimitMm, state } = stanceOf(standing())
    expect(toInches(baseHalfMm)).toBeCloseTo(23.25, 6)
    expect(toInches(oneSideMm)).toBeCloseTo(18, 6)
    expect(toInches(oneSideLimitMm)).toBeCloseTo(18.6, 6)
    expect(state).toBe('Stands')
  })

  test('two lines on rails 14 in apart hang too far out, and the row is shaky whatever it weighs', () => {
    const narrow = { railSpacingMm: inches(14), lines: 2, lineSpacingMm: inches(20) }
    const stance = stanceOf(standing(narrow, { ownLb: 5000 }))
    expect(toInches(stance.baseHalfMm)).toBeCloseTo(10.25, 6)
    expect(toInches(stance.oneSideMm)).toBeCloseTo(10, 6)
    expect(stance.tips.every(({ state }) => state === 'Stands')).toBe(true)
    expect(stance.state).toBe('Shaky')
  })

  test('a single line over the middle hangs to neither side', () => {
    expect(stanceOf(standing({ lines: 1 })).oneSideMm).toBe(0)
  })
})

test('risers taller than two and a half bases are to be tied', () => {
  const stance = stanceOf(standing({ railSpacingMm: inches(18), lines: 1 }, { ownLb: 5000 }))
  expect(stance.heightToBase).toBeGreaterThan(2.5)
  expect(stance.state).toBe('Shaky')
})

describe('what holds a row', () => {
  test.each(['anchored', 'tied'] as const)(
    '%s: it stands by that, and its tips tell what that must bear',
    (hold) => {
      const input = standing({ hold }, { ownLb: 50 })
      const stance = stanceOf(input)
      expect(stance).toMatchObject({ heldBy: hold, state: 'Stands' })
      expect(stance.tips.find(({ under }) => under === 'empty')!.state).toBe('Tips')
    },
  )

  test('free: nothing but its weight', () => {
    expect(stanceOf(standing({}, { ownLb: 50 }))).toMatchObject({ heldBy: undefined, state: 'Tips' })
  })
})

describe('what tips as one', () => {
  test.each(['J1', 'J3', 'J4', 'J5'] as const)('a row of %s, racks of which share their risers', (joint) => {
    expect(standingPieces(standing({ joint }).frame)).toHaveLength(1)
    expect(standingPieces(standing({ joint, base: 'short-runners' }).frame)).toHaveLength(1)
  })

  test('racks of J2 whose runners are spliced over the gap, as built', () => {
    expect(standingPieces(standing({ joint: 'J2' }).frame)).toHaveLength(1)
  })

  test('each of three racks of J2 on short runners, with a third of the weight', () => {
    const base = 'short-runners'
    const [whole, apart] = (['J1', 'J2'] as const).map((joint) => stanceOf(standing({ joint, base })))
    expect(standingPieces(standing({ joint: 'J2', base }).frame)).toHaveLength(3)
    for (const index of [0, 2])
      expect(apart!.tips[index]!.weightN / whole!.tips[index]!.weightN).toBeCloseTo(1 / 3, 1)
  })
})

test('a short rack of a wide base tips along itself first', () => {
  const wide = { racks: 1, rackLengthMm: inches(48), barsPerRack: 4, railSpacingMm: inches(54) }
  expect(stanceOf(standing(wide)).tips.find(({ under }) => under === 'empty')!.way).toBe('along')
})

test('what hangs from the house does not tip', () => {
  expect(stanceOf(standing({ carriedBy: 'house' }))).toMatchObject({ tips: [], state: 'Stands' })
})

// A foot plate of 16 in across the row, its middle under the riser 20 in out, ends at 28 in: short runners of 60 in end at 30.
test('a base that overhangs its plates tips over the plates', () => {
  const { baseHalfMm } = stanceOf(standing({ base: 'short-runners' }))
  expect(toInches(baseHalfMm)).toBeCloseTo(28, 6)
})

test('a row has the same stance whichever way it runs and its gutters fall', () => {
  const of = (heading: 0 | 90 | 180 | 270, fallsTo: 'start' | 'end') =>
    stanceOf(standing({ heading, fallsTo })).tips.map(({ tipsAtN }) => Math.round(tipsAtN * 1000))
  for (const heading of [0, 90, 180, 270] as const)
    for (const fallsTo of ['start', 'end'] as const) expect(of(heading, fallsTo)).toEqual(of(90, 'end'))
})

describe('laws', () => {
  const worked = fc.record({
    base: fc.integer({ min: 12, max: 60 }),
    ownLb: fc.integer({ min: 10, max: 2000 }),
    towerLb: fc.integer({ min: 5, max: 60 }),
    out: fc.integer({ min: 1, max: 30 }),
  })
  const safeties = ({ out, ...more }: Worked & { out: number }): readonly number[] =>
    stanceOf(workedRack({ ...more, lines: [-out, out] })).tips.map(({ safety }) => safety)

  test('a row never stands better on a smaller base', () => {
    fc.assert(
      fc.property(worked, fc.integer({ min: 1, max: 11 }), (rack, lessIn) => {
        const [wide, narrow] = [safeties(rack), safeties({ ...rack, base: rack.base - lessIn })]
        for (const [index, safety] of narrow.entries())
          expect(safety).toBeLessThanOrEqual(wide[index]! + 1e-9)
      }),
      { seed: 71 },
    )
  })

  test('a row that weighs more itself never tips sooner', () => {
    fc.assert(
      fc.property(worked, fc.integer({ min: 1, max: 500 }), (rack, moreLb) => {
        const [light, heavy] = [safeties(rack), safeties({ ...rack, ownLb: rack.ownLb + moreLb })]
        for (const [index, safety] of heavy.entries())
          expect(safety).toBeGreaterThanOrEqual(light[index]! - 1e-9)
      }),
      { seed: 72 },
    )
  })

  test('pushed with twice the force a row has half the safety', () => {
    fc.assert(
      fc.property(worked, ({ out, ...rack }) => {
        const input = workedRack({ ...rack, lines: [-out, out] })
        const twice = { ...input, settings: { ...input.settings, pushN: 2 * input.settings.pushN } }
        const [once, doubled] = [stanceOf(input).tips, stanceOf(twice).tips]
        for (const [index, { safety }] of doubled.entries())
          expect(2 * safety).toBeCloseTo(once[index]!.safety, 9)
      }),
      { seed: 73 },
    )
  })
})

// 50 lb more than nothing: the units of the push are the program's, not the test's.
test('the push is the bay’s own', () => {
  const input = workedRack({ base: 30, ownLb: 49.3 })
  const harder = { ...input, settings: { ...input.settings, pushN: poundsForce(100) } }
  expect(stanceOf(harder).tips.at(-1)!.safety).toBeCloseTo(0.702, 2)
})
