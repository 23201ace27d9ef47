import { expect, test } from 'vitest'
import { dollars, money } from '../../src/units/money'

test('money is written to the cent, thousands apart, behind its currency', () => {
  expect([0, 5, 1250, 138_640, 123_456_789].map((cents) => money(cents, '$'))).toEqual([
    '$0.00',
    '$0.05',
    '$12.50',
    '$1,386.40',
    '$1,234,567.89',
  ])
  expect([money(-1250, 'CHF '), dollars(1250)]).toEqual(['-CHF 12.50', '$12.50'])
})
