import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * Longest single-fall run: (3.375 - 1 - 0.25) / (1/16) = 34 ft at 1/16 in a foot, 17 ft at 1/8. Worked example of the trade
 * notes, hand arithmetic; 1 in of water and air and 1/4 in below the lip are common practice, no source.
 */
const run = (rackLength: number, racks: number, gutterFall = 1 / 16, values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { rackLength, racks, gutterFall, ...values })

ruleTable('gutter-run-max', {
  passes: [
    ['34 ft at 1/16 in a foot', run(102, 4)],
    ['17 ft at 1/8 in a foot', run(102, 2, 1 / 8)],
  ],
  fails: [
    [
      '35 ft at 1/16 in a foot',
      run(105, 4),
      'Clash, 420 of 408',
      'The gutters of A fall one way over 35\' 0"; the tips stay in their window over 34\' 0" at most.',
    ],
    [
      '18 ft at 1/8 in a foot',
      run(108, 2, 1 / 8),
      'Clash, 216 of 204',
      'The gutters of A fall one way over 18\' 0"; the tips stay in their window over 17\' 0" at most.',
    ],
    [
      '30 ft in a gutter 2-3/4 in deep: (2.75 - 1.25) x 16 = 24 ft',
      run(120, 3, 1 / 16, { gutter: 'gutter-4in' }),
      'Clash, 360 of 288',
      'The gutters of A fall one way over 30\' 0"; the tips stay in their window over 24\' 0" at most.',
    ],
  ],
})
