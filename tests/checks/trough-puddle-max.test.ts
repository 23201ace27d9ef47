import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * 1/8 in of film: common practice, no source. The outlet of a row stands half a riser bay from its last rack line, and the gutter goes
 * on 3-1/2 in past that: 15 + 3.5 = 18.5 in at 1/16 in a foot are 0.096 in, the worked example of the trade notes.
 */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], { racks: 1, ...values })
const lone = (values = {}): Sketch => bay('40 x 60 ft').trough('T', [165, 100], values)

ruleTable('trough-puddle-max', {
  passes: [
    ['a row as it comes: 0.096 in', row()],
    ['a lone trough as it comes: 15 in at 1/16 in a foot, 0.078', lone()],
    ['12 in at 1/8 in a foot: just 0.125', lone({ gutterFall: 1 / 8, outletFromLow: 12 })],
  ],
  fails: [
    [
      '18.5 in at 1/8 in a foot: 0.193',
      row({ gutterFall: 1 / 8 }),
      'Tight, 0.193 of 0.125',
      'When the pump rests 3/16" of water stands behind the outlets of A; no more than 1/8" is wanted.',
    ],
    [
      '30 in at 1/8 in a foot: 0.3125, and 12 in would do',
      lone({ gutterFall: 1 / 8, outletFromLow: 30 }),
      'Tight, 0.312 of 0.125',
      'When the pump rests 5/16" of water stands behind the outlets of T; no more than 1/8" is wanted. Set the outlet of T 12" from its low end.',
    ],
  ],
})
