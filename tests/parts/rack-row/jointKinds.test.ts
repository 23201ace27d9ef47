import { describe, expect, test } from 'vitest'
import { rackRow } from '../../../src/parts/rack-row/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, toInches } from '../../../src/units/length'
import { build, countOf, facts, marked, pieces, row } from '../../support/rackRows'

/*
 * Rails, joiners and holes of each kind of joint: worked examples of the trade notes, hand arithmetic, in inches. Outside and
 * inside of conduit: Steel Tube Institute, EMT Weights and Dimensions (1/2: 0.706 / 0.622; 3/4: 0.922 / 0.824; 1: 1.163 / 1.049).
 */

/** Rows start at 50 in and run up the plan. */
const along = (mm: number): number => toInches(mm) - 50

const pairsU = (part: RackRow): number[] =>
  [...new Set(build(part).supports.map(({ at }) => Math.round(along(at.y) * 1000) / 1000))].sort(
    (a, b) => a - b,
  )

describe('J2, a sleeve in the gap between two racks', () => {
  const part = row({ joint: 'J2', rackGapMm: inches(12) })
  const built = build(part)

  /*
   * Racks of 120 from the middle of one gap to the middle of the next, gap g = 12: riser centres of one rack
   * L_c = 120 - 12 = 108, and rails L_c + g - c = 108 + 12 - 1/4 = 119-3/4 as in J1. End rails are whole sticks, so the end
   * pairs stand 120 - 1/8 + 2-1/4 - 120 = 2-1/8 in.
   */
  test('rails are as in J1: L_c + g - c', () => {
    expect(pieces(built, 'RL')).toEqual(['4 x 120', '2 x 119.75'])
  })

  test('each rack has end pairs of its own, 12 in apart across the gap, and three evenly between', () => {
    // The middle rack: 126 to 234, 108 / 4 = 27 apart. End racks: 0 to 114, 28.5 apart, the first one at 2.125.
    expect(pairsU(part)).toEqual([
      2.125, 28.5, 57, 85.5, 114, 126, 153, 180, 207, 234, 246, 274.5, 303, 331.5, 357.875,
    ])
  })

  test('all holes are plain and equal', () => {
    expect(marked(built, 'RS-p')).toHaveLength(30)
    expect(marked(built, 'RS-s', 'RS-d')).toEqual([])
    expect(built.rack!.drilledFor.map(({ stock }) => stock)).toEqual(['conduit-3/4'])
    expect(new Set(marked(built, 'RS-p').map(({ holes }) => holes[0]!.centreMm))).toEqual(
      new Set([built.rack!.plainHoleMm]),
    )
  })

  test('a sleeve of 2 x 4 + 1/4 stands in the middle of each gap and hangs on the rails', () => {
    const sleeves = marked(built, 'SV')
    expect(pieces(built, 'SV')).toEqual(['4 x 8.25'])
    expect(new Set(sleeves.map(({ from, to }) => Math.round(along((from.y + to.y) / 2))))).toEqual(
      new Set([120, 240]),
    )
    const [rail] = marked(built, 'RL')
    const [sleeve] = sleeves
    // Its inside top is the rails' top: (1.049 - 0.922) / 2 = 0.0635 lower than they, middle to middle.
    expect(toInches(rail!.from.z - sleeve!.from.z)).toBeCloseTo(0.0635, 4)
  })

  test('the gap lets the sleeve slide home: 8-1/4 + 1-1/2 + 1 = 10-3/4 at least, and is half a rack at most', () => {
    const gap = (more: Partial<RackRow>) => {
      const us = pairsU({ ...part, racks: 2, midPairs: 0, ...more })
      return us[2]! - us[1]!
    }
    expect(gap({ rackGapMm: inches(4) })).toBeCloseTo(10.75, 3)
    // Insertion of 8: 16-1/4 + 1-1/2 + 1.
    expect(gap({ rackGapMm: inches(4), insertionMm: inches(8) })).toBeCloseTo(18.75, 3)
    expect(gap({ rackGapMm: inches(48) })).toBeCloseTo(48, 3)
    expect(gap({ rackGapMm: inches(48), rackLengthMm: inches(60) })).toBeCloseTo(30, 3)
  })

  test('runners part in the gaps, so that the racks come apart', () => {
    // 120 - 2.125 + 0.75 = 118.625 at the ends, 120 between.
    expect(pieces(built, 'BR')).toEqual(['2 x 120', '4 x 118.625'])
    expect(pieces(built, 'SP')).toEqual(['4 x 16'])
  })

  test('each rack is braced by itself: both end bays a side, both end pairs across', () => {
    expect(marked(built, 'SB')).toHaveLength(3 * 4)
    expect(marked(built, 'XB')).toHaveLength(3 * 2)
  })

  test('bars, troughs and the length of the row are those of J1', () => {
    const sleeved = build(row())
    const places = (all: typeof built) =>
      marked(all, 'HB', 'GT').map(({ from, lengthMm }) => [from.x, from.y, lengthMm])
    expect(places(built)).toEqual(places(sleeved))
    expect(built.rack!.runMm).toBe(sleeved.rack!.runMm)
    expect(built.rack!.barToSleeveMm).toBe(sleeved.rack!.barToSleeveMm)
  })

  test('the gap that the schema has keeps risers off the bars at a pitch of 15', () => {
    // Bars 7-1/2 from the middle of the gap, risers 5-1/2: 2 - 0.75 - 0.461.
    expect(toInches(facts(row({ joint: 'J2' })).barToRiserMm)).toBeCloseTo(0.789, 3)
  })

  test('a single rack is a single rack, whatever its joint', () => {
    expect(build(row({ joint: 'J2', racks: 1 })).sticks).toEqual(build(row({ racks: 1 })).sticks)
  })

  test('two rows are chained as any', () => {
    const one = row({ joint: 'J2', racks: 1 })
    const next = { ...one, id: 'rack-row-2' as const, at: { x: one.at.x, y: one.at.y + inches(120) } }
    expect(rackRow.chain!(one, next)).toEqual({ ...one, racks: 2 })
  })
})

