import { expect, test } from 'vitest'
import { feet, MM_PER_M } from '../../src/units/length'
import { toCubicYards } from '../../src/units/volume'
import { writerFor } from '../../src/units/writer'

test('a cubic yard is 27 cubic feet', () => {
  const cubicFootL = feet(1) ** 3 / MM_PER_M ** 2
  expect(toCubicYards(27 * cubicFootL)).toBeCloseTo(1, 9)
})

// Worked example of the trade notes, hand arithmetic: 3 x 9.5 x 35 in (36 x 114 x 35 = 143,640 cu in, 46,656 to the yard) is 3.08.
test('earth is written in cubic yards or cubic metres', () => {
  const pitL = (feet(3) * feet(9.5) * feet(35 / 12)) / MM_PER_M ** 2
  expect(writerFor('feet-inches').earth(pitL)).toBe('3.1 yd³')
  expect(writerFor('metric').earth(pitL)).toBe('2.4 m³')
})
