import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { feet, fromTicks, inches, onTick, toInches, toTicks } from '../../src/units/length'

/** Chance in these tests always starts here. */
const seed = 4015

describe('inch and foot', () => {
  // International yard and pound agreement, 1959: the inch is 25.4 mm exactly.
  test('the inch is 25.4 mm, the foot 304.8 mm', () => {
    expect(inches(1)).toBe(25.4)
    expect(feet(1)).toBeCloseTo(304.8, 10)
    expect(toInches(304.8)).toBeCloseTo(12, 10)
  })
})

describe('tick', () => {
  test('1/64 in is 127 ticks and 0.1 mm is 32, both whole', () => {
    expect(toTicks(inches(1 / 64))).toBe(127)
    expect(toTicks(0.1)).toBe(32)
    expect(fromTicks(127)).toBe(0.396875)
  })

  test('a length on the tick stays where it is, and any length moves less than half a tick', () => {
    fc.assert(
      fc.property(fc.double({ min: -2e6, max: 2e6, noNaN: true }), (mm) => {
        const kept = onTick(mm)
        expect(onTick(kept)).toBe(kept)
        expect(Math.abs(kept - mm)).toBeLessThanOrEqual(1 / 640 + 1e-9)
      }),
      { seed },
    )
  })

  test('sums of many lengths in ticks are exact', () => {
    // 1/64 in is not a binary fraction of a millimetre: adding it 64,000 times in floats would drift.
    const sum = Array.from({ length: 64_000 }, () => toTicks(inches(1 / 64))).reduce((a, b) => a + b, 0)
    expect(fromTicks(sum)).toBe(25_400)
  })
})
