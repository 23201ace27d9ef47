import { describe, expect, test } from 'vitest'
import { baseRow } from '../../src/catalogue/priceBook/baseBook'
import { countRule, pieceRule } from '../../src/catalogue/countRules'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import type { Evaluation } from '../../src/evaluate/evaluation'
import { placesOf } from '../../src/evaluate/places'
import { pieceLines, stockAndMark } from '../../src/evaluate/takeOff/pieces'
import { scenarios } from '../support/scenarios'

/*
 * The sample bay counted by hand. Three rows in the north of 3 racks of 120 in (360 in), three in the south of 2 racks
 * (240 in); 8 bars and 3 riser pairs between rack ends to a rack, 4 lines. Numbers of members and screws: worked example of the
 * trade notes, hand arithmetic.
 */

const sample = beforeChecks(scenarios['kestrel-bend-house-2']!())

const lineOf = ({ counts }: Evaluation, item: string) => counts.find((line) => line.item === item)

const counted = (...items: readonly string[]): Record<string, number> =>
  Object.fromEntries(items.map((item) => [item, lineOf(sample, item)?.count ?? 0]))

const inPart = (name: string, item: string): number => {
  const part = sample.layout.parts.find((one) => one.name === name)!
  return lineOf(sample, item)?.perPart.get(part.id) ?? 0
}

const pieces = pieceLines([...sample.bay.built, ...sample.bay.joinedPipes])
const piecesOf = (item: string): number => pieces.find((line) => line.item === item)?.count ?? 0

