import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { squareOn } from '../../../src/sheets/settingOut/squares'
import { feet, inches } from '../../../src/units/length'

const inFeet = (alongFt: number, acrossFt: number) => {
  const square = squareOn(feet(alongFt), feet(acrossFt), 'feet-inches')!
  return [square.acrossMm, square.alongMm, square.betweenMm].map((mm) => mm / feet(1))
}

describe('the largest 3-4-5 on two sides', () => {
  // Multiples of 3-4-5 that every builder knows: 3-4-5, 6-8-10, 9-12-15, 12-16-20. Common practice, no source.
  test.each([
    [4, 3, [3, 4, 5]],
    [8, 6, [6, 8, 10]],
    [12.5, 9.5, [9, 12, 15]],
    [17, 12, [12, 16, 20]],
  ])('of %d ft by %d ft is %j', (along, across, marks) => {
    expect(inFeet(along, across)).toEqual(marks.map((ft) => expect.closeTo(ft, 9)))
  })

  test('lies the other way where that is larger', () => {
    expect(inFeet(6, 8)).toEqual([8, 6, 10].map((ft) => expect.closeTo(ft, 9)))
  })

  test('is in whole inches on a row narrower than three feet', () => {
    // 30 in across: 30-40-50.
    const square = squareOn(inches(96), inches(30), 'feet-inches')!
    expect(square.acrossMm).toBeCloseTo(inches(30), 6)
    expect(square.alongMm).toBeCloseTo(inches(40), 6)
    expect(square.betweenMm).toBeCloseTo(inches(50), 6)
  })

  test('is in tenths of a metre on a metric tape', () => {
    // Across 1105 mm (43-1/2 in): three times 300 mm; along four times, between five times.
    expect(squareOn(9000, 1105, 'metric')).toEqual({ alongMm: 1200, acrossMm: 900, betweenMm: 1500 })
  })

  test('is never longer than a tape, and none on sides too short for one', () => {
    expect(squareOn(feet(400), feet(300), 'feet-inches')!.betweenMm).toBeCloseTo(feet(100), 6)
    expect(squareOn(20, 20, 'feet-inches')).toBeUndefined()
    expect(squareOn(0, 9000, 'metric')).toBeUndefined()
  })

  test('is square, within both sides, on any two sides', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 130, max: 40_000, noNaN: true }),
        fc.double({ min: 130, max: 40_000, noNaN: true }),
        fc.constantFrom('feet-inches' as const, 'metric' as const),
        (alongMm, acrossMm, units) => {
          const square = squareOn(alongMm, acrossMm, units)!
          expect(square.alongMm).toBeLessThanOrEqual(alongMm + 1e-6)
          expect(square.acrossMm).toBeLessThanOrEqual(acrossMm + 1e-6)
          // Pythagoras.
          expect(square.alongMm ** 2 + square.acrossMm ** 2).toBeCloseTo(square.betweenMm ** 2, 1)
        },
      ),
      { seed: 6202, numRuns: 200 },
    )
  })
})
