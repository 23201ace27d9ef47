import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * 3/4 in of air: common practice, no source. Three racks of four lines, tips 1.125 in over the invert at the high end, 24 towers a
 * line at the 4 gph that are wanted, 1.6 gpm. The outlet stands at 345 in, the last station at 352.5, where the tip is 1.125 + 352.5 /
 * 192 = 2.96 in over the invert. As a hole an outlet of bore d asks for (1.6 / (19.637 x 0.61 d^2))^2 ft: 1/2 in 3.43 in, 3/4 in 0.68.
 */
const row = (outletBore: '1/2' | '3/4' | '2', values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { outletBore, ...values })

ruleTable('tip-air-min', {
  passes: [
    ['a film under tips 1.125 in over it', row('2')],
    ['a pool of 0.68 in, where the tips hang 2.96 over the invert', row('3/4')],
    // tip-window-min says it: 3.375 - 2.875 = 0.5 in over the invert.
    ['tips that hang too low over the trough itself', row('2', { tipBelowLip: 2.875 })],
    // gutter-run-max says it.
    ['a run that has no window', row('1/2', { racks: 4 })],
  ],
  fails: [
    [
      // 2.96 - (3.43 + 7.5 / 192) = -0.51 by hand; flows are taken in steps of 1 in 200.
      'a pool of 3.47 in over tips at 2.96',
      row('1/2'),
      'Clash, -0.501 of 0.75',
      'Tips of A hang 1/2" deep in the water of their trough; they want 3/4" of air over it. Give A a 2 in outlet.',
    ],
    [
      // Two racks at 1/32 in a foot, tips 1 in over the invert: 16 towers bring 1.067 gpm, (1.067 / 2.995)^2 = 0.127 ft or 1.52 in over
      // the outlet at 225; the last tip, 7.5 in on, hangs 1 + 232.5 / 384 = 1.605 over the invert: 1.605 - 1.52 - 0.02 = 0.06.
      'a pool that comes near the tips of a short row',
      row('1/2', { racks: 2, tipBelowLip: 2.375, gutterFall: 1 / 32 }),
      'Tight, 0.062 of 0.75',
      'The water in the troughs of A comes up to 1/16" under a tip; it should leave 3/4" of air. Give A a 1 in outlet.',
    ],
  ],
})
