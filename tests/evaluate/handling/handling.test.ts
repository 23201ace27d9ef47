import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { easingsOf } from '../../../src/evaluate/handling/easing'
import { handlingOf, type LineLift, type RowHandling } from '../../../src/evaluate/handling/handling'
import { armOf, liftedOf } from '../../../src/evaluate/handling/lifted'
import { inches, toInches } from '../../../src/units/length'
import { pounds, toPounds } from '../../../src/units/mass'
import { bay, type Sketch } from '../../support/bay'

const rowsOf = (sketch: Sketch): readonly RowHandling[] => [
  ...handlingOf(evaluate(sketch.layout()).bay).values(),
]

const rowOf = (sketch: Sketch): RowHandling => {
  const [row] = rowsOf(sketch)
  if (!row) throw new RangeError('The bay has no row with towers.')
  return row
}

const from = ({ lines }: RowHandling, line: number, side: 'left' | 'right'): LineLift => {
  const found = lines.find((each) => each.line === line && each.side === side)
  if (!found) throw new RangeError(`Line ${line} is not there.`)
  return found
}

/** In the middle of the floor: a person can stand on both sides. */
const open = (values = {}): Sketch => bay('30 x 60 ft').row('A', [165, 100], values)

/** 12 in off the west wall on its left, where nobody stands. */
const oneSided = (): Sketch => bay('30 x 60 ft').row('A', [45, 100])

// Hand arithmetic, four lines 18 in apart (9 and 27 in from the centreline), rails 40 in apart. Bearers are half of 60 in board less half
// a kerf, 59-15/16 in: 29.969 in stick out. Ankles stand 3 in further, at 32.969 in. Bars at 72-3/4 in: hands at 64-3/4.
describe('four lines between two aisles', () => {
  const row = rowOf(open())

  test('stands where bearers stick out, and 3 in off', () => {
    expect(toInches(row.right.hardV)).toBeCloseTo(29.969, 2)
    expect(toInches(row.left.standV)).toBeCloseTo(-32.969, 2)
    expect([row.left.isOpen, row.right.isOpen]).toEqual([true, true])
  })

  test('hangs outer lines close by and inner lines at 24 in with a turn', () => {
    expect(toInches(row.handsMm)).toBeCloseTo(64.75, 2)
    // 32.969 - 27 is 5.97 in, and nobody holds a wet tower nearer than 12.
    expect(from(row, 4, 'right').lift).toMatchObject({ reachMm: inches(12), twistDeg: 0 })
    expect(toInches(from(row, 3, 'right').lift.reachMm)).toBeCloseTo(23.969, 2)
    expect(from(row, 3, 'right')).toMatchObject({ past: 1, arm: 'every arm', lift: { twistDeg: 30 } })
    expect(toInches(from(row, 1, 'right').lift.reachMm)).toBeCloseTo(59.969, 2)
    expect(from(row, 1, 'right')).toMatchObject({
      past: 3,
      word: 'Out of reach',
      index: Infinity,
      arm: 'no arm',
    })
  })

  test('has the index of the equation', () => {
    // Outer: 51 x 10/12 x (1 - 0.0075 x 34.75) x (0.82 + 1.8/34.75) x 0.94 x 0.9
    //      = 42.5 x 0.73938 x 0.87180 x 0.846 = 23.18 lb; 25 / 23.18 = 1.08.
    expect(toPounds(from(row, 4, 'right').limitKg)).toBeCloseTo(23.18, 1)
    expect(from(row, 4, 'right').index).toBeCloseTo(1.08, 2)
    // Inner: the same by 12/23.969 and by 1 - 0.0032 x 30 = 0.904: 23.18 x 0.50065 x 0.904 = 10.49 lb; 25 / 10.49 = 2.38.
    expect(from(row, 3, 'right').index).toBeCloseTo(2.38, 2)
    expect(from(row, 3, 'right').word).toBe('Over limit')
    expect(from(row, 4, 'right').multipliers).toMatchObject({ pace: 0.94, grip: 0.9, twist: 1 })
  })

  test('is best worked from the nearer aisle, each line', () => {
    expect(row.best.map(({ line, side }) => `${line} ${side}`)).toEqual([
      '1 left',
      '2 left',
      '3 right',
      '4 right',
    ])
    expect([2, 3]).toContain(row.worst?.line)
  })

  test('wants a step: over 66 in, and over a small woman’s 71.1', () => {
    expect([row.isStepNeeded, row.isOverSmallReach]).toEqual([true, true])
  })

  test('has rail ends at eye height, 55.9 to 71.9 in, and bar ends just over it', () => {
    // Middle of the bars 72.75 - 0.922/2 = 72.29 in, of the rails another 0.922 lower: 71.37 in.
    const [bars, rails] = row.ends
    expect(toInches(bars!.lowMm)).toBeCloseTo(72.29, 1)
    expect(toInches(rails!.lowMm)).toBeCloseTo(71.37, 1)
    expect([bars!.isAtEyes, rails!.isAtEyes]).toEqual([false, true])
  })

  test('is the same turned and mirrored', () => {
    const indexes = ({ best }: RowHandling) => best.map(({ index }) => index.toFixed(9))
    for (const heading of [0, 90, 180, 270] as const)
      expect(indexes(rowOf(bay('60 x 60 ft').row('A', [360, 360], { heading })))).toEqual(indexes(row))
  })
})

