import { expect, test } from 'vitest'
import { timberOf } from '../../../src/catalogue/timber'
import { bearingAlongMpa, DOWEL_CLEAR, dowelN, endFactor } from '../../../src/solvers/timber/dowel'
import { toPoundsForce, toPsi } from '../../../src/units/force'
import { inches } from '../../../src/units/length'

// NDS Table 12.3.3: F_e parallel = 11,200 G; 4704 psi for G = 0.42 (the table rounds to 4700) and 6160 for 0.55.
test.each([
  ['spf', 4704],
  ['southern-pine', 6160],
])('wood of %s bears %d psi under a dowel', (species, psi) => {
  expect(toPsi(bearingAlongMpa(timberOf(species).gravity))).toBeCloseTo(psi, 6)
})

// Hand arithmetic with NDS Table 12.3.1A, mode I, from memory: 1.163 in x 1.5 in x 4704 psi / 4 = 2051.5 lb; x 0.7 wet = 1436.
test('1 in conduit through a spruce 2x4 presses with 2052 lb', () => {
  const dryN = dowelN(inches(1.163), inches(1.5), bearingAlongMpa(0.42))
  expect(Math.abs(toPoundsForce(dryN) - 2052)).toBeLessThan(1)
  expect(Math.abs(toPoundsForce(dryN) * 0.7 - 1436)).toBeLessThan(1)
})

// NDS Table 12.5.1A, from memory: 4 D = 4.65 in has the full value, 2 D = 2.33 in half of it.
test.each([
  [4.66, 1],
  [10, 1],
  [2.326, 0.5],
])('an end %d in from 1 in conduit leaves %d of its value', (end, factor) => {
  expect(endFactor(inches(end), inches(1.163))).toBeCloseTo(factor, 3)
})

// NDS Table 12.5.1C: 1.5 D = 1.7445 in; a hole in the middle of 3.5 in has 1.75 in, 0.0055 in more.
test('1 in conduit in the middle of a 2x4 is a hair within its edge distance', () => {
  const spare = 1.75 - DOWEL_CLEAR.edge * 1.163
  expect(spare).toBeCloseTo(0.0055, 4)
})
