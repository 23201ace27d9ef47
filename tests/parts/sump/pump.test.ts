import { describe, expect, test } from 'vitest'
import { sump } from '../../../src/parts/sump/kind'
import { sumpSchema } from '../../../src/parts/sump/schema'
import { gpm } from '../../../src/units/flow'
import { feet, toInches } from '../../../src/units/length'
import { at, flatSite, inchesOf } from '../../support/site'

const pit = (more: object = {}) =>
  sump.derive(sumpSchema.parse({ kind: 'sump', id: 'sump-1', at: at(322, 373), ...more }), flatSite())

/** What the pit has of its own, pump or none. */
const OF_PIT = new Set(['pit', 'make', 'overflow', 'alarm'])

/** How many of each fitting of the pump set. */
const counts = (more: object = {}): Record<string, number> => {
  const found: Record<string, number> = {}
  const ofSet = pit(more).fittings.filter(({ item }) => !OF_PIT.has(item.split('-')[0]!))
  for (const { item } of ofSet) found[item] = (found[item] ?? 0) + 1
  return found
}

describe('what stands between the pump and the main', () => {
  test('one pump with its strainer, check valve between unions and one filter', () => {
    // The path of the trade notes: strainer, pump, union, check valve, union, filter with union and sight tube each side.
    expect(counts()).toEqual({
      'pump-middle': 1,
      'pump-float': 1,
      'foot-strainer': 1,
      'check-valve-pe-2': 1,
      // Two at the check valve, two at the filter.
      'union-pe-2': 4,
      // Barb to thread: over the pump, and into and out of the filter.
      'adapter-pe-2': 3,
      'filter-pe-2': 1,
      // Pump to union, union to check valve, check valve to union; union to filter, filter to union.
      'nipple-pe-2': 5,
      'sight-tube': 2,
      'sight-tube-tee-pe-2': 2,
      // (3 adapters x 1 barb + 2 tees x 3 barbs) x 2 clamps.
      'clamp-pe-2': 18,
    })
  })

  test('two pumps, two filters and a bypass', () => {
    const set = { pumps: 2, filter: 'two-in-parallel', bypassShare: 0.25, discharge: 'pe-1' }
    expect(counts(set)).toMatchObject({
      'pump-middle': 2,
      'pump-float': 1,
      'foot-strainer': 2,
      'check-valve-pe-1': 2,
      'union-pe-1': 8,
      'filter-pe-1': 2,
      // Each pump 3; each filter 2 and one to either valve.
      'nipple-pe-1': 2 * 3 + 2 * 4,
      'sight-tube': 4,
      'ball-valve-pe-1': 4,
      // Where the pumps come together 1, the bypass 1, both ends of the filters 2.
      'tee-pe-1': 4,
      'elbow-pe-1': 1,
      'bypass-valve-pe-1': 1,
      // Over each pump 1, each filter 2, the bypass 1.
      'adapter-pe-1': 7,
      // 4 tees x 3, 1 elbow x 2, 7 adapters x 1, 4 tees for sight tubes x 3: 33 barbs, 2 clamps between pump and filter.
      'clamp-pe-1': 66,
    })
  })

  test('no check valve and no filter leave one union', () => {
    const bare = counts({ checkValve: false, filter: 'none', strainer: false })
    expect(bare).toEqual({
      'pump-middle': 1,
      'pump-float': 1,
      'union-pe-2': 1,
      'nipple-pe-2': 1,
      'adapter-pe-2': 1,
      'clamp-pe-2': 2,
    })
  })

  test('no pump leaves nothing, and no mouth that gives water', () => {
    const { tubes, mouths, pump } = pit({ pumps: 0 })
    expect([counts({ pumps: 0 }), tubes, pump]).toEqual([{}, [], undefined])
    expect(mouths.map(({ role }) => role)).toEqual(['pit-inlet'])
  })

  test('pipe goes from the pump-off level up to the rim, and 1 % over', () => {
    // -29 to 0: 29 x 1.01.
    expect(pit().tubes.map(({ stock, lengthMm }) => [stock, inchesOf(lengthMm)])).toEqual([['pe-2', 29.29]])
    // Two pumps stand 12 in apart: each goes 29 up and 6 across.
    expect(pit({ pumps: 2 }).tubes.map(({ lengthMm }) => inchesOf(lengthMm))).toEqual([35.35, 35.35])
  })
})

