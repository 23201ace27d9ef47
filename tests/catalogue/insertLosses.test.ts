import { expect, test } from 'vitest'
import { barbedLossK, barbLossK, insertLossK, onBore } from '../../src/catalogue/insertLosses'
import { inches } from '../../src/units/length'

test('an insert of 0.50 in in 0.600 in tubing loses half a velocity head', () => {
  // Hand arithmetic: b = 0.833, b^2 = 0.694; (0.5 x 0.306 + 0.306^2) / 0.482 = (0.153 + 0.093) / 0.482 = 0.51.
  expect(insertLossK(0.5 / 0.6)).toBeCloseTo(0.51, 2)
})

test('an insert as wide as its pipe loses nothing', () => {
  expect(insertLossK(1)).toBe(0)
})

test('barbed elbows and tees lose 1.5 to 2.6 velocity heads', () => {
  // Common practice, no source: an insert fitting loses 1.5 to 2.5; a threaded tee's branch alone has 2.0.
  const all = ['elbow', 'tee-run', 'tee-branch'].map(barbedLossK)
  for (const lossK of all) expect(lossK > 1.49 && lossK < 2.61).toBe(true)
})

test('a barb costs 2 in of lateral', () => {
  // f L / D of 2 in of pipe of 0.824 in with Blasius' f at Re 6,000: 0.316 / 6000^0.25 = 0.0359; 0.0359 x 2 / 0.824 = 0.0871.
  expect(barbLossK(inches(0.824))).toBeCloseTo(0.0871, 3)
})

test('a loss on another bore is the same head', () => {
  // Velocity goes by 1 / D^2 and the head by its square: half the bore sees a sixteenth of the K; twice the flow, 4 times.
  expect(onBore(1.6, 20, 10)).toBeCloseTo(0.1, 9)
  expect(onBore(1.6, 20, 20, 2)).toBeCloseTo(6.4, 9)
})
