import { expect, test } from 'vitest'
import { bay, type Sketch } from '../support/bay'
import { fedRow } from '../support/fedRow'
import { judged, told } from '../support/judged'
import { ruleTable } from '../support/ruleTable'

/*
 * Froude 0.3 on the full bore (P. D. Hills, Chemical Engineering (1983)), hand arithmetic: 3/4 in is 0.01905 m, V = 0.3 x (9.80665 x
 * 0.01905)^(1/2) = 0.1297 m/s, x 2.850e-4 m2 = 3.696e-5 m3/s = 35.15 US gal an hour; the others by the power 2.5 of the bore: 1/2 in
 * 35.15 / 2.756 = 12.75, 1 in 35.15 x 2.053 = 72.15, 2 in 408. Towers give the 4 gph that are wanted: nothing is solved here.
 */
const row = (racks: number, outletBore: '1/2' | '3/4' | '1' | '2'): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { racks, outletBore })

ruleTable('outlet-flow-max', {
  passes: [
    ['24 towers a line into 2 in: 96 of 408', row(3, '2')],
    ['8 towers into 3/4 in: 32 of 35', row(1, '3/4')],
    ['16 towers into 1 in: 64 of 72', row(2, '1')],
    ['a trough that nothing drips into', bay('40 x 60 ft').trough('T', [100, 100], { outletBore: '1/2' })],
  ],
  fails: [
    [
      '24 towers into 3/4 in, which vents 35.15 / 4 = 8',
      row(3, '3/4'),
      'Tight, 96 of 35.148',
      'A trough of A would bring 1.6 gpm from 24 towers to its outlet, which gulps air over 0.6 gpm: it vents 8 of them. Give A a 2 in outlet.',
    ],
    [
      '8 towers into 1/2 in, where the next bore will do',
      row(1, '1/2'),
      'Tight, 32 of 12.755',
      'A trough of A would bring 0.5 gpm from 8 towers to its outlet, which gulps air over 0.2 gpm: it vents 3 of them. Give A a 3/4 in outlet.',
    ],
    [
      // As a hole 1/2 in wants (1.6 / (19.637 x 0.61 x 0.25))^2 = 0.286 ft or 3.43 in for 1.6 gpm; the gutter is 3.375 deep.
      '24 towers into 1/2 in, over which the water stands higher than the lip',
      row(3, '1/2'),
      'Clash, 96 of 12.755',
      'A trough of A would bring 1.6 gpm from 24 towers to its outlet, which gulps air over 0.2 gpm, and the trough runs over: it vents 3 of them. Give A a 2 in outlet.',
    ],
  ],
})

test('where water is solved it is what the tubes give that counts, and the words say so', () => {
  const wet = fedRow({ outletBore: '3/4' })
  expect(judged('outlet-flow-max', wet)[0]).toMatch(/^Tight, \d+\.\d+ of 35\.148$/)
  expect(told('outlet-flow-max', wet)[0]).toMatch(/^A trough of A brings \d\.\d gpm from 16 towers/)
})
