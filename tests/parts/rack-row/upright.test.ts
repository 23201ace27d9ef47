import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { emptyBay } from '../../../src/layout/empty'
import { materialsOf } from '../../../src/parts/rack-row/materials'
import { positionsOf } from '../../../src/parts/rack-row/positions'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, toInches } from '../../../src/units/length'
import { build, countOf, facts, fromShelf, marked, pieces, row } from '../../support/rackRows'

const inBay = (part: RackRow) => evaluate({ ...emptyBay(inches(480), inches(720), 'Sketch'), parts: [part] })

const pairsU = (part: RackRow): number[] =>
  positionsOf(part, materialsOf(part, [])).pairU.map((u) => Math.round(toInches(u) * 1000) / 1000)

/* Where pairs stand: hand arithmetic, in inches. */
describe('end pairs moved in', () => {
  test('of a single rack: both, the others evenly between', () => {
    // 24 to 96, 72 / 4 = 18 apart.
    expect(pairsU(row({ racks: 1, endInMm: inches(24) }))).toEqual([24, 42, 60, 78, 96])
    expect(pairsU(row({ racks: 1, midPairs: 0, endInMm: inches(24.8) }))).toEqual([24.8, 95.2])
  })

  test('of a longer row: its two ends, not where racks meet', () => {
    // 24 to 120: 24 apart; 120 to 240: 30 apart.
    expect(pairsU(row({ racks: 3, midPairs: 1, endInMm: inches(24) }))).toEqual([
      24, 72, 120, 180, 240, 288, 336,
    ])
  })

  test('of racks that come apart: each end of each rack, 24 in on either side of the gap of 12', () => {
    // Two racks: 24 to 120 - 6 - 24 = 90, and 120 + 6 + 24 = 150 to 216.
    expect(
      pairsU(row({ racks: 2, midPairs: 0, joint: 'J2', rackGapMm: inches(12), endInMm: inches(24) })),
    ).toEqual([24, 90, 150, 216])
  })

  test('a third of a rack is left between them', () => {
    expect(pairsU(row({ racks: 1, midPairs: 0, rackLengthMm: inches(60), endInMm: inches(36) }))).toEqual([
      20, 40,
    ])
  })

  test('less than what keeps end rails whole moves nothing', () => {
    expect(pairsU(row({ racks: 1, midPairs: 0, endInMm: inches(1) }))).toEqual([2.25, 117.75])
  })

  test('rails, runners and troughs are as long as before', () => {
    const lengths = (endInMm: number) => pieces(build(row({ endInMm })), 'RL', 'BR', 'GT', 'SV')
    expect(lengths(inches(24))).toEqual(lengths(0))
  })

  test('side braces stand at the pairs that are moved in', () => {
    const built = build(row({ racks: 1, endInMm: inches(24) }))
    const tops = marked(built, 'SB').map(({ to }) => toInches(to.y) - 50)
    // A brace laps half a board past its node on the riser.
    for (const top of tops) expect(Math.min(Math.abs(top - 24), Math.abs(top - 96))).toBeLessThan(3)
  })

  test('the outlet then stands past the last pair, in the middle of what overhangs, and else in the last bay', () => {
    const outletU = (endIn: number) => {
      const part = row({ racks: 1, endInMm: inches(endIn) })
      return toInches(positionsOf(part, materialsOf(part, [])).outletU)
    }
    expect(outletU(24)).toBeCloseTo(108, 6)
    // 12 to 108, 24 apart: between 84 and 108.
    expect(outletU(12)).toBeCloseTo(96, 6)
    expect(outletU(0)).toBeCloseTo(105, 6)
  })
})

describe('braces that are asked for', () => {
  test.each([
    ['both', 4, 4],
    ['along', 4, 0],
    ['across', 0, 4],
    ['none', 0, 0],
  ] as const)('%s: %i side braces and %i cross braces on three racks', (bracing, sides, crosses) => {
    const built = build(row({ bracing }))
    expect([marked(built, 'SB').length, marked(built, 'XB').length]).toEqual([sides, crosses])
    expect(built.rack!.bracing).toBe(bracing)
  })
})

