import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gutterOf, gutters, widthAtDepth } from '../../src/catalogue/gutter'
import { inches, toInches } from '../../src/units/length'

const five = gutterOf('gutter-5in')

describe('width inside', () => {
  // Worked example of the trade notes, hand arithmetic: a tip 2-1/4 in below the lip of a 5 in gutter meets about 3.8 in.
  test('2-1/4 in below the lip a 5 in gutter is about 3.8 in wide', () => {
    expect(toInches(widthAtDepth(five, inches(2.25)))).toBeCloseTo(3.8, 1)
  })

  test('at the lip, half-way and at the invert', () => {
    expect(toInches(widthAtDepth(five, 0))).toBeCloseTo(5, 9)
    expect(toInches(widthAtDepth(five, inches(3.375 / 2)))).toBeCloseTo(4.125, 9)
    expect(toInches(widthAtDepth(five, inches(3.375)))).toBeCloseTo(3.25, 9)
  })

  test('above the lip it is the lip, below the invert the invert', () => {
    expect(widthAtDepth(five, inches(-1))).toBe(five.topMm)
    expect(widthAtDepth(five, inches(9))).toBeCloseTo(five.bottomMm, 9)
  })

  test.each(gutters)('$title never widens on the way down', (gutter) => {
    const depth = fc.double({ min: -50, max: 150, noNaN: true })
    fc.assert(
      fc.property(depth, depth, (a, b) => {
        const [upper, lower] = [Math.min(a, b), Math.max(a, b)]
        expect(widthAtDepth(gutter, upper)).toBeGreaterThanOrEqual(widthAtDepth(gutter, lower))
      }),
      { seed: 4015 },
    )
  })
})

// From memory of trade sheets: a 5 in gutter holds 0.7 to 0.8 US gallon a foot, that is 13 to 16 square inches. A sheet
// that promises 1.2 gallon a foot needs more than the 5 x 3-3/4 in box around it.
test('the section of a 5 in gutter is between 13 and 16 square inches', () => {
  const section = (toInches(five.depthMm) * (toInches(five.topMm) + toInches(five.bottomMm))) / 2
  expect(section).toBeGreaterThan(13)
  expect(section).toBeLessThan(16)
})

test('an unknown gutter is named', () => {
  expect(() => gutterOf('gutter-6in')).toThrow('The catalogue has no gutter "gutter-6in"')
})
