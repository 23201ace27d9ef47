import { expect, test } from 'vitest'
import { submergenceM } from '../../../src/solvers/water/submergence'
import { gpm, toM3PerS } from '../../../src/units/flow'
import { inches, toInches } from '../../../src/units/length'
import { headM, toHeadM } from '../../../src/units/head'

const depth = (bore: number, flow: number): number =>
  toInches(headM(submergenceM(toM3PerS(gpm(flow)), toHeadM(inches(bore)))))

// The form in inches and US gallons a minute, S = D + 0.574 Q / D^1.5 (ANSI/HI 9.8, from memory), worked by hand:
// 1.049 + 0.574 x 5 / 1.0744 = 3.72; 2.067 + 0.574 x 40 / 2.9717 = 9.79.
test.each([
  [1.049, 5, 3.72],
  [1.049, 10, 6.39],
  [1.38, 10, 4.92],
  [1.61, 20, 7.23],
  [2.067, 20, 5.93],
  [2.067, 40, 9.79],
])('an intake of %f in that draws %i gpm wants %f in of water over it', (bore, flow, wants) => {
  expect(depth(bore, flow)).toBeCloseTo(wants, 2)
})

test('water that stands asks for its bore alone', () => {
  expect(submergenceM(0, 0.05)).toBe(0.05)
})
