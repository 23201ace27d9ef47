import { expect, test } from 'vitest'
import { money } from '../../src/units/money'

test('money is written to the cent, thousands apart, behind its currency', () => {
  expect([0, 5, 1250, 138_640, 123_456_789].map((cents) => money(cents, '$'))).toEqual([
    '$0.00',
    '$0.05',
    '$12.50',
    '$1,386.40',
    '$1,234,567.89',
  ])
  // A sign stands close, a code or a word apart and on one line with its number.
  expect(['$', '€', 'R$', 'CHF', 'kr'].map((currency) => money(-1250, currency))).toEqual([
    '-$12.50',
    '-€12.50',
    '-R$12.50',
    '-CHF\u00A012.50',
    '-kr\u00A012.50',
  ])
})
