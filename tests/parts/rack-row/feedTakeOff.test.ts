import { describe, expect, test } from 'vitest'
import type { Built, Tube } from '../../../src/model/built'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { toInches } from '../../../src/units/length'
import { build, countOf, joineryOf, row } from '../../support/rackRows'

/*
 * Take-off rules of a zone: worked example of the trade notes, hand arithmetic. Counts of barbed ends and of clamps: common
 * practice, no source; two clamps on 1-1/4 in pipe and over: a pipe maker's guide to joining polyethylene pipe.
 *
 * The row: 3 racks of 120 in = 360 in, 24 stations of 4 towers = 96 towers, rails 40 in apart, lines 18 in apart. Two laterals
 * of 3/4 in at -18 and 18 in, 76 in up; riser pipe and header of 1 in, at the left riser, -20 in, from 4 in up.
 */

const WATER = new RegExp(
  '^(?:sight-tube$|goof-plug|zip-tie|barb-|(?:elbow|tee|coupling|adapter|union|nipple|ball-valve|trim-valve' +
    '|sight-tube-tee|lateral-flush-cap|lateral-flush-valve|lateral-plug|clamp|reducing-coupling)-(?:pe|drip))',
)

/** All that is counted for the water, by its key. */
const taken = (built: Built): Record<string, number> => {
  const counts: Record<string, number> = {}
  for (const { item } of built.fittings) if (WATER.test(item)) counts[item] = (counts[item] ?? 0) + 1
  return counts
}

/** `2 x 387.600` and so on, longest first, inches. */
const cut = (built: Built, ...roles: readonly Tube['role'][]): string[] => {
  const lengths = built.tubes
    .filter(({ role }) => roles.includes(role))
    .map(({ lengthMm }) => toInches(lengthMm).toFixed(3))
  const counts = new Map<string, number>()
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1)
  return [...counts]
    .sort(([a], [b]) => Number(b) - Number(a))
    .map(([length, count]) => `${count} x ${length}`)
}

/** What every zone of this row has, whichever way it is fed. */
const always = {
  'adapter-pe-1': 2,
  'union-pe-1': 1,
  // Union to ball valve, ball valve to trim valve: their threads are inside.
  'nipple-pe-1': 2,
  'ball-valve-pe-1': 1,
  'trim-valve-pe-1': 1,
  'barb-1/8': 96,
  // 2 in 100 of 96 is 1.92.
  'goof-plug': 2,
}

