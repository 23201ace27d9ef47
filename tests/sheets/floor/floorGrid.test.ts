import { expect, test } from 'vitest'
import { gridLetter, gridSpacing } from '../../../src/sheets/floor/floorGrid'

test('grid letters leave out I and O and go on past Z', () => {
  const letters = Array.from({ length: 26 }, (_, i) => gridLetter(i))
  expect(letters.slice(0, 9).join('')).toBe('ABCDEFGHJ')
  expect(letters).not.toContain('O')
  expect(letters.slice(23)).toEqual(['Z', 'AA', 'AB'])
  expect(new Set(Array.from({ length: 700 }, (_, i) => gridLetter(i))).size).toBe(700)
})

test('grid lines stand 10 ft or 3 m apart until their bubbles would touch', () => {
  expect(gridSpacing(64, 'feet-inches') / 304.8).toBeCloseTo(10)
  // 10 ft at 1:600 is 5.08 mm of paper, less than a bubble of 5.2 mm.
  expect(gridSpacing(600, 'feet-inches') / 304.8).toBeCloseTo(20)
  expect(gridSpacing(100, 'metric')).toBe(3000)
  expect(gridSpacing(1000, 'metric')).toBe(6000)
})
