import { expect, test } from 'vitest'
import { gutters } from '../../../src/catalogue/gutter'
import { growthMm } from '../../../src/solvers/gravity/growth'

// Table of temperature expansion coefficients of piping materials, worked example: 6 m of PVC warmed by 60 degrees C grow by 1.8 cm,
// at 50.4 millionths a degree; Bliesner (1987) has 54, and tables differ by so much.
test.each(gutters)('6 m of $title warmed by 60 degrees grow by 18.1 mm, within a tenth', ({ growthPerC }) => {
  expect(Math.abs(growthMm(6000, growthPerC, 60) / 18.1 - 1)).toBeLessThan(0.1)
})

test('what cools shrinks', () => {
  expect(growthMm(1000, 5e-5, -10)).toBeCloseTo(-0.5, 9)
})