describe('what keeps a row from tipping', () => {
  test('anchors: two at either end and wherever two racks meet, at the feet of their risers', () => {
    const built = build(row({ hold: 'anchored' }))
    expect(countOf(built, 'ground-anchor')).toBe(2 * 4)
    const feet = new Set(built.supports.map(({ at }) => `${at.x} ${at.y}`))
    for (const { at } of built.fittings.filter(({ item }) => item === 'ground-anchor'))
      expect(feet.has(`${at.x} ${at.y}`)).toBe(true)
  })

  test('ties: one at each of these pairs, at its top', () => {
    const built = build(row({ hold: 'tied' }))
    expect(countOf(built, 'row-tie')).toBe(4)
    expect(countOf(built, 'ground-anchor')).toBe(0)
  })

  test('racks that come apart are held each by itself', () => {
    expect(countOf(build(row({ hold: 'anchored', joint: 'J2' })), 'ground-anchor')).toBe(3 * 4)
  })

  test('they are on the take-off with what they cost and the hours that they take', () => {
    const now = inBay(row({ hold: 'anchored' }))
    expect(now.counts.find(({ item }) => item === 'ground-anchor')?.count).toBe(8)
  })
})

describe('drips', () => {
  test('painted conduit is counted by its length: rails, sleeves and bars', () => {
    const built = build(row({ drips: 'painted' }))
    const painted = built.fittings.filter(({ item }) => item === 'conduit-paint')
    // 4 x 120 + 2 x 119.75 + 4 x 8.25 + 24 x 57.
    expect(toInches(painted.reduce((sum, { amount = 0 }) => sum + amount, 0))).toBeCloseTo(2120.5, 6)
    expect(countOf(build(row()), 'conduit-paint')).toBe(0)
  })
})

describe('a row that the house carries', () => {
  const built = build(row({ carriedBy: 'house', hold: 'anchored', riserMm: inches(30) }))

  test('has rails, bars, troughs and their bearers, and nothing that stands on the floor', () => {
    expect(new Set(built.sticks.map(({ mark }) => mark))).toEqual(new Set(['RL', 'SV', 'HB', 'GB', 'GT']))
    expect(built.supports).toEqual([])
    expect(built.bodies.filter(({ role }) => role === 'foot')).toEqual([])
    expect(['foot-plate', 'ground-anchor'].map((item) => countOf(built, item))).toEqual([0, 0])
    expect(built.rack!.drilledFor).toEqual([])
  })

  test('hangs by two straps wherever a riser pair would stand, with a bearer in each', () => {
    const places = (all: typeof built, item: string) =>
      all.fittings.filter((each) => each.item === item).map(({ at }) => [at.x, at.y])
    expect(places(built, 'house-strap')).toEqual(places(build(row()), 'foot-plate'))
    expect(marked(built, 'GB')).toHaveLength(13)
  })

  test('hangs as high as its neighbours, whatever riser it had', () => {
    const standing = facts(row())
    expect([built.rack!.barTopMm, built.rack!.tipMm, built.rack!.bearerTopMm]).toEqual([
      standing.barTopMm,
      standing.tipMm,
      standing.bearerTopMm,
    ])
  })

  test('no bar is near a riser', () => {
    expect(built.rack!.barToRiserMm).toBe(Infinity)
  })

  test('alone in a bay it hangs level over the floor under it, and has no foot to shim', () => {
    const part = row({ carriedBy: 'house' })
    const { bay } = inBay(part)
    expect(bay.levels.feet.has(part.id)).toBe(false)
    expect(bay.levels.datums.has(part.id)).toBe(true)
  })
})

/* Common practice, no source: low racks with 66 in risers 5 ft and 10 ft apart. */
describe('the low rack with fewer risers', () => {
  const low = fromShelf('low-rack')

  test('as it comes off the shelf, three pairs between rack ends', () => {
    expect(pairsU(low)).toHaveLength(9)
  })

  test.each([
    // Racks of 114: one pair between the ends leaves 57, none 114.
    [1, [0, 57, 114, 171, 228]],
    [0, [0, 114, 228]],
  ] as const)('%i pairs between rack ends', (midPairs, us) => {
    const part = { ...low, midPairs }
    expect(pairsU(part)).toEqual(us)
    const built = build(part)
    expect(marked(built, 'RS-p', 'RS-s')).toHaveLength(2 * us.length)
    expect(marked(built, 'BR')).toHaveLength(2 * us.length)
    expect(pieces(built, 'RL', 'RL-b')).toEqual(['4 x 120'])
  })

  test.each([
    // A single rack of 120: end pairs 3 in from the ends of whole sticks.
    [1, [3, 60, 117]],
    [0, [3, 117]],
  ] as const)('a single rack of 10 ft with %i', (midPairs, us) => {
    expect(pairsU({ ...low, racks: 1, rackLengthMm: inches(120), midPairs })).toEqual(us)
  })
})
