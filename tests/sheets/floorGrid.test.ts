import { expect, test } from 'vitest'
import { gridLetter } from '../../src/sheets/floorGrid'

test('grid letters leave out I and O and go on past Z', () => {
  const letters = Array.from({ length: 26 }, (_, i) => gridLetter(i))
  expect(letters.slice(0, 9).join('')).toBe('ABCDEFGHJ')
  expect(letters).not.toContain('O')
  expect(letters.slice(23)).toEqual(['Z', 'AA', 'AB'])
  expect(new Set(Array.from({ length: 700 }, (_, i) => gridLetter(i))).size).toBe(700)
})
