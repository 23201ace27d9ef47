import { expect, test } from 'vitest'
import { onFloor } from '../../src/parts/floor'

test('a place is kept on the tick, a 320th of a millimetre', () => {
  expect(onFloor({ x: 10.001, y: 25.4 / 64 })).toEqual({ x: 10, y: 127 / 320 })
})

test('no coordinate is -0, which a file could not give back', () => {
  expect(onFloor({ x: -0.001, y: -0 })).toEqual({ x: 0, y: 0 })
})

test('a place beyond the longest length is kept at it', () => {
  expect(onFloor({ x: 1e9, y: -1e9 })).toEqual({ x: 2_000_000, y: -2_000_000 })
})