describe('J4, a dowel inside the rails', () => {
  const part = row({ joint: 'J4' })
  const built = build(part)

  test('rails as in J1, risers all plain', () => {
    expect(pieces(built, 'RL')).toEqual(['4 x 120', '2 x 119.75'])
    expect(marked(built, 'RS-p')).toHaveLength(26)
    expect(marked(built, 'RS-s', 'RS-d', 'SV')).toEqual([])
    expect(pairsU(part)).toEqual(pairsU(row()))
  })

  test('a dowel of 1/2 in conduit, 2 x 4 + 1/4 long, with the middle of the rails as its own', () => {
    const dowels = marked(built, 'DW')
    expect(pieces(built, 'DW')).toEqual(['4 x 8.25'])
    expect(new Set(dowels.map(({ stock }) => stock))).toEqual(new Set(['conduit-1/2']))
    expect(dowels[0]!.from.z).toBeCloseTo(marked(built, 'RL')[0]!.from.z, 9)
  })

  test('it goes loosely into the rails: 0.824 - 0.706 = 0.118, which tape shims', () => {
    const { goesIn, boreMm, insideOdMm, insertionMm } = built.rack!.railJoint!
    expect([goesIn, toInches(insertionMm)]).toEqual(['dowel', expect.closeTo(4, 9)])
    expect(toInches(boreMm - insideOdMm)).toBeCloseTo(0.118, 4)
  })

  test('nothing goes into the smallest rail, and the row says so', () => {
    const { railJoint } = facts(row({ joint: 'J4', rail: '1/2' }))
    expect(railJoint!.insideOdMm).toBeGreaterThan(railJoint!.boreMm)
  })

  test('a screw in each rail holds it', () => {
    expect(countOf(built, 'sleeve-screw')).toBe(2 * 4)
    expect(countOf(built, 'rail-clamp-3/4')).toBe(0)
  })
})

