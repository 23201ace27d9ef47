import { bay, type Sketch } from '../support/bay'
import { measuredBay, measuring } from '../support/measuring'
import { ruleTable } from '../support/ruleTable'

/**
 * Three racks; with joint J3 the 1 in sticks of the outer two run 3 in past the shared risers, and the 3/4 in stick of the middle
 * one pushes 6 in into both: rack length - 2 x 3 + 2 x 6. Conduit comes in 10 ft sticks.
 */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('stock-length-max', {
  passes: [
    ['racks of 10 ft with sleeves', row()],
    ['racks of 9 ft 6 in with big sticks and small: 114 + 6 = 120', row({ joint: 'J3', rackLength: 114 })],
    [
      'end rails of 120-1/8 in, whole sticks that measure so',
      measuredBay(row().layout(), measuring('conduit-3/4', { over: 1 / 8 })),
    ],
  ],
  fails: [
    [
      'racks of 10 ft with big sticks and small: 120 + 6',
      row({ joint: 'J3' }),
      'Clash, 126 of 120',
      '2 RL of A are 10\' 6" long; the longest 3/4 in thin-wall conduit on offer is 10\' 0".',
    ],
    [
      'the middle rail of 120 - 1/4 where sticks measure 119-1/2; the end ones keep to what their stick gives',
      measuredBay(row().layout(), measuring('conduit-3/4', { over: -1 / 2 })),
      'Clash, 119.75 of 119.5',
      '2 RL of A are 9\' 11-3/4" long; the longest 3/4 in thin-wall conduit on offer is 9\' 11-1/2".',
    ],
  ],
})
