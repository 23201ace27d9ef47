import { bay, type Inches, type Sketch } from '../support/bay'
import type { DrainLine } from '../../src/parts/drain-line/schema'
import type { Settings } from '../../src/layout/settings'
import { gph } from '../../src/units/flow'
import { ruleTable } from '../support/ruleTable'

/*
 * At most half full: common practice, no source. Nothing feeds the row, so that its 64 towers are reckoned at the flow that is
 * wanted. What pipes carry half full, by hand, Manning with n 0.010 at 1/8 in a foot (0.010417): 3 in thin-wall has a bore of 3.11 in,
 * 0.07899 m, area 0.004901 m2, hydraulic radius D / 4 = 0.01975 m, to the power 2/3 0.07306; Q = 0.004901 x 0.07306 x 0.10206 / 0.010
 * = 0.003654 m3/s = 57.9 gpm full, 29.0 gpm half full. 4 in, bore 4.06: 29.0 x (4.06 / 3.11)^(8/3) = 59.0. 2 in, 2.067: 9.7.
 * Hydraulic elements of a circle at constant n, as in published tables: 0.50 of the depth is 0.500 of the full flow, 0.55 is 0.586, so
 * that between them depth grows by 1 in the hundred for every 1.72 of flow.
 */
const drained = (towerGph: number, values: Inches<DrainLine> = {}, settings: Inches<Settings> = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain(
      'D',
      [
        [100, 325],
        [300, 325],
      ],
      values,
    )
    .settings({ targetLph: gph(towerGph), ...settings })

ruleTable('drain-full-max', {
  passes: [
    ['64 towers of 27 gph, 28.8 gpm, in 3 in pipe', drained(27, { pipe: 'drain-3in' })],
    ['64 towers of 4 gph, 4.3 gpm, in 2 in pipe', drained(4, { pipe: 'drain-2in' })],
    [
      'a line that nothing comes to',
      bay('40 x 60 ft').drain('D', [
        [50, 100],
        [350, 100],
      ]),
    ],
    ['a line that does not fall, of which its fall tells', drained(27, { pipe: 'drain-3in', slope: 0 })],
  ],
  fails: [
    [
      // 64 x 28 / 60 = 29.87 gpm of 57.9 is 0.5157: 0.50 + 0.0157 / 1.72 = 0.509.
      '64 towers of 28 gph, 29.9 gpm, in 3 in pipe',
      drained(28, { pipe: 'drain-3in' }),
      'Backs up, 50.917 of 50',
      'D runs 50.9 % full where it carries 29.9 gpm; half full it carries 29.0 gpm. Give D 4 in drain pipe.',
    ],
    [
      // 64 x 30 / 60 = 32 gpm; a full 2 in pipe carries 2 x 9.7 = 19.5.
      '64 towers of 30 gph, 32 gpm, in 2 in pipe, which 4 in carries and 3 in does not',
      drained(30, { pipe: 'drain-2in' }),
      'Backs up, 100 of 50',
      'D is full and backs up where it carries 32.0 gpm; half full it carries 9.7 gpm. Give D 4 in drain pipe.',
    ],
    [
      // n 0.020 carries half as much as n 0.010: 16.0 of 28.96 is 0.5525, and 0.50 + 0.0525 / 1.72 = 0.531.
      'the same flow in rougher pipe',
      drained(15, { pipe: 'drain-3in' }, { manningN: 0.02 }),
      'Backs up, 53.068 of 50',
      'D runs 53.1 % full where it carries 16.0 gpm; half full it carries 14.5 gpm. Give D 4 in drain pipe.',
    ],
  ],
})
