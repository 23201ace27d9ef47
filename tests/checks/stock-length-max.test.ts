import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/** Whole racks in 1 in conduit, which runs 3 in past each shared riser, and 6 in of lap. */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('stock-length-max', {
  passes: [
    ['racks of 10 ft with sleeves', row()],
    ['racks of 9 ft 6 in with big sticks and small: 114 + 6', row({ joint: 'J3', rackLength: 114 })],
  ],
  fails: [
    [
      'racks of 10 ft with big sticks and small: 120 + 2 x 3 in the middle',
      row({ joint: 'J3' }),
      'Clash, 126 of 120',
      '2 RL of A are 10\' 6" long; the longest 3/4 in thin-wall conduit on offer is 10\' 0".',
    ],
  ],
})
