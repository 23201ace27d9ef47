import { describe, expect, test } from 'vitest'
import { compareFeeds, type FeedChoice } from '../../../src/evaluate/water/compareFeeds'
import { quarterTurn } from '../../../src/geometry/motion'
import { gph } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { bay } from '../../support/bay'
import { drawnWater, rowOf } from '../../support/drawnWater'
import { movedBay } from '../../support/wholeBay'

/** Three racks of eight bars at 15 in: 24 stations. A 2 in header loses next to nothing, so that the lateral is alone. */
const layout = bay('30 x 96 ft').row('A', [100, 60], { lines: 2, laterals: 1, header: 'pe-2' }).layout()
const row = rowOf(layout)
const choices = compareFeeds(row, drawnWater(layout))

const choice = (kind: string, lateral: string, isGraded = false, from = choices): FeedChoice =>
  from.find((each) => each.kind === kind && each.lateral === lateral && each.isGraded === isGraded)!

const percent = ({ alone }: FeedChoice): number => 100 * alone.figures.spread

describe('24 stations of 2 towers at 15 in and 4 gph', () => {
  // Worked example of the trade notes, hand arithmetic; spread in per cent, head at the lateral in inches. Worked with
  // Churchill's factor, 2 in of pipe a barb and nothing lost on the way in: our own law is up to 0.35 points away by itself,
  // and a fed end, with its elbow and reducing coupling, loses half an inch of head more.
  test.each([
    ['straight', 'pe-3/4', 31.6, 10.1],
    ['centre-split', 'pe-3/4', 6.4, 7.5],
    ['double-split', 'pe-3/4', 0.7, 7.1],
    ['straight', 'pe-1', 13.5, 8.1],
    ['centre-split', 'pe-1', 2.1, 7.2],
  ])('%s in %s spreads by %d per cent under %d in', (kind, lateral, spread, headIn) => {
    const found = choice(kind, lateral)
    expect(Math.abs(percent(found) - spread)).toBeLessThan(0.7)
    const overIn = found.alone.entryHeadMm / inches(1) - headIn
    expect(overIn).toBeGreaterThan(-0.1)
    expect(overIn).toBeLessThan(1)
  })

  // The same: a lateral of its own for each line, 3/4 in straight: 11.5 per cent.
  test('a lateral a line spreads by 11.5 per cent', () => {
    const own = { ...row, laterals: 2 }
    const found = choice(
      'straight',
      'pe-3/4',
      false,
      compareFeeds(own, drawnWater({ ...layout, parts: [own] })),
    )
    expect(Math.abs(percent(found) - 11.5)).toBeLessThan(0.7)
  })

  // The same: four colour groups bring the straight lateral of 3/4 in to 9.5 per cent, with not a fitting more.
  test('tubes cut by station make the straight one even without a fitting more', () => {
    const graded = choice('straight', 'pe-3/4', true)
    expect(percent(graded)).toBeLessThan(9.6)
    expect(graded.alone.state).toBe('Even')
    expect(graded.difference.counts).toEqual([])
    expect(graded.difference.lengths.map(({ stock }) => stock)).toEqual(['tube-1/8'])
  })

  test('each gives its towers 4 gph on the average', () => {
    for (const { alone } of choices) expect(alone.figures.meanLph / gph(4)).toBeCloseTo(1, 4)
  })

  test('the states are those of the spread', () => {
    expect(choice('straight', 'pe-3/4').alone.state).toBe('Starved')
    expect(choice('straight', 'pe-1').alone.state).toBe('Drifting')
    expect(choice('centre-split', 'pe-3/4').alone.state).toBe('Even')
  })
})

describe('what a split takes more', () => {
  const { counts, pieces, cents, unpriced, lengths } = choice('centre-split', 'pe-3/4').difference

  // By hand, one lateral: the elbow at the end of the header goes (2 barbs with 2 clamps each on 2 in pipe, 2 ties); a centre
  // tee comes (3 barbs, 2 ties), and at the second end a flush cap (1 barb, 2 ties) and a sight tube on a tee (3 barbs,
  // 2 ties).
  test('is counted by hand', () => {
    expect(Object.fromEntries(counts.map(({ item, change }) => [item, change]))).toEqual({
      'elbow-pe-2': -1,
      'clamp-pe-2': -4,
      'tee-pe-3/4': 1,
      'lateral-flush-cap-pe-3/4': 1,
      'sight-tube': 1,
      'sight-tube-tee-pe-3/4': 1,
      'clamp-pe-3/4': 3 + 1 + 3,
      'zip-tie': -2 + 2 + 2 + 2,
    })
    expect(pieces).toBe(-1 - 4 + 1 + 1 + 1 + 1 + 7 + 4)
  })

  // Placeholder prices: elbow 140, ten clamps 720 and 216, tee 58, cap 36, sight tube 90, its tee 74, a hundred ties 300 cents;
  // 7 of the small clamps are 151.2.
  test('is paid for by hand', () => {
    const pipes = lengths.reduce((sum, length) => sum + (length.cents ?? NaN), 0)
    expect(cents - pipes).toBe(-140 - 4 * 72 + 58 + 36 + 90 + 74 + 151 + 4 * 3)
    expect(unpriced).toBe(0)
  })

  test('without prices says so, and is not free', () => {
    const found = choice(
      'centre-split',
      'pe-3/4',
      false,
      compareFeeds(row, drawnWater(layout), () => undefined),
    )
    expect(found.difference.unpriced).toBe(counts.length + lengths.length)
    expect(found.difference.counts.every((change) => change.cents === undefined)).toBe(true)
  })
})

