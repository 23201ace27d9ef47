import fc from 'fast-check'
import { expect, test } from 'vitest'
import { amountText, readAmount } from '../../src/units/amount'

test.each([
  ['9.60', 960],
  ['9,60', 960],
  ['9.6', 960],
  ['9', 900],
  ['0', 0],
  ['0.05', 5],
  ['$9.60', 960],
  ['€ 9,60', 960],
  ['9,60 €', 960],
  ['USD 12', 1200],
  ['1,234.50', 123_450],
  ['1.234,50', 123_450],
  ['1 234,50', 123_450],
  ["1'234.50", 123_450],
  ['12,345,678.90', 1_234_567_890],
  [' 7 ', 700],
])('%s is %d cents', (typed, cents) => expect(readAmount(typed)).toEqual({ cents }))

test.each(['1,234', '1.234', '9.605', '-5', 'ask', '9.6.0', '1,23,456.00', '', '.', '1e3', '=9'])(
  '%s is told of and not guessed at',
  (typed) => expect(readAmount(typed)).toHaveProperty('fault'),
)

test('whole cents come back as they were written, with either sign', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000_000 }), fc.constantFrom('.', ','), (cents, sign) => {
      expect(readAmount(amountText(cents, sign as '.' | ','))).toEqual({ cents })
    }),
    { seed: 20_260_407 },
  )
})
