import { expect, test } from 'vitest'
import { thousands } from '../../src/units/thousands'
import { writeCount } from '../../src/units/writeCount'

test('thousands are apart, decimals are not', () => {
  expect([0, 999, 1000, 10_368, 1_234_567, '31104.0', '0.12345', -1926].map(thousands)).toEqual([
    '0',
    '999',
    '1,000',
    '10,368',
    '1,234,567',
    '31,104.0',
    '0.12345',
    '-1,926',
  ])
})

test('counts and lengths are read the same way', () => {
  expect(writeCount(1926, 'piece', 'metric')).toBe('1,926')
  expect(writeCount(31_104, 'ft', 'feet-inches')).toBe('31,104.0 ft')
  expect(writeCount(3740, 'ft2', 'feet-inches')).toBe('3,740.0 sq ft')
})