describe('the list', () => {
  test('is in the order of kinds, then of sizes, with the drawn row once', () => {
    const sizes = ['pe-1/2', 'pe-3/4', 'pe-1', 'drip-1/2', 'drip-3/4', 'drip-1']
    const named = choices.map(
      ({ kind, lateral, isGraded }) => `${kind} ${lateral}${isGraded ? ' graded' : ''}`,
    )
    expect(named).toEqual([
      ...sizes.map((size) => `straight ${size}`),
      'straight pe-3/4 graded',
      ...['centre-split', 'double-split', 'ring'].flatMap((kind) => sizes.map((size) => `${kind} ${size}`)),
    ])
    expect(choices.filter(({ isChosen }) => isChosen)).toEqual([choice('straight', 'pe-3/4')])
    expect(choice('straight', 'pe-3/4').difference).toMatchObject({ counts: [], lengths: [], cents: 0 })
  })

  test('offers only pipe of the family that the row is made of', () => {
    expect(
      choices.filter(({ isOffered }) => isOffered).every(({ lateral }) => lateral.startsWith('pe-')),
    ).toBe(true)
  })

  test('has what one press writes: the row so written is the one that is then chosen, as it was told', () => {
    for (const told of choices.filter((_, i) => i % 6 === 0)) {
      const pressed = { ...row, ...told.values }
      const then = compareFeeds(pressed, drawnWater({ ...layout, parts: [pressed] })).filter(
        ({ isChosen }) => isChosen,
      )
      expect(then).toHaveLength(1)
      expect(then[0]!.kind).toBe(told.kind)
      expect(then[0]!.alone.figures.spread).toBeCloseTo(told.alone.figures.spread, 9)
      expect(then[0]!.pieces).toBe(told.pieces)
    }
  })

  test('is the same for the same row wherever it stands', () => {
    const moved = movedBay(layout, quarterTurn({ x: 4000, y: 700 }))
    const there = compareFeeds(rowOf(moved), drawnWater(moved))
    there.forEach(({ alone }, i) =>
      expect(alone.figures.spread).toBeCloseTo(choices[i]!.alone.figures.spread, 6),
    )
  })

  test('is remembered while row and bay are the same', () => {
    const water = drawnWater(layout)
    expect(compareFeeds(row, water)).toBe(compareFeeds(row, { ...water, levels: { ...water.levels } }))
    const warmer = { ...water, settings: { ...water.settings, waterC: 24 } }
    expect(compareFeeds(row, warmer)).not.toBe(compareFeeds(row, water))
  })

  test('is made beside the bay, whose joins stay the very same', () => {
    const piped = bay('30 x 96 ft')
      .row('A', [100, 60])
      .row('B', [200, 60], { valveSet: 'shared' })
      .main('M', [
        [40, 40],
        [240, 40],
      ])
      .layout()
    const before = drawnWater(piped)
    for (const name of ['A', 'B']) expect(compareFeeds(rowOf(piped, name), before)).not.toEqual([])
    drawnWater(piped).joins.forEach((join, i) => expect(join).toBe(before.joins[i]))
  })

  test('has no ring for a single line, and nothing for a row without towers', () => {
    const single = { ...row, lines: 1 }
    const kinds = compareFeeds(single, drawnWater({ ...layout, parts: [single] })).map(({ kind }) => kind)
    expect(kinds).not.toContain('ring')
    const empty = { ...row, takenOut: Array.from({ length: 48 }, (_, i) => i) }
    expect(compareFeeds(empty, drawnWater({ ...layout, parts: [empty] }))).toEqual([])
  })
})

describe('a row with its tubes cut by station already', () => {
  const gradedTubes = [
    { stations: 6, lengthMm: inches(40) },
    { stations: 6, lengthMm: inches(37) },
  ]
  test('split is in the list as it is drawn, beside the same with tubes alike', () => {
    const split = { ...row, feed: 'centre-split' as const, gradedTubes }
    const list = compareFeeds(split, drawnWater({ ...layout, parts: [split] }))
    expect(choice('centre-split', 'pe-3/4', true, list).isChosen).toBe(true)
    expect(choice('centre-split', 'pe-3/4', false, list).isChosen).toBe(false)
    expect(choice('straight', 'pe-3/4', true, list).isChosen).toBe(false)
  })
})
