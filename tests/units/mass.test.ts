import { describe, expect, test } from 'vitest'
import { pounds, poundsPerFoot, toPounds, toPoundsPerFoot } from '../../src/units/mass'

describe('pound', () => {
  // International yard and pound agreement, 1959: 0.45359237 kg exactly.
  test('the pound is 0.45359237 kg', () => {
    expect(pounds(1)).toBe(0.45359237)
    expect(toPounds(0.45359237)).toBe(1)
  })

  // NIST Special Publication 811 (2008), appendix B.8: pound per foot to kilogram per meter, 1.488164.
  test('a pound a foot is 1.488164 kg a metre', () => {
    expect(poundsPerFoot(1)).toBeCloseTo(1.488164, 6)
    expect(toPoundsPerFoot(1.488164)).toBeCloseTo(1, 6)
  })
})
