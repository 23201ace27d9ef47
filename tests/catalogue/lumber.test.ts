import { describe, expect, test } from 'vitest'
import { lumberOf, lumbers } from '../../src/catalogue/lumber'
import { feet, toInches } from '../../src/units/length'

describe('actual sizes', () => {
  // US Department of Commerce Voluntary Product Standard PS 20, American Softwood Lumber Standard: minimum dressed
  // dry sizes, inch column, and the millimetre column that the standard rounds by itself.
  test.each([
    ['1x4', 3 / 4, 3.5, 19, 89],
    ['2x3', 1.5, 2.5, 38, 64],
    ['2x4', 1.5, 3.5, 38, 89],
    ['2x6', 1.5, 5.5, 38, 140],
    ['4x4', 3.5, 3.5, 89, 89],
  ])('a %s is %d x %d in', (nominal, thick, wide, thickMm, wideMm) => {
    const lumber = lumberOf(`lumber-${nominal}`)
    expect(toInches(lumber.thickMm)).toBeCloseTo(thick, 9)
    expect(toInches(lumber.wideMm)).toBeCloseTo(wide, 9)
    expect([Math.round(lumber.thickMm), Math.round(lumber.wideMm)]).toEqual([thickMm, wideMm])
  })

  test.each(lumbers)('a $nominal is thinner than its name, both ways', ({ nominal, thickMm, wideMm }) => {
    const [thick = 0, wide = 0] = nominal.split('x').map(Number)
    expect(toInches(thickMm)).toBeLessThan(thick)
    expect(toInches(wideMm)).toBeLessThan(wide)
  })
})

// PS 20: lengths in whole feet, in practice every 2 ft; 8 to 16 ft is common practice, no source.
test('2x4 comes in 8, 10, 12, 14 and 16 ft', () => {
  expect(lumberOf('lumber-2x4').lengthsMm).toEqual([8, 10, 12, 14, 16].map(feet))
})

test('an unknown board is named, with those there are', () => {
  expect(() => lumberOf('lumber-2x5')).toThrow('The catalogue has no lumber "lumber-2x5"; it has lumber-1x4')
})