describe('members of the sample bay', () => {
  test('risers, bars, rails and sleeves', () => {
    // Pairs: 3 x 4 + 1 = 13 a north row, 2 x 4 + 1 = 9 a south row; 3 x 13 + 3 x 9 = 66, two risers each: 132.
    // Sleeve risers 2 x (racks - 1): 4 a north row, 2 a south row: 18 in all; 132 - 18 = 114 plain.
    // Bars 8 a rack: 3 x 24 + 3 x 16 = 120. Rails 2 a rack: 15 racks, 30. Sleeves as many as sleeve risers.
    const items = ['lumber-2x4#RS-s', 'lumber-2x4#RS-p', 'conduit-3/4#HB', 'conduit-3/4#RL', 'conduit-1#SV']
    expect(items.map(piecesOf)).toEqual([18, 114, 120, 30, 18])
    const north = pieces.map(({ item, perPart }) => [item, perPart.get('rack-row-1') ?? 0] as const)
    const inNorth = new Map(north)
    expect(inNorth.get('lumber-2x4#RS-s')! + inNorth.get('lumber-2x4#RS-p')!).toBe(26)
    expect([inNorth.get('conduit-3/4#HB'), inNorth.get('conduit-1#SV')]).toEqual([24, 4])
  })

  test('screws: 1,926, and 5 % over 2,022', () => {
    // Riser pairs 66 x 18 = 1,188.
    // Splices: a runner line is 357-1/4 in long in the north, 3 pieces and 2 splices, and 237-1/4 in in the south, 2 pieces and
    // 1; two lines a row: 3 x 4 + 3 x 2 = 18; x 8 = 144.
    // Bearers: 360 / 24 + 1 = 16 and 240 / 24 + 1 = 11; 3 x 16 + 3 x 11 = 81; x 4 = 324.
    // Braces: side braces 4 a row = 24; cross braces at both ends and every sleeve pair, 4 and 3 = 21; 45 x 6 = 270.
    expect(counted('screw')).toEqual({ screw: 1188 + 144 + 324 + 270 })
    expect(lineOf(sample, 'screw')?.count).toBe(1926)
    expect(Math.round(1926 * 1.05)).toBe(2022)
  })

  test('what goes on the conduit, and the holes that it goes through', () => {
    expect(
      counted('end-cap-3/4', 'bar-stop-3/4', 'rail-stop-3/4', 'sleeve-screw', 'rail-hole', 'sleeve-hole'),
    ).toEqual({
      // Both ends of 120 bars, and four ends of rail lines a row: 240 + 24.
      'end-cap-3/4': 264,
      'bar-stop-3/4': 4 * 120,
      'rail-stop-3/4': 2 * 6,
      'sleeve-screw': 2 * 18,
      'rail-hole': 114,
      'sleeve-hole': 18,
    })
  })

  test('gutters', () => {
    expect(piecesOf('gutter-5in#GT')).toBe(3 * 4 * 3 + 3 * 4 * 2)
    expect(counted('gutter-joiner-5in', 'gutter-end-cap-5in', 'gutter-outlet-2', 'gutter-strap-5in')).toEqual(
      {
        'gutter-joiner-5in': 3 * 4 * 2 + 3 * 4 * 1,
        'gutter-end-cap-5in': 2 * 24,
        'gutter-outlet-2': 24,
        'gutter-strap-5in': 4 * 81,
      },
    )
  })

  test('gutter shims by the piece', () => {
    // 1/4 in at the low end and 1/16 in a foot more uphill: at a bearer 24 k in from the high end the stack is 34 - 2 k
    // sixteenths in the north, k = 0 to 15, and 24 - 2 k in the south, k = 0 to 10. Bearers that make way for a riser pair move by less than 5 in,
    // under half a sixteenth of fall. In sixteenths, largest piece first:
    // 34 = 2 x 16 + 2; 32 = 2 x 16; 30 = 16 + 8 + 4 + 2; 28 = 16 + 8 + 4; 26 = 16 + 8 + 2; 24 = 16 + 8; 22 = 16 + 4 + 2;
    // 20 = 16 + 4; 18 = 16 + 2; 16; 14 = 8 + 4 + 2; 12 = 8 + 4; 10 = 8 + 2; 8; 6 = 4 + 2; 4.
    // North, one line: 12 of 1 in, 8 of 1/2, 8 of 1/4, 8 of 1/8. South, from 24 down: 5, 5, 6, 5. Four lines, three rows.
    const sizes = ['1', '1/2', '1/4', '1/8', '1/16'].map((size) => `gutter-shim-${size}`)
    expect(Object.values(counted(...sizes))).toEqual(
      [12 + 5, 8 + 5, 8 + 6, 8 + 5, 0].map((oneLine) => oneLine * 4 * 3),
    )
  })

  test('feet and towers', () => {
    expect(counted('foot-plate', 'tower', 'hook', 'hook-tie')).toEqual({
      'foot-plate': 132,
      tower: 480,
      hook: 480,
      'hook-tie': 480,
    })
  })
})

describe('water of one zone of the sample bay', () => {
  test('clamps of N1, straight, two laterals, by its barbed ends', () => {
    // Barbs of 1 in: saddle 1; elbows at foot, head and end of the header 3 x 2; tee on the header 3; adapters 2 x 1; big ends of
    // two reducers 2: 14. The pipe from the main to the riser turns twice: elbows 2 x 2 more. All above ground and under
    // 1-1/4 in: one clamp each.
    expect(inPart('N1', 'clamp-pe-1')).toBe(14 + 4)
    // Barbs of 3/4 in: small ends of the reducers 2, tees for sight tubes 2 x 3, flush caps 2.
    expect(inPart('N1', 'clamp-pe-3/4')).toBe(2 + 6 + 2)
  })

  test('fittings of N1', () => {
    const items = [
      'union-pe-1',
      'ball-valve-pe-1',
      'trim-valve-pe-1',
      'nipple-pe-1',
      'sight-tube',
      'barb-1/8',
    ]
    expect(items.map((item) => inPart('N1', item))).toEqual([1, 1, 1, 2, 2, 96])
    // 96 towers, 2 in 100, rounded up.
    expect(inPart('N1', 'goof-plug')).toBe(2)
    // 24 bars x 2 laterals, 96 tubes, 15 fittings x 2.
    expect(inPart('N1', 'zip-tie')).toBe(48 + 96 + 30)
  })

  test('tape on the threads of the bay', () => {
    // 1 in threads: 12 adapters, 12 nipples with two: 36. 2 in: 4 adapters, 5 nipples: 14. Four turns of 3.1416 x 1.315 = 4.131 in and
    // of 3.1416 x 2.375 = 7.461 in: 36 x 4 x 4.131 + 14 x 4 x 7.461 = 1,012.7 in = 84.39 ft. Diameters: ASME B1.20.1.
    expect(lineOf(sample, 'ptfe-tape')).toMatchObject({ unit: 'ft', count: expect.closeTo(84.39, 1) })
  })
})

