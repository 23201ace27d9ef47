import { describe, expect, test } from 'vitest'
import { isRight, rightPieces } from '../../../src/evaluate/sawn/rightPieces'
import type { Piece, PieceRule } from '../../../src/solvers/cutting/problem'
import { inches, toTicks } from '../../../src/units/length'

const ticks = (inch: number): number => toTicks(inches(inch))

const saw = { kerfTicks: ticks(1 / 8), trimTicks: 0 }

const wanted = (inch: number, count: number, minusInch = 0, rule: PieceRule = { kind: 'exact' }): Piece => ({
  lengthTicks: ticks(inch),
  count,
  minusTicks: ticks(minusInch),
  rule,
})

const cut = (inch: number, count: number) => ({ ticks: ticks(inch), count })

describe('a cut piece does for a line', () => {
  // Common practice, no source: a tape tells a sixteenth, and the crew may cut a cross-piece a sixteenth short.
  test.each([
    ['its own length', 43.5, true],
    ['as short as the crew may cut it', 43.4375, true],
    ['shorter than that', 43.40625, false],
    ['a sixteenth over', 43.5625, true],
    ['more than a sixteenth over', 43.59375, false],
  ])('%s', (_, inch, isSo) => {
    expect(isRight(ticks(inch), wanted(43.5, 1, 1 / 16), saw)).toBe(isSo)
  })

  test('a half of a board that came longer than its name does, as long as it comes', () => {
    // (144-1/2 - 1/8) / 2 = 72-3/16, a quarter over the drawn 71-15/16.
    const half: PieceRule = { kind: 'equal-parts', parts: 2, stockTicks: ticks(144.5) }
    expect(isRight(ticks(72.1875), wanted(71.9375, 1, 0, half), saw)).toBe(true)
    expect(isRight(ticks(72.1875), wanted(71.9375, 1), saw)).toBe(false)
  })
})

describe('like cut pieces go', () => {
  test('to the line nearest in length, and to the next once that has enough', () => {
    // Ten of 43-1/2 in: four for the line of that length, six for the one a sixteenth under it.
    const lines = [wanted(43.5, 4), wanted(43.4375, 20)]
    expect(rightPieces(lines, [cut(43.5, 10)], saw)).toEqual([
      { cut: 0, line: 0, count: 4 },
      { cut: 0, line: 1, count: 6 },
    ])
  })

  test('nowhere once all have enough', () => {
    expect(rightPieces([wanted(57, 3)], [cut(57, 2), cut(57, 5)], saw)).toEqual([
      { cut: 0, line: 0, count: 2 },
      { cut: 1, line: 0, count: 1 },
    ])
  })
})
