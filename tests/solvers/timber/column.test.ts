import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { timberOf } from '../../../src/catalogue/timber'
import { DURATION, valuesOf } from '../../../src/catalogue/timberFactors'
import {
  bucklingMpa,
  type ColumnWay,
  END_FACTOR,
  SLENDEREST,
  slendernessOf,
  stabilityOf,
} from '../../../src/solvers/timber/column'
import { toPoundsForce, toPsi } from '../../../src/units/force'
import { inches } from '../../../src/units/length'

const AREA_MM2 = inches(1.5) * inches(3.5)

const way = (lengthIn: number, sideIn: number, endFactor: number): ColumnWay => ({
  lengthMm: inches(lengthIn),
  sideMm: inches(sideIn),
  endFactor,
})

// NDS 3.7.1 with c = 0.8, F_cE = 0.822 E_min / (l_e / d)^2; 2x4 No. 2 of NDS Supplement Tables 4A and 4B. Hand arithmetic:
// spruce, 66 in, dry: 0.822 x 510e3 / 44^2 = 216.5; 216.5 / 1322.5 = 0.1637; C_P = 0.1578; 208.7 psi x 5.25 in2 = 1096 lb.
describe('columns of 2x4', () => {
  const { pinned, cantilever } = END_FACTOR
  test.each([
    ['spf', 'dry', 66, 1.5, pinned, 44, 216.5, 1322.5, 0.1578, 1096],
    ['spf', 'wet', 66, 1.5, pinned, 44, 194.9, 952.2, 0.1952, 976],
    ['spf', 'dry', 66, 3.5, pinned, 18.86, 1178.9, 1322.5, 0.65, 4513],
    ['spf', 'dry', 66, 3.5, cantilever, 39.6, 267.3, 1322.5, 0.1929, 1339],
    ['spf', 'dry', 33, 1.5, pinned, 22, 866.2, 1322.5, 0.5332, 3702],
    ['hem-fir', 'wet', 66, 1.5, pinned, 44, 179.6, 1076.4, 0.1607, 908],
    ['southern-pine', 'wet', 66, 1.5, pinned, 44, 194.9, 1044, 0.1789, 980],
  ] as const)(
    '%s %s, %d in long, %d in thick, K %d',
    (species, is, long, side, ke, le, fcE, fc, cp, pounds) => {
      const isWet = is === 'wet'
      const { alongMpa, eMinMpa } = valuesOf(timberOf(species), inches(3.5), isWet)
      const slenderness = slendernessOf(way(long, side, ke))
      const bucklesAt = bucklingMpa(eMinMpa, slenderness)
      const alongStar = alongMpa * (isWet ? DURATION.permanent : 1)
      const stability = stabilityOf(bucklesAt, alongStar)
      expect(slenderness).toBeCloseTo(le, 2)
      expect(Math.abs(toPsi(bucklesAt) - fcE)).toBeLessThan(0.1)
      expect(toPsi(alongStar)).toBeCloseTo(fc, 1)
      expect(stability).toBeCloseTo(cp, 4)
      expect(Math.abs(toPoundsForce(stability * alongStar * AREA_MM2) - pounds)).toBeLessThan(1)
    },
  )

  test('a riser of 66 in that nothing braces along the row is over the slenderest that is permitted', () => {
    const slenderness = slendernessOf(way(66, 1.5, cantilever))
    expect(slenderness).toBeCloseTo(92.4, 6)
    expect(slenderness).toBeGreaterThan(SLENDEREST)
  })
})

// Euler, pi^2 E I / L^2 with I = 3.5 x 1.5^3 / 12 = 0.9844 in4 and L = 66 in: 1137 lb with 510,000 psi, 3122 lb with 1.4e6.
test.each([
  [510e3, 1137],
  [1.4e6, 3122],
])('with a modulus of %d psi buckling is what Euler has', (psi, pounds) => {
  const slenderness = slendernessOf(way(66, 1.5, 1))
  const perPsi = bucklingMpa(psi, slenderness) * 1.5 * 3.5
  expect(Math.abs(perPsi / pounds - 1)).toBeLessThan(1e-3)
})

describe('the stability factor', () => {
  const positive = fc.double({ min: 0.01, max: 100, noNaN: true })
  test('is between nothing and 1, under what buckling alone leaves, and less for what buckles sooner', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1, max: 10, noNaN: true }), (fcE, fcStar, more) => {
        const factor = stabilityOf(fcE, fcStar)
        expect(factor).toBeGreaterThan(0)
        expect(factor).toBeLessThanOrEqual(1)
        expect(factor).toBeLessThanOrEqual(fcE / fcStar + 1e-9)
        expect(stabilityOf(fcE * more, fcStar)).toBeGreaterThanOrEqual(factor - 1e-9)
      }),
      { seed: 37 },
    )
  })
})
