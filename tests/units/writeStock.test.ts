import { describe, expect, test } from 'vitest'
import { inches } from '../../src/units/length'
import { writeStock } from '../../src/units/writeStock'

// 1 ft is 304.8 mm exactly: international yard and pound agreement of 1959.
describe('a length of stock', () => {
  test.each([
    [3657.6, 'feet-inches', '12 ft'],
    [3048, 'feet-inches', '10 ft'],
    [inches(126), 'feet-inches', `10' 6"`],
    [672_388.8, 'feet-inches', '2206 ft'],
    [3657.6, 'metric', '3.66 m'],
    [3000, 'metric', '3 m'],
    [Infinity, 'feet-inches', '—'],
  ] as const)('of %f mm in %s is %s', (mm, units, written) => {
    expect(writeStock(mm, units)).toBe(written)
  })
})
