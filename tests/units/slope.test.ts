import { expect, test } from 'vitest'
import { feet, inches } from '../../src/units/length'
import { dropOver, inchesPerFoot, oneIn, perCent, toInchesPerFoot } from '../../src/units/slope'

// Common practice, no source: a drain at 1/8 in a foot is "about one per cent", exactly 1 in 96 or 1.04 %.
test('1/8 in a foot is 1 in 96, 1.04 per cent', () => {
  expect(inchesPerFoot(1 / 8)).toBeCloseTo(10.4167, 4)
  expect(oneIn(96)).toBeCloseTo(inchesPerFoot(1 / 8), 10)
  expect(perCent(1.04)).toBeCloseTo(10.4, 10)
})

test('in/ft and mm/m are each other backwards', () => {
  expect(toInchesPerFoot(inchesPerFoot(1 / 16))).toBeCloseTo(0.0625, 12)
})

// Worked example of the trade notes, hand arithmetic: a 274 in drain at 1/8 in/ft falls 2.85 in; 30 ft of gutter
// at 1/16 in/ft falls 1.875 in.
test('drop over a run', () => {
  expect(dropOver(inches(274), inchesPerFoot(1 / 8))).toBeCloseTo(inches(2.854), 1)
  expect(dropOver(feet(30), inchesPerFoot(1 / 16))).toBeCloseTo(47.625, 9)
})
