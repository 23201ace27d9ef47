import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { COLDEST_C, HOTTEST_C, waterAt } from '../../../src/solvers/water/properties'

describe('water', () => {
  // Crittenden and others, MWH's Water Treatment: Principles and Design, 3rd ed. 2012, appendix C, table C-1.
  test.each([
    [5, 1000.0, 1.519e-6],
    [10, 999.7, 1.306e-6],
    [15, 999.1, 1.139e-6],
    [20, 998.2, 1.003e-6],
    [25, 997.0, 0.893e-6],
    [30, 995.7, 0.8e-6],
  ])('at %d °C is as in table C-1 of MWH’s Water Treatment, 2012', (temperatureC, density, kinematic) => {
    const water = waterAt(temperatureC)
    // The table's last digit: 0.05 kg/m3 of rounding, and 0.0005e-6 m2/s, which is 0.06 % at worst.
    expect(Math.abs(water.densityKgM3 - density)).toBeLessThanOrEqual(0.06)
    expect(water.kinematicM2S / kinematic).toBeCloseTo(1, 2.5)
  })

  // IAPWS-95 with the 2008 viscosity release, computed with an open library; not a published table.
  test.each([
    [5, 1.5182e-6],
    [10, 1.3063e-6],
    [15, 1.1386e-6],
    [20, 1.0034e-6],
    [25, 0.8927e-6],
    [30, 0.8007e-6],
  ])('at %d °C is within 0.1 % of the viscosity of the IAPWS formulations', (temperatureC, kinematic) => {
    expect(Math.abs(waterAt(temperatureC).kinematicM2S / kinematic - 1)).toBeLessThan(1e-3)
  })

  // International Critical Tables, 1928-29, as printed in the Encyclopedia of Environmental Science and Engineering,
  // appendix, table 2: older measurements, up to 0.7 % above those of today.
  test.each([
    [10, 1.3101e-6],
    [20, 1.0105e-6],
    [30, 0.8039e-6],
  ])('at %d °C is within 0.8 % of the International Critical Tables, 1929', (temperatureC, kinematic) => {
    expect(Math.abs(waterAt(temperatureC).kinematicM2S / kinematic - 1)).toBeLessThan(8e-3)
  })

  // MWH, table C-2: 50, 60 and 70 °F in ft2/s, from older measurements than its table C-1, which it is 0.7 % above. 1 ft2 = 0.09290304 m2; (F - 32) / 1.8 = 10, 15.556, 21.111 °C.
  test.each([
    [10, 1.41e-5],
    [15.556, 1.217e-5],
    [21.111, 1.059e-5],
  ])(
    'at %d °C is within 0.8 % of table C-2 of the same, in square feet a second',
    (temperatureC, squareFeet) => {
      expect(Math.abs(waterAt(temperatureC).kinematicM2S / (squareFeet * 0.09290304) - 1)).toBeLessThan(8e-3)
    },
  )

  test('from 30 to 10 °C thickens by 1.631, the ratio of the table: so much less a smooth tube passes', () => {
    expect(waterAt(10).kinematicM2S / waterAt(30).kinematicM2S).toBeCloseTo(1.306 / 0.8, 2)
  })

  test('is densest at 4 °C and grows thinner all the way', () => {
    const at = Array.from({ length: 601 }, (_, i) => waterAt(i / 10))
    const densest = at.reduce(
      (best, { densityKgM3 }, i) => (densityKgM3 > at[best]!.densityKgM3 ? i : best),
      0,
    )
    expect(Math.abs(densest - 40)).toBeLessThanOrEqual(1)
    expect(at.every((water, i) => i === 0 || water.kinematicM2S < at[i - 1]!.kinematicM2S)).toBe(true)
  })

  test('that is ice, too hot or no number throws, with the number', () => {
    for (const wrong of [COLDEST_C - 0.1, HOTTEST_C + 0.1, NaN])
      expect(() => waterAt(wrong)).toThrow(`Water at ${wrong} °C is outside 0 to 60 °C`)
    fc.assert(
      fc.property(fc.double({ min: COLDEST_C, max: HOTTEST_C, noNaN: true }), (temperatureC) => {
        expect(waterAt(temperatureC).kinematicM2S).toBeGreaterThan(0)
      }),
      { seed: 1 },
    )
  })
})