describe('drains and pit of the sample bay', () => {
  test('outlets, holes, joints and ends', () => {
    // Each line of 274 in is two sticks of 120 in and 34 in: two joints. Both have a cleanout for a cap.
    expect(
      counted('drop', 'drain-hole', 'bell-joint', 'drain-cleanout-4in', 'drain-cap-4in', 'pit-boot'),
    ).toEqual({
      drop: 24,
      'drain-hole': 24,
      'bell-joint': 4,
      'drain-cleanout-4in': 2,
      'drain-cap-4in': 0,
      // Two drains and the overflow.
      'pit-boot': 3,
    })
  })

  test('lining and lid by their area', () => {
    // The pit is 36 x 114 in and 37 deep: 114 + 2 x 37 + 2 x 12 = 212 by 36 + 74 + 24 = 134 in: 28,408 sq in, 197.28 sq ft.
    expect(lineOf(sample, 'pit-lining')).toMatchObject({ unit: 'ft2', count: expect.closeTo(197.28, 2) })
    // 122 x 44 = 5,368 sq in, 37.28 sq ft.
    expect(lineOf(sample, 'pit-lid')).toMatchObject({ unit: 'ft2', count: expect.closeTo(37.28, 2) })
  })

  test('overflow and floats', () => {
    const items = ['overflow-pipe-2', 'overflow-screen-2', 'make-up-valve', 'pump-float', 'alarm-float']
    expect(Object.values(counted(...items))).toEqual([1, 1, 1, 1, 2])
  })
})

describe.each(Object.entries(scenarios))('every line of %s', (_, layoutOf) => {
  const evaluation = beforeChecks(layoutOf())
  const all = pieceLines([...evaluation.bay.built, ...evaluation.bay.joinedPipes])

  test('is the sum of what its parts bring', () => {
    for (const { item, count, perPart } of [...evaluation.counts, ...all]) {
      const sum = [...perPart.values()].reduce((a, b) => a + b, 0)
      expect([item, sum]).toEqual([item, expect.closeTo(count, 6)])
    }
  })

  test('has a rule in words and, where it is bought, a row in the price book', () => {
    for (const { item } of evaluation.counts)
      expect([item, countRule(item)]).toEqual([item, expect.stringMatching(/\.$/)])
    for (const { item } of all)
      expect([item, pieceRule(stockAndMark(item)[1]!)]).toEqual([item, expect.stringMatching(/\.$/)])
    for (const { item } of evaluation.counts) expect([item, baseRow(item)?.key]).toEqual([item, item])
  })

  test('has as many places on the plan as pieces', () => {
    for (const { item, unit, count } of [...evaluation.counts, ...all])
      if (unit === 'piece') expect([item, placesOf(evaluation, item).count]).toEqual([item, count])
      else expect(placesOf(evaluation, item).count).toBeGreaterThan(0)
  })
})

test('a stock is pointed out in any length that it is bought in, and nothing where the bay has none', () => {
  const everywhere = placesOf(sample, 'conduit-3/4').count
  expect(everywhere).toBe(120 + 30)
  expect(placesOf(sample, 'conduit-3/4@10ft').count).toBe(everywhere)
  expect(placesOf(sample, 'gutter-outlet-1/2')).toMatchObject({ points: [], lines: [], count: 0 })
})