describe('what the pump gives', () => {
  const facts = (more: object = {}) => pit(more).pump!

  test('draws from the running level and gives at the rim, over the pump', () => {
    const { suctionMm, at: place } = facts()
    expect(
      [suctionMm, place.x, place.y, place.z].map(toInches).map((n) => Math.round(n * 100) / 100),
    ).toEqual([-22.5, 322, 412, 0])
  })

  test('37 gpm at 16.5 ft is on the curve of the pump that a pit arrives with', () => {
    // Worked example of the trade notes, hand arithmetic: 32 gpm and 15 % of bypass.
    expect(facts().curve).toContainEqual({
      flowLph: expect.closeTo(gpm(37), 6),
      headMm: expect.closeTo(feet(16.5), 6),
    })
  })

  test('strainer, two unions, check valve and the filter’s two unions lose 4.82 velocity heads', () => {
    // 2.5 + 0.08 + 2 + 0.08 by itself, 2 x 0.08 at the filter.
    expect(facts().lossK).toBeCloseTo(4.82, 9)
  })

  test('of two like pumps each sends half the flow through its own, so that it loses a quarter', () => {
    // 4.66 / 4 + 0.16 + 2 for the tee where they come together.
    expect(facts({ pumps: 2 }).lossK).toBeCloseTo(3.325, 9)
  })

  test('a dirty filter loses 12 in more than a clean one at the flow of the sample bay', () => {
    // 32 gpm = 0.00201889 m3/s in 2.067 in = 0.0525018 m: 0.93257 m/s, v2/2g = 44.343 mm. 304.8 / 44.343 = 6.874.
    const { filterCleanK, filterDirtyK } = facts()
    expect(filterDirtyK - filterCleanK).toBeCloseTo(6.874, 2)
  })

  test('the filter loses the same head in whatever pipe it stands', () => {
    // Velocity heads go with the bore to the fourth: (2.067 / 1.049)^4 = 15.075.
    expect(facts().filterDirtyK / facts({ discharge: 'pe-1' }).filterDirtyK).toBeCloseTo(15.075, 2)
  })

  test('two filters in parallel lose a quarter, none loses nothing', () => {
    expect(facts({ filter: 'two-in-parallel' }).filterDirtyK).toBeCloseTo(facts().filterDirtyK / 4, 9)
    expect(facts({ filter: 'none' })).toMatchObject({ filterCleanK: 0, filterDirtyK: 0 })
  })

  test('a bypass of a quarter lets a quarter back where the pump gives two thirds of its greatest head', () => {
    const own = {
      pump: 'own',
      curve: [
        { flowLph: 0, headMm: feet(24) },
        { flowLph: gpm(40), headMm: feet(16) },
        { flowLph: gpm(60), headMm: feet(4) },
      ],
      bypassShare: 0.25,
    }
    // 16 ft at 40 gpm: 10 gpm go back, 0.29143 m/s in 2.067 in, v2/2g = 4.3304 mm. 4876.8 / 4.3304 = 1126.2.
    expect(facts(own).bypass!.lossK).toBeCloseTo(1126.2, 0)
    expect(facts().bypass).toBeUndefined()
  })
})

describe('a curve of one’s own', () => {
  const curve = (points: readonly (readonly [number, number])[]) =>
    sumpSchema.safeParse({
      kind: 'sump',
      id: 'sump-1',
      at: at(0, 0),
      curve: points.map(([flowLph, headMm]) => ({ flowLph, headMm })),
    }).success

  test.each([
    [
      'rising flow, falling head',
      [
        [0, 3000],
        [1000, 2000],
        [2000, 0],
      ],
      true,
    ],
    [
      'two points',
      [
        [0, 3000],
        [1000, 2000],
      ],
      false,
    ],
    [
      'begins with flow',
      [
        [10, 3000],
        [1000, 2000],
        [2000, 0],
      ],
      false,
    ],
    [
      'flow stands still',
      [
        [0, 3000],
        [1000, 2000],
        [1000, 0],
      ],
      false,
    ],
    [
      'head rises',
      [
        [0, 3000],
        [1000, 3100],
        [2000, 0],
      ],
      false,
    ],
    [
      'head stays',
      [
        [0, 3000],
        [1000, 3000],
        [2000, 0],
      ],
      false,
    ],
    [
      'a head under none',
      [
        [0, 3000],
        [1000, 2000],
        [2000, -1],
      ],
      false,
    ],
  ] as const)('%s', (_, points, isTaken) => {
    expect(curve(points)).toBe(isTaken)
  })
})
