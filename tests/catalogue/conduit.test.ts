import { describe, expect, test } from 'vitest'
import { conduitOf, conduits } from '../../src/catalogue/conduit'
import { inches, toInches } from '../../src/units/length'
import { toPoundsPerFoot } from '../../src/units/mass'

/** Pounds a cubic inch of steel: AISC Steel Construction Manual, from memory (490 lb/ft3). */
const STEEL = 0.2836

describe('published table', () => {
  // Steel Tube Institute, "EMT Weights and Dimensions" (consistent with ANSI C80.3 and UL 797): trade size,
  // outside diameter in, wall in, pounds per 100 ft.
  test.each([
    ['1/2', 0.706, 0.042, 30],
    ['3/4', 0.922, 0.049, 46],
    ['1', 1.163, 0.057, 67],
    ['1-1/4', 1.51, 0.065, 101],
  ])('%s in: outside %d in, wall %d in, %d lb per 100 ft', (trade, od, wall, weight) => {
    const conduit = conduitOf(trade)
    expect(toInches(conduit.odMm)).toBeCloseTo(od, 9)
    expect(toInches(conduit.wallMm)).toBeCloseTo(wall, 9)
    expect(toPoundsPerFoot(conduit.kgPerM) * 100).toBeCloseTo(weight, 9)
  })

  // A mistyped outside diameter (1.050 for 0.922 is a common one: that is pipe, not conduit) breaks this.
  test.each(conduits)('the weight of $title follows from its diameter and wall within 1 %', (conduit) => {
    const [od, bore] = [toInches(conduit.odMm), toInches(conduit.idMm)]
    const poundsPerFoot = (Math.PI / 4) * (od ** 2 - bore ** 2) * 12 * STEEL
    expect(Math.abs(poundsPerFoot / toPoundsPerFoot(conduit.kgPerM) - 1)).toBeLessThan(0.01)
  })

  // Steel Tube Institute's metric columns, as rounded by hand: 1 in is 29.5 mm outside, 1.45 mm wall.
  test('1 in conduit in millimetres', () => {
    expect(conduitOf('1').odMm).toBeCloseTo(29.5, 1)
    expect(conduitOf('1').wallMm).toBeCloseTo(1.45, 2)
  })
})

describe('one size slides into the next', () => {
  // Worked example of the trade notes, hand arithmetic on the published table.
  test.each([
    ['1/2', '3/4', 0.118],
    ['3/4', '1', 0.127],
    ['1', '1-1/4', 0.217],
  ])('%s in slides into %s in with %d in to spare', (small, big, spare) => {
    expect(conduitOf(small).slidesInto).toBe(big)
    expect(conduitOf(big).idMm - conduitOf(small).odMm).toBeCloseTo(inches(spare), 9)
  })

  test('the biggest slides into nothing that is listed', () => {
    expect(conduitOf('1-1/4').slidesInto).toBeUndefined()
  })
})

// Worked example of the trade notes, hand arithmetic: what a drill bit leaves around the conduit.
test.each([
  ['1', 1 + 3 / 16, 0.0245],
  ['3/4', 15 / 16, 0.0155],
])('%s in conduit in a %d in hole has %d in to spare', (trade, bit, spare) => {
  expect(inches(bit) - conduitOf(trade).odMm).toBeCloseTo(inches(spare), 9)
})

test('an unknown size is named, with those there are', () => {
  expect(() => conduitOf('2')).toThrow(RangeError)
  expect(() => conduitOf('2')).toThrow('The catalogue has no conduit "2"; it has 1/2, 3/4, 1, 1-1/4.')
})