describe('a zone counted by hand', () => {
  test('straight', () => {
    const built = build(row())
    expect(taken(built)).toEqual({
      ...always,
      'elbow-pe-1': 3, // foot, head, end of the header
      'tee-pe-1': 1, // the first of two laterals
      'reducing-coupling-pe-1-to-3/4': 2,
      'sight-tube-tee-pe-3/4': 2,
      'sight-tube': 2,
      'lateral-flush-cap-pe-3/4': 2,
      // Elbows 3 x 2, adapters 2 x 1, tee 3, big ends of the reducers 2. The saddle on the main brings its own.
      'clamp-pe-1': 6 + 2 + 3 + 2,
      // Small ends of the reducers 2, sight tube tees 2 x 3, caps 2.
      'clamp-pe-3/4': 2 + 6 + 2,
      // Bars 24 x 2, tubes 96, fittings 3 + 2 + 3 + 1 + 2 + 2 + 2 = 15 at 2 each.
      'zip-tie': 48 + 96 + 30,
    })
    // 76 - 4 = 72, and 18 + 20 = 38, each with a hundredth over; 360 x 1.01 + 2 x 12.
    expect(cut(built, 'riser-pipe')).toEqual(['1 x 72.720'])
    expect(cut(built, 'header')).toEqual(['1 x 38.380'])
    expect(cut(built, 'lateral')).toEqual(['2 x 387.600'])
    expect(cut(built, 'sub-header')).toEqual([])
  })

  test('split once', () => {
    const built = build(row({ feed: 'centre-split' }))
    expect(taken(built)).toEqual({
      ...always,
      'elbow-pe-1': 2, // foot and head; the header ends in a centre tee
      'tee-pe-1': 1,
      'tee-pe-3/4': 2, // a centre tee for each lateral
      'reducing-coupling-pe-1-to-3/4': 2,
      'sight-tube-tee-pe-3/4': 4,
      'sight-tube': 4,
      'lateral-flush-cap-pe-3/4': 4,
      // Elbows 2 x 2, adapters 2, tee 3, reducers 2.
      'clamp-pe-1': 4 + 2 + 3 + 2,
      // Reducers 2, centre tees 2 x 3, sight tube tees 4 x 3, caps 4.
      'clamp-pe-3/4': 2 + 6 + 12 + 4,
      // Fittings 2 + 2 + 3 + 1 + 2 + 2 + 4 + 4 = 20.
      'zip-tie': 48 + 96 + 40,
    })
    expect(cut(built, 'header')).toEqual(['1 x 38.380'])
    // 180 x 1.01 + 12: in all 2 x 360 x 1.01 and a foot at each of four ends, as of a straight feed.
    expect(cut(built, 'lateral')).toEqual(['4 x 193.800'])
  })

  test('split twice', () => {
    const built = build(row({ feed: 'double-split' }))
    expect(taken(built)).toEqual({
      ...always,
      'elbow-pe-1': 2,
      'tee-pe-1': 1 + 2, // on the header, and a centre tee for each lateral
      'tee-pe-3/4': 4, // quarter tees
      'coupling-pe-3/4': 2, // the inner ends, joined
      'reducing-coupling-pe-1-to-3/4': 4, // from the sub-headers to the quarter tees
      'sight-tube-tee-pe-3/4': 4,
      'sight-tube': 4,
      'lateral-flush-cap-pe-3/4': 4,
      // Elbows 2 x 2, adapters 2, tees 3 x 3, reducers 4.
      'clamp-pe-1': 4 + 2 + 9 + 4,
      // Reducers 4, quarter tees 4 x 3, couplings 2 x 2, sight tube tees 4 x 3, caps 4.
      'clamp-pe-3/4': 4 + 12 + 4 + 12 + 4,
      // Fittings 2 + 2 + 3 + 3 + 4 + 2 + 4 + 4 + 4 = 28.
      'zip-tie': 48 + 96 + 56,
    })
    // Sub-headers lie 2 in beside the laterals: from -20 to 16 across, and 90 in along while they close up by 2.
    expect(cut(built, 'header')).toEqual(['1 x 36.360'])
    expect(cut(built, 'sub-header')).toEqual([`4 x ${(Math.sqrt(90 * 90 + 2 * 2) * 1.01).toFixed(3)}`])
    // Outer runs 90 x 1.01 + 12, inner runs 90 x 1.01.
    expect(cut(built, 'lateral')).toEqual(['4 x 102.900', '4 x 90.900'])
  })

  test('ring', () => {
    const built = build(row({ feed: 'ring' }))
    expect(taken(built)).toEqual({
      ...always,
      'elbow-pe-1': 3,
      'tee-pe-1': 1,
      'tee-pe-3/4': 2, // both far corners, with a stub to flush through
      'reducing-coupling-pe-1-to-3/4': 2,
      'sight-tube-tee-pe-3/4': 2,
      'sight-tube': 2,
      'lateral-flush-cap-pe-3/4': 2,
      'clamp-pe-1': 13,
      // Reducers 2, corners 2 x 3, sight tube tees 2 x 3, caps 2.
      'clamp-pe-3/4': 2 + 6 + 6 + 2,
      // Fittings 3 + 2 + 3 + 1 + 2 + 2 + 2 + 2 = 17.
      'zip-tie': 48 + 96 + 34,
    })
    // The cross pipe at the far end: from -18 to 18.
    expect(cut(built, 'header')).toEqual(['1 x 38.380', '1 x 36.360'])
    expect(cut(built, 'lateral')).toEqual(['2 x 387.600'])
  })
})

