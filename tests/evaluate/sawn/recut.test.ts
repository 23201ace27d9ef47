import { describe, expect, test } from 'vitest'
import { recut } from '../../../src/evaluate/sawn/recut'
import type { Piece } from '../../../src/solvers/cutting/problem'
import { inches, toInches, fromTicks, toTicks } from '../../../src/units/length'

const ticks = (inch: number): number => toTicks(inches(inch))
const KERF = ticks(1 / 8)

const wanted = (inch: number, count: number, minusInch = 0): Piece => ({
  lengthTicks: ticks(inch),
  count,
  minusTicks: ticks(minusInch),
  rule: { kind: 'exact' },
})

const cut = (inch: number, count: number) => ({ ticks: ticks(inch), count })

/** In 1/32 in, whole, as inches. */
const inchesOf = (of: number): number => Math.round(toInches(fromTicks(of)) * 32) / 32

/** What comes of each: cut piece, how many, lengths in inches, rest in inches. */
const said = (...asked: Parameters<typeof recut>) =>
  recut(...asked).map((each) => [
    each.cut,
    each.count,
    each.makes.map(({ lengthTicks }) => inchesOf(lengthTicks)),
    inchesOf(each.restTicks),
  ])

describe('what is cut wrong is made into what is wanted', () => {
  test('the longest want first, of the shortest piece that holds it, a kerf a cut', () => {
    // 70 of a 72: 72 - 70 - 1/8 = 1-7/8 left. 49-3/4 of the 50: 1/8 left. Then 35 of the other 72, and another of its rest of
    // 36-7/8: 36-7/8 - 35 - 1/8 = 1-3/4 left. The third 35 finds nothing.
    const wants = [wanted(35, 3), wanted(70, 1), wanted(49.75, 1)]
    expect(said(wants, [cut(72, 2), cut(50, 1)], KERF)).toEqual([
      [0, 1, [70], 1.875],
      [1, 1, [49.75], 0.125],
      [0, 1, [35, 35], 1.75],
    ])
  })

  test('two pieces of one want a kerf between them: 2 x 36 come of no 72', () => {
    expect(said([wanted(36, 2)], [cut(72, 1)], KERF)).toEqual([[0, 1, [36], 35.875]])
    expect(said([wanted(36, 2)], [cut(72, 1)], 0)).toEqual([[0, 1, [36, 36], 0]])
    // A sixteenth short is allowed twice: the second takes what is left of the first.
    expect(said([wanted(36, 2, 1 / 8)], [cut(72, 1)], KERF)).toEqual([[0, 1, [36, 35.875], 0]])
  })

  test('thousands of like pieces are one', () => {
    expect(said([wanted(69.875, 2600)], [cut(71.9375, 2808)], KERF)).toEqual([[0, 2600, [69.875], 1.9375]])
  })

  test('nothing is made of nothing, or for nothing', () => {
    expect([recut([], [cut(72, 1)], KERF), recut([wanted(72, 1)], [], KERF)]).toEqual([[], []])
    expect(recut([wanted(73, 1)], [cut(72, 9)], KERF)).toEqual([])
  })
})
