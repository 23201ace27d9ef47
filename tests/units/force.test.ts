import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  inchPounds,
  ksi,
  massOfWeight,
  poundsForce,
  poundsPerInch,
  psf,
  psi,
  toInchPounds,
  toKsi,
  toNewtonMetres,
  toPoundsForce,
  toPoundsPerInch,
  toPsf,
  toPsi,
  weightOf,
} from '../../src/units/force'
import { pounds } from '../../src/units/mass'

// NIST Special Publication 811 (2008), appendix B.8, to the digits printed there.
describe('published factors', () => {
  test('a pound-force is 4.448222 N', () => {
    expect(poundsForce(1)).toBeCloseTo(4.448222, 6)
    expect(toPoundsForce(4.448222)).toBeCloseTo(1, 6)
  })

  test('standard gravity is 9.80665 m/s²', () => {
    expect(weightOf(1)).toBe(9.80665)
    expect(massOfWeight(9.80665)).toBe(1)
  })

  test('a pound-force an inch is 175.1268 N/m, 0.1751268 N/mm', () => {
    expect(poundsPerInch(1)).toBeCloseTo(0.1751268, 7)
    expect(toPoundsPerInch(0.1751268)).toBeCloseTo(1, 6)
  })

  test('a psi is 6.894757e+03 Pa, a ksi 6.894757e+06 Pa', () => {
    expect(psi(1) * 1e3).toBeCloseTo(6.894757, 6)
    expect(ksi(1)).toBeCloseTo(6.894757, 6)
    expect(toPsi(6.894757)).toBeCloseTo(1000, 3)
    expect(toKsi(6.894757)).toBeCloseTo(1, 6)
  })

  test('a pound-force a square foot is 4.788026e+01 Pa', () => {
    expect(psf(1) * 1e3).toBeCloseTo(47.88026, 5)
    expect(toPsf(0.04788026)).toBeCloseTo(1, 6)
  })

  test('a pound-force inch is 1.129848e-01 N·m', () => {
    expect(toNewtonMetres(inchPounds(1))).toBeCloseTo(0.1129848, 7)
    expect(toInchPounds(112.9848)).toBeCloseTo(1, 6)
  })
})

// AISC Manual, modulus of elasticity of steel: 29,000 ksi, 200 GPa in round numbers; 18 ksi by hand 18 x 6.894757 = 124.106 MPa.
test('29,000 ksi is 199.95 GPa and 18 ksi 124.1 MPa', () => {
  expect(ksi(29_000) / 1000).toBeCloseTo(199.948, 3)
  expect(ksi(18)).toBeCloseTo(124.106, 3)
})

test('a pound weighs a pound', () => {
  expect(weightOf(pounds(25))).toBeCloseTo(poundsForce(25), 12)
  expect(massOfWeight(poundsForce(25))).toBeCloseTo(pounds(25), 12)
})

// 144 square inches are a square foot; an inch-pound over a cubic inch is a psi.
test('the units of force hang together', () => {
  expect(psf(144) / 1000).toBeCloseTo(psi(1), 12)
  expect(inchPounds(1) / 25.4 ** 3).toBeCloseTo(psi(1), 12)
  expect(poundsPerInch(1) / 25.4).toBeCloseTo(psi(1), 12)
})

test('every conversion comes back', () => {
  const pairs: readonly (readonly [(n: number) => number, (n: number) => number])[] = [
    [weightOf, massOfWeight],
    [poundsForce, toPoundsForce],
    [poundsPerInch, toPoundsPerInch],
    [psi, toPsi],
    [ksi, toKsi],
    [psf, toPsf],
    [inchPounds, toInchPounds],
  ]
  fc.assert(
    fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (value) => {
      for (const [there, back] of pairs) expect(back(there(value))).toBeCloseTo(value, 9)
    }),
    { seed: 7001 },
  )
})