describe('what a zone takes', () => {
  test.each<[string, Partial<RackRow>, Record<string, number>]>([
    [
      'behind another row’s valve: no riser, no valves',
      { valveSet: 'shared' },
      { 'elbow-pe-1': 1, 'tee-pe-1': 1, 'reducing-coupling-pe-1-to-3/4': 2 },
    ],
    [
      'a header as wide as its laterals: no reducers',
      { header: 'pe-3/4' },
      { 'elbow-pe-3/4': 3, 'tee-pe-3/4': 1 },
    ],
    [
      'drip tubing: its own fittings',
      { lateral: 'drip-3/4' },
      { 'elbow-drip-1': 3, 'tee-drip-1': 1, 'reducing-coupling-drip-1-to-3/4': 2 },
    ],
    [
      'the biggest drip tubing: nothing bigger to step down from',
      { lateral: 'drip-1' },
      { 'elbow-drip-1': 3, 'tee-drip-1': 1 },
    ],
    [
      'a lateral wider than its header: reducers the other way',
      { lateral: 'pe-1', header: 'pe-3/4' },
      { 'elbow-pe-3/4': 3, 'tee-pe-3/4': 1, 'reducing-coupling-pe-1-to-3/4': 2 },
    ],
  ])('%s', (_, values, counts) => {
    const built = build(row(values))
    const nouns = ['elbow', 'tee', 'reducing-coupling']
    const found = Object.fromEntries(
      Object.entries(taken(built)).filter(([item]) =>
        nouns.some((noun) => new RegExp(`^${noun}-(?:pe|drip)`).test(item)),
      ),
    )
    expect(found).toEqual(counts)
  })

  test('families are joined by what no shop has, for a rule to speak of', () => {
    const built = build(row({ lateral: 'drip-3/4', header: 'pe-1' }))
    expect(countOf(built, 'family-adapter')).toBe(2)
    expect(new Set(built.feed!.pipes.map(({ stock }) => stock))).toEqual(new Set(['pe-1', 'drip-3/4']))
  })

  test('1-1/4 in header: two clamps an end', () => {
    const built = build(row({ lateral: 'pe-1' }))
    // As the 1 in header of the straight zone above, 13 ends; laterals of 1 in take one clamp an end, 10 ends.
    expect([countOf(built, 'clamp-pe-1-1/4'), countOf(built, 'clamp-pe-1')]).toEqual([26, 10])
  })

  test('ends by choice', () => {
    const ends = (values: Partial<RackRow>) => {
      const built = build(row(values))
      const nouns = ['lateral-flush-cap', 'lateral-flush-valve', 'lateral-plug', 'sight-tube-tee']
      return nouns.map((noun) => joineryOf(built, noun))
    }
    expect(ends({})).toEqual([2, 0, 0, 2])
    expect(ends({ flushEnd: 'valve', sightTube: false })).toEqual([0, 2, 0, 0])
    expect(ends({ flushEnd: 'none' })).toEqual([0, 0, 2, 2])
    // Nothing closes a ring that has no stubs.
    expect(ends({ feed: 'ring', flushEnd: 'none', sightTube: false })).toEqual([0, 0, 0, 0])
  })

  test('a ring without stubs turns in elbows, and takes a tee for each lateral between', () => {
    const built = build(row({ feed: 'ring', laterals: 4, flushEnd: 'none', sightTube: false }))
    expect([countOf(built, 'elbow-pe-3/4'), countOf(built, 'tee-pe-3/4')]).toEqual([2, 2])
  })

  test('tubes of 1/4 in take their own barbs', () => {
    const built = build(row({ microtube: 'tube-1/4' }))
    expect([countOf(built, 'barb-1/4'), countOf(built, 'barb-1/8')]).toEqual([96, 0])
  })

  test('a tower that is taken out takes no barb, no tube, no tie', () => {
    const counts = (takenOut: number[]) => {
      const built = build(row({ takenOut }))
      return [countOf(built, 'barb-1/8'), countOf(built, 'zip-tie')]
    }
    expect(counts([3, 17, 95])).toEqual([93, 174 - 3])
  })
})

describe('the header', () => {
  // Lines 30 in apart, a lateral each: -45, -15, 15, 45 in; the riser pipe at -20 stands between the first and the second.
  const forked = build(row({ lineSpacingMm: 762, laterals: 4 }))

  test('forks where laterals lie on both sides of the riser pipe', () => {
    // -20 to -45, and -20 to 45.
    expect(cut(forked, 'header')).toEqual(['1 x 65.650', '1 x 25.250'])
  })

  test('has as many tees and elbows then as from one side', () => {
    // A tee at the head, and two for the laterals at -15 and 15; elbows at the foot and at both ends.
    expect([countOf(forked, 'tee-pe-1'), countOf(forked, 'elbow-pe-1')]).toEqual([3, 3])
  })

  test('begins in a tee where a lateral lies right over the riser pipe', () => {
    // Rails and lines 30 in apart, a lateral each: -15, over the riser pipe, and 15.
    const built = build(row({ lines: 2, laterals: 2, lineSpacingMm: 762, railSpacingMm: 762 }))
    expect(cut(built, 'header')).toEqual(['1 x 30.300'])
    expect([countOf(built, 'tee-pe-1'), countOf(built, 'elbow-pe-1')]).toEqual([1, 3])
  })

  test('runs along the row to the middle where no riser pair stands there', () => {
    // Pairs only between racks: 0, 120, 240, 360. From the one at 120 along to 180, 60 in, then across 38.
    const built = build(row({ feed: 'centre-split', midPairs: 0 }))
    expect(cut(built, 'header')).toEqual(['1 x 98.980'])
    // Foot, head and corner.
    expect(countOf(built, 'elbow-pe-1')).toBe(3)
  })
})

test('a split fed from an end of the row has a header along it, and an elbow where that turns', () => {
  const built = build(row({ feed: 'centre-split', riserAt: 'inlet-end' }))
  // 180 along and 38 across, with a hundredth over; elbows at foot, head and corner, all else as from the middle.
  expect(cut(built, 'header')).toEqual(['1 x 220.180'])
  expect(cut(built, 'lateral')).toEqual(['4 x 193.800'])
  const middle = taken(build(row({ feed: 'centre-split' })))
  expect(taken(built)).toEqual({ ...middle, 'elbow-pe-1': 3, 'clamp-pe-1': 11 + 2, 'zip-tie': 184 + 2 })
})

test('a lateral longer than a coil is joined of equal pieces', () => {
  // 20 racks: 2400 in, 2400 x 1.01 + 24 = 2448 in a lateral; a coil of 100 ft has 1200, so three pieces, two couplings.
  const built = build(row({ racks: 20 }))
  expect(countOf(built, 'coupling-pe-3/4')).toBe(4)
  // 800 x 1.01 and a foot at the ends.
  expect(cut(built, 'lateral')).toEqual(['4 x 820.000', '2 x 808.000'])
})
