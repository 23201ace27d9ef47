import { describe, expect, test } from 'vitest'
import { attainableFrom } from '../../../src/solvers/cutting/attainable'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import type { CuttingProblem } from '../../../src/solvers/cutting/problem'
import { cutFrom, equalParts, exact, inch, pieces, uncut } from './sampleLumber'

const boundIn = (problem: CuttingProblem): number => lowerBound(problem) / inch(1)

// All hand arithmetic: each expected value is the least that anyone could buy, or says why it is less.
describe('the bound', () => {
  test('nothing costs nothing, and what is too long costs nothing', () => {
    expect(boundIn(cutFrom([120], []))).toBe(0)
    expect(boundIn(cutFrom([120], [pieces(9, 130)]))).toBe(0)
    expect(boundIn(cutFrom([], [pieces(9, 30)]))).toBe(0)
  })

  test('one small piece costs the shortest board', () => {
    expect(boundIn(cutFrom([144, 120], [pieces(1, 1)]))).toBe(120)
  })

  test('pieces over half a board cost a board each', () => {
    expect(boundIn(cutFrom([120], [pieces(5, 60)]))).toBe(600)
    expect(boundIn(cutFrom([96, 120], [pieces(5, 61), pieces(3, 110)]))).toBe(5 * 96 + 3 * 120)
  })

  test('three to a board where four just don’t fit', () => {
    expect(boundIn(cutFrom([144], [pieces(30, 43.5)]))).toBe(1440)
    expect(boundIn(cutFrom([120], [pieces(40, 30)]))).toBe(14 * 120)
  })

  test('what is over beside big pieces is used by small ones', () => {
    // 10 boards of 70 have room for 49-7/8 each: 20 pieces of 24 go there, the 21st takes a board.
    expect(boundIn(cutFrom([120], [pieces(10, 70), pieces(20, 24)]))).toBe(1200)
    expect(boundIn(cutFrom([120], [pieces(10, 70), pieces(21, 24)]))).toBe(1320)
  })

  test('rules settle their own boards, and an odd half is used', () => {
    expect(
      boundIn(cutFrom([120, 144], [pieces(3, 59.9375, equalParts(2, 120)), pieces(2, 144, uncut(144))])),
    ).toBe(2 * 120 + 2 * 144)
    expect(boundIn(cutFrom([120], [pieces(1, 59.9375, equalParts(2, 120)), pieces(1, 59.9375)]))).toBe(120)
    expect(boundIn(cutFrom([120], [pieces(1, 59.9375, equalParts(2, 120)), pieces(1, 60)]))).toBe(240)
  })

  test('a big piece may take the free rest of a started board', () => {
    // A third of the board is a mate, 79.9 in are free: enough for one of the 70s.
    expect(boundIn(cutFrom([120], [pieces(1, 39.875, equalParts(3, 120)), pieces(2, 70)]))).toBe(240)
  })

  test('counts on every tolerance', () => {
    expect(boundIn(cutFrom([120], [pieces(2, 60, exact, 1 / 16)]))).toBe(120)
  })

  test('is a sum of stock lengths', () => {
    // 250 in of wood: 240 are too few, and 10 and 12 ft make 264.
    expect(boundIn(cutFrom([120, 144], [pieces(50, 5)], { kerf: 0 }))).toBe(264)
  })
})

describe('least sum of stock lengths from', () => {
  const sums = (lengths: readonly number[], most: number): number[] => {
    const reached = new Set([0])
    for (const sum of reached)
      for (const length of lengths) if (sum + length <= most) reached.add(sum + length)
    return [...reached].sort((a, b) => a - b)
  }

  test.each([[[120, 144]], [[96, 120, 144, 168, 192]], [[7, 11]], [[6, 10, 15]], [[50]], [[9, 21, 33]]])(
    '%j is the next sum that counting up reaches',
    (lengths) => {
      const reached = sums(lengths, 2000)
      for (let least = 0; least <= 1500; least += 1)
        expect(attainableFrom(least, lengths)).toBe(reached.find((sum) => sum >= least))
    },
  )

  test('lengths without a common step are left as they are when the table would be too long', () => {
    expect(attainableFrom(1_000_003, [1_219_201, 975_360])).toBeLessThanOrEqual(1_219_201)
    expect(attainableFrom(1_000_003, [1_219_201, 975_360])).toBeGreaterThanOrEqual(1_000_003)
  })
})