describe('a row along a wall', () => {
  const row = rowOf(oneSided())

  test('is hung from one side, however far', () => {
    expect([row.left.isOpen, row.right.isOpen]).toEqual([false, true])
    expect(row.best.map(({ side }) => side)).toEqual(['right', 'right', 'right', 'right'])
    expect(row.worst).toMatchObject({ line: 1, word: 'Out of reach' })
  })

  test('would be eased most by an aisle on the other side', () => {
    const [most] = easingsOf(row, row.worst!)
    expect(most).toMatchObject({ key: 'other-side', lifted: { word: 'Over limit' } })
    expect(most!.lifted.index).toBeCloseTo(1.08, 2)
  })

  test('aisles on both sides beat towers of half the weight', () => {
    const half = rowOf(oneSided().settings({ wetTowerKg: pounds(12.5) }))
    expect(half.worst!.index).toBeGreaterThan(rowOf(open()).worst!.index)
  })
})

test('a row between two walls has no line that can be hung', () => {
  const row = rowOf(bay('90 x 720 in').row('A', [45, 100]))
  expect(row).toMatchObject({ isShut: true, best: [], worst: undefined })
})

test('a bay of troughs alone has nothing to hang', () => {
  expect(rowsOf(bay('30 x 60 ft').trough('T', [100, 100]))).toEqual([])
})

test('grip, pace, where ankles stand and what a tower weighs are the bay’s own', () => {
  const row = rowOf(open())
  const eased = rowOf(open().settings({ grip: 'good', liftsAMin: 0.2 }))
  // 1 / 0.9 for the grip and 1 / 0.94 for the pace.
  expect(eased.worst!.limitKg / row.worst!.limitKg).toBeCloseTo(1 / 0.846, 9)
  const far = rowOf(open().settings({ shin: 8 }))
  expect(toInches(far.worst!.lift.reachMm)).toBeCloseTo(28.969, 2)
  expect(far.worst!.word).toBe('Out of reach')
  const light = rowOf(open().settings({ wetTowerKg: pounds(10) }))
  expect(light.worst!.index / row.worst!.index).toBeCloseTo(10 / 25, 9)
  const weighed = rowOf(open({ weighedKg: pounds(20) }))
  expect([weighed.isWeighed, row.isWeighed]).toEqual([true, false])
  expect(toPounds(weighed.loadKg)).toBeCloseTo(20, 6)
})

test('a shorter tower hangs lower, and its bars need no step', () => {
  // Bars at 12-3/4 + 48 = 60-3/4 in.
  const row = rowOf(open({ tower: 48 }))
  expect(toInches(row.handsMm)).toBeCloseTo(52.75, 2)
  expect([row.isStepNeeded, row.isOverSmallReach]).toEqual([false, false])
  expect(row.ends.map(({ isAtEyes }) => isAtEyes)).toEqual([true, true])
})

test('floor that lies lower makes bars higher for whoever stands on it', () => {
  const flat = rowOf(open())
  const falls = rowOf(open().level([0, 0], 0).level([360, 0], 0).level([0, 720], -2).level([360, 720], -2))
  expect(falls.barTopMm).toBeGreaterThan(flat.barTopMm + inches(0.9))
})

test('every easing makes it easier, the most first', () => {
  const row = rowOf(open())
  const easings = easingsOf(row, row.worst!)
  // Near 23.969/12 = 2.00 times the weight; grip 1/0.9 = 1.11; straight 1/0.904 = 1.106; on a step 1 - 0.0075 x 24.75 over 1 - 0.0075 x 34.75, 1.10.
  expect(easings.map(({ key }) => key)).toEqual(['near', 'grip', 'straight', 'step'])
  const indexes = easings.map(({ lifted }) => lifted.index)
  expect(indexes).toEqual(indexes.toSorted((a, b) => a - b))
  for (const index of indexes) expect(index).toBeLessThan(row.worst!.index)
})

// Over 1 risk is raised for some workers, over 3 for many (NIOSH Publication 94-110, from memory).
test.each([
  [10, 'Under limit'],
  [20, 'Under limit'],
  [20.1, 'Over limit'],
  [60, 'Over limit'],
  [61, 'Far over'],
])('%d times a twentieth of what is recommended', (twentieths, word) => {
  const lift = { reachMm: 300, handsMm: 900, travelMm: 400, twistDeg: 0, grip: 'good', liftsAMin: 1 } as const
  const { limitKg } = liftedOf(lift, 1)
  expect(liftedOf(lift, (limitKg * twentieths) / 20).word).toBe(word)
})

// Grip reach ahead: 25.8 in of a small woman, 33.3 in of a tall man (Pheasant, Bodyspace, 1996).
test.each([
  [25.8, 'every arm'],
  [25.9, 'long arms'],
  [33.3, 'long arms'],
  [33.4, 'no arm'],
])('%d in ahead is for %s', (reach, arm) => {
  expect(armOf(inches(reach))).toBe(arm)
})
