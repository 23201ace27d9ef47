import { expect, test } from 'vitest'
import { measureWords } from '../../src/canvas/overlayPaint'
import { feet } from '../../src/units/length'
import { type Writer, writerFor } from '../../src/units/writer'

const inFeet = writerFor('feet-inches')

/** The tape pulled from one place by so many feet east and north. */
const pulled = (east: number, north: number, writer: Writer) => {
  const from = { x: feet(20), y: feet(20) }
  return measureWords({ from, to: { x: from.x + feet(east), y: from.y + feet(north) } }, writer)
}

// 6, 8, 10: the carpenter's right triangle.
test('a tape that slants says how far it goes by the compass', () => {
  expect(pulled(6, 8, inFeet)).toBe(`10' 0" (6' 0" east, 8' 0" north)`)
  expect(pulled(-8, -6, inFeet)).toBe(`10' 0" (8' 0" west, 6' 0" south)`)
})

test('one along a wall says its length alone', () => {
  expect(pulled(0, -8, inFeet)).toBe(`8' 0"`)
  expect(pulled(6, 0, inFeet)).toBe(`6' 0"`)
})

// 3048 mm, 2438.4 mm and 1828.8 mm.
test('a metric reader has it in whole millimetres', () => {
  expect(pulled(6, -8, writerFor('metric'))).toBe('3048 mm (1829 mm east, 2438 mm south)')
})
