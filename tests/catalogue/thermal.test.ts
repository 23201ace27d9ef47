import { describe, expect, test } from 'vitest'
import { thermalOf, thermalRows } from '../../src/catalogue/thermal'
import { growthMm } from '../../src/solvers/gravity/growth'
import { feet, toInches } from '../../src/units/length'
import { fahrenheitWarmer } from '../../src/units/temperature'

const inchesGrown = (key: string, lengthFt: number, warmerF: number): number =>
  toInches(growthMm(feet(lengthFt), thermalOf(key).growthPerC, fahrenheitWarmer(warmerF)))

describe('how far a run moves', () => {
  // Rules as printed: PVC some 3/8 in a 100 ft for 10 degrees F (Bliesner, 1987); polyethylene some 1 in a 100 ft for 10 degrees F (Plastics
  // Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition). Both are rounded.
  test.each([
    ['pvc', 0.375],
    ['pe', 1],
  ])('100 ft of %s grow by some %d in for 10 degrees F', (key, inches) => {
    expect(Math.abs(inchesGrown(key, 100, 10) / inches - 1)).toBeLessThan(0.1)
  })

  // Hand arithmetic, unrestrained: 30 ft = 360 in; 360 x 3.0e-5 x 60 = 0.648 in, and so on.
  test.each([
    ['pvc', 0.65],
    ['pe', 1.94],
    ['steel', 0.14],
    ['aluminium', 0.28],
  ])('30 ft of %s over 60 degrees F: %d in', (key, inches) => {
    expect(inchesGrown(key, 30, 60)).toBeCloseTo(inches, 2)
  })

  // 10 ft for 10 degrees F.
  test.each([
    ['pvc', 0.036],
    ['pe', 0.108],
    ['steel', 0.0078],
  ])('10 ft of %s for 10 degrees F: %d in', (key, inches) => {
    expect(inchesGrown(key, 10, 10)).toBeCloseTo(inches, 4)
  })
})

test('every material says where its number is from, and none that it has not', () => {
  for (const { source, growthPerC } of thermalRows) {
    expect(source).toMatch(/\d{4}|edition|from memory/)
    expect(growthPerC).toBeGreaterThan(0)
  }
  expect(() => thermalOf('glass')).toThrow(/no material that grows "glass"/)
})
