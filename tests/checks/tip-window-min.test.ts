import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * A tip 1 in over the invert at the high end (1/4 in of water, 3/4 of air) and 1/4 in below the lip at the low end, and the
 * sums of one to three racks in a 3-3/8 in gutter: worked example of the trade notes, hand arithmetic.
 */
const hung = (tipBelowLip: number, racks = 3, values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { racks, tipBelowLip, ...values })

ruleTable('tip-window-min', {
  passes: [
    ['three racks as they come: 1.125 in over, 0.375 in below', hung(2.25)],
    ['the lowest that a tip may hang: 3.375 - 2.375 = 1', hung(2.375)],
    ['the highest: 2.125 - 1.875 of fall = 0.25', hung(2.125)],
    // gutter-run-max says it.
    ['a run that has no window', hung(2.25, 4)],
    // level-stack-short says it.
    ['a riser too short for the stack', hung(2.25, 3, { riser: 70 })],
    [
      'one rack beside three, whose tips hang 1.25 in higher than its own trough asks: still below its lip',
      hung(2.25).row('B', [265, 100], { racks: 1 }),
    ],
  ],
  fails: [
    [
      'a tip hung deeper: 3.375 - 2.875 = 0.5 in over the invert',
      hung(2.875),
      'Tight, 0.5 of 1',
      'The tips of A hang 1/2" over the invert at the high end of their troughs; they want 1" over it.',
    ],
    [
      'a tip in the bottom of the gutter: 3.375 - 3.5',
      hung(3.5),
      'Clash, -0.125 of 1',
      'The tips of A hang 1/8" under the invert at the high end of their troughs; they want 1" over it.',
    ],
    [
      'a tip hung higher: 1.5 - 1.875 = 3/8 in over the lip at the low end',
      hung(1.5),
      'Clash, -0.375 of 0.25',
      'The tips of A hang 3/8" above the lip at the low end of their troughs; they want 1/4" below it.',
    ],
    [
      'a shallow gutter: 2.75 - 2.25 = 0.5 in over the invert',
      hung(2.25, 2, { gutter: 'gutter-4in' }),
      'Tight, 0.5 of 1',
      'The tips of A hang 1/2" over the invert at the high end of their troughs; they want 1" over it.',
    ],
    [
      // B's bearers stand at 20 in and ask for tips at 20 + 0.25 + 0.625 + 3.375 - 2.25 = 22; A's low lip is at 10.625.
      'a row whose tips another row pulls out of its troughs',
      hung(2.25).row('B', [265, 100], { racks: 1, bearerTop: 20 }),
      'Clash, -11.375 of 0.25',
      'The tips of A hang 11-3/8" above the lip at the low end of their troughs; they want 1/4" below it.',
    ],
  ],
})
