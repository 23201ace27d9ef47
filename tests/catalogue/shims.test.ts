import fc from 'fast-check'
import { expect, test } from 'vitest'
import { shimStack } from '../../src/catalogue/shims'
import { inches, toInches } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'

/** The pieces one by one, mm. */
const piecesMm = (heightMm: number): number[] =>
  shimStack(heightMm).flatMap(({ thickMm, count }) => Array<number>(count).fill(thickMm))

const stack = (inch: number): number[] => piecesMm(inches(inch)).map(toInches)

// Common practice, no source: 1, 1/2, 1/4, 1/8 and 1/16 in pieces, the largest first.
test.each([
  [1.75, [1, 0.5, 0.25]],
  [2.125, [1, 1, 0.125]],
  [0.3125, [0.25, 0.0625]],
  [0.25, [0.25]],
  [0.04, [0.0625]],
  [0.03, []],
  [0, []],
  [-1, []],
])('%d in is packed with %j', (height, pieces) => {
  expect(stack(height)).toEqual(pieces)
})

test('halfway between two sixteenths the stack is as high as the tape reads', () => {
  const atSaw = writerFor('feet-inches')
  for (let thirtySeconds = 1; thirtySeconds < 400; thirtySeconds += 2) {
    const heightMm = inches(thirtySeconds / 32)
    const stackedMm = piecesMm(heightMm).reduce((sum, pieceMm) => sum + pieceMm, 0)
    expect(atSaw.onTape(stackedMm)).toBe(atSaw.onTape(heightMm))
  }
})

test('an absurd height is counted as quickly as any', () => {
  expect(shimStack(inches(1e9))).toEqual([{ thickMm: inches(1), count: 1e9 }])
})

test('a stack misses its height by no more than half of the thinnest shim, and no piece could be swapped for a thicker', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 6, noNaN: true }), (height) => {
      const pieces = stack(height)
      const total = pieces.reduce((sum, piece) => sum + piece, 0)
      expect(Math.abs(total - height)).toBeLessThanOrEqual(1 / 32 + 1e-9)
      const thin = pieces.filter((piece) => piece < 1)
      expect(new Set(thin).size).toBe(thin.length)
      expect(pieces).toEqual(pieces.toSorted((a, b) => b - a))
    }),
    { seed: 4015 },
  )
})