describe('J5, rails lapped side by side', () => {
  const part = row({ joint: 'J5', rackLengthMm: inches(108) })
  const built = build(part)

  /*
   * Racks of 108, lap 8: inside rails 108 + 8 = 116, end rails 108 + 4 + 2-1/4 = 114-1/4. At 120 end rails would be 126-1/4,
   * so the end pairs stand in by 6-1/4; inside ones are 128, which no stick gives.
   */
  test('inside rails are a lap longer than their rack, end rails half a lap', () => {
    expect(pieces(built, 'RL')).toEqual(['2 x 116', '4 x 114.25'])
    expect(pairsU(part)[0]).toBe(0)
    const long = row({ joint: 'J5' })
    expect(pieces(build(long), 'RL')).toEqual(['2 x 128', '4 x 120'])
    expect(pairsU(long)[0]).toBeCloseTo(6.25, 3)
  })

  test('rails of every other rack lie one rail further out on each side, all at one height', () => {
    const rails = marked(built, 'RL')
    const spacing = (rack: number) => {
      const xs = rails.filter((rail) => rail.rack === rack).map(({ from }) => toInches(from.x))
      return Math.max(...xs) - Math.min(...xs)
    }
    // W = 40: 40 - 0.922 in racks 1 and 3, 40 + 0.922 in rack 2.
    expect([0, 1, 2].map(spacing)).toEqual([39.078, 40.922, 39.078].map((mm) => expect.closeTo(mm, 6)))
    expect(new Set(rails.map(({ from }) => from.z.toFixed(6))).size).toBe(1)
  })

  test('where they pass each other they touch: 0.922 middle to middle', () => {
    const left = marked(built, 'RL').filter(({ from }) => from.x < inches(100))
    expect(toInches(Math.abs(left[0]!.from.x - left[1]!.from.x))).toBeCloseTo(0.922, 6)
    expect(along(left[0]!.to.y) - along(left[1]!.from.y)).toBeCloseTo(8, 6)
  })

  test('risers stand in line; each hole is half a rail off its middle, and shared risers have two', () => {
    const risers = marked(built, 'RS-p', 'RS-d')
    const xs = new Set(risers.map(({ from }) => Math.round(toInches(from.x) * 1000) / 1000))
    expect(xs).toEqual(new Set([80, 120]))
    for (const { holes } of risers)
      for (const { asideMm } of holes) expect(toInches(Math.abs(asideMm!))).toBeCloseTo(0.461, 6)
    expect(marked(built, 'RS-d')).toHaveLength(4)
    const [first, second] = marked(built, 'RS-d')[0]!.holes
    expect(toInches(Math.abs(first!.asideMm! - second!.asideMm!))).toBeCloseTo(0.922, 6)
    // Left of such a riser at its edges: 1.75 - 0.461 - 0.469 = 0.820 of wood each side.
    expect(1.75 - toInches(Math.abs(first!.asideMm!) + first!.diameterMm / 2)).toBeCloseTo(0.82, 3)
  })

  test('each rail runs through the middles of its own holes', () => {
    for (const riser of marked(built, 'RS-p', 'RS-d'))
      for (const { asideMm } of riser.holes) {
        // The row runs up the plan and its gutters fall that way: right of it is +x.
        const x = riser.from.x + asideMm!
        const through = marked(built, 'RL').filter(
          ({ from, to }) =>
            Math.abs(from.x - x) < 1e-6 && from.y < riser.from.y + 1 && to.y > riser.from.y - 1,
        )
        expect(through).toHaveLength(1)
      }
  })

  test('clamped, capped at every end, not screwed', () => {
    expect(countOf(built, 'rail-clamp-3/4')).toBe(2 * 4)
    expect(countOf(built, 'sleeve-screw')).toBe(0)
    // Six rails and 24 bars, both ends.
    expect(countOf(built, 'end-cap-3/4')).toBe(2 * 6 + 2 * 24)
    expect(built.rack!.railJoint).toBeUndefined()
  })

  test('a bar reaches 2 in past the outer rails', () => {
    // Lines of 5: (5 - 1) x 5 + 2 x 1.5 = 23 < 40 + 0.922 + 4.
    expect(pieces(build({ ...part, lines: 5, lineSpacingMm: inches(5) }), 'HB')).toEqual(['24 x 44.922'])
  })
})

describe('what is bought for a joint', () => {
  test.each([
    ['J1', 'SV', 'conduit-1'],
    ['J2', 'SV', 'conduit-1'],
    ['J4', 'DW', 'conduit-1/2'],
  ] as const)('%s: one %s of %s a joint and side, two screws each', (joint, mark, stock) => {
    const built = build(row({ joint, racks: 5 }))
    expect(marked(built, mark).map((stick) => stick.stock)).toEqual(Array<string>(8).fill(stock))
    expect(countOf(built, 'sleeve-screw')).toBe(16)
  })
})
