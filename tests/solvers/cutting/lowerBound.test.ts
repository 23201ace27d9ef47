import { describe, expect, test } from 'vitest'
import { attainableFrom } from '../../../src/solvers/cutting/attainable'
import { lowerBound } from '../../../src/solvers/cutting/lowerBound'
import type { CuttingProblem, Piece, Stock } from '../../../src/solvers/cutting/problem'
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

// All hand arithmetic, in cents.
describe('the bound in prices', () => {
  const stock = (lengthIn: number, cost: number, most?: number): Stock => ({
    lengthTicks: inch(lengthIn),
    cost,
    ...(most === undefined ? {} : { most }),
  })
  const boundOf = (stocks: readonly Stock[], wanted: readonly Piece[]): number =>
    lowerBound({ ...cutFrom([], wanted), stocks })

  test('is what pieces over half a board cost each, on the cheapest board that holds them', () => {
    expect(boundOf([stock(120, 900), stock(144, 800)], [pieces(5, 100)])).toBe(4000)
    expect(boundOf([stock(96, 700), stock(144, 1000)], [pieces(2, 90), pieces(3, 100)])).toBe(4400)
  })

  test('counts small pieces at the least price that a full board gives them', () => {
    // Three of 43-1/2 on a twelve at 960: 320 each; two on an eight at 700: 350 each. Six: 1,920.
    expect(boundOf([stock(96, 700), stock(144, 960)], [pieces(6, 43.5)])).toBe(1920)
  })

  test('gives away what leftovers can save, and no more', () => {
    // Seven of 100 at 900 each; two leftovers of 110 take two, one of 90 none.
    const leftovers = [stock(110, 0, 2), stock(90, 0, 1)]
    expect(boundOf([stock(120, 900), ...leftovers], [pieces(7, 100)])).toBe(4500)
    // 30 of 43-1/2: ten twelves at 960, or nine and three leftovers of 50.
    expect(boundOf([stock(144, 960), stock(50, 0, 3)], [pieces(30, 43.5)])).toBe(8640)
  })

  test('counts a lot that is on sale as far as it goes', () => {
    // Three boards at 500, the rest at 900: 1,500 + 4 x 900.
    expect(boundOf([stock(120, 900), stock(120, 500, 3)], [pieces(7, 100)])).toBe(5100)
  })

  test('is nothing where boards cost nothing', () => {
    expect(boundOf([stock(120, 0), stock(144, 900)], [pieces(7, 100)])).toBe(0)
    expect(boundOf([stock(120, 0, 9)], [pieces(7, 100)])).toBe(0)
  })

  test('is a sum of prices', () => {
    // A twelve gives 28 of 5 in (28 x 5 + 27/8 = 143-3/8) for 7, so 1/4 each; a ten 23 for 6, a little more. 50 are 12-1/2, and sums of
    // sixes and sevens are 12, 13, 14.
    expect(boundOf([stock(120, 6), stock(144, 7)], [pieces(50, 5)])).toBe(13)
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
