import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * Gutter 5 in wide at the lip and 3-1/4 in at the invert, 3-3/8 in deep: 2-1/4 in down it is 5 - 1.75 x 2/3 = 3.833 in wide.
 * A tip wants 1/4 in on both sides: common practice, no source.
 */
const tip = (width: number, values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { tip: width, ...values })

ruleTable('tip-trough-width', {
  passes: [
    ['a 2 in drip tip', tip(2)],
    ['a tip of 3-5/16 in', tip(3.3125)],
    ['a 4-1/2 in body at the very lip', tip(4.5, { tipBelowLip: 0 })],
  ],
  fails: [
    [
      'a tip of 3-3/8 in',
      tip(3.375),
      'Tight, 3.833 of 3.875',
      'The trough of A is 3-13/16" wide where the tip hangs; the tip wants 3-7/8".',
    ],
    [
      'a 4-1/2 in tower body without a drip tip',
      tip(4.5),
      'Clash, 3.833 of 5',
      'The trough of A is 3-13/16" wide where the tip hangs; the tip wants 5".',
    ],
  ],
})
