import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * P/2 - 8.25/2 - 0.922/2 at least 1/4 in, so a pitch of 9.67 in is the least; at 8 in a bar would sit on the sleeve. Worked
 * example of the trade notes, hand arithmetic.
 */
const pitch = (rackLength: number, barsPerRack: number, values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { rackLength, barsPerRack, racks: 2, midPairs: 1, ...values })

const on = 'A hanger bar of A sits on a sleeve and hangs higher than its neighbours.'

ruleTable('bar-sleeve-gap', {
  passes: [
    ['15 in', pitch(120, 8)],
    ['9.675 in', pitch(116.1, 12)],
    ['8 in in a rack of its own, which has no sleeve', pitch(96, 12, { racks: 1 })],
  ],
  fails: [
    ['8 in: 4 - 4.125 - 0.461', pitch(96, 12), 'Clash, -0.586 of 0.25', on],
    ['8.73 in', pitch(96, 11), 'Clash, -0.222 of 0.25', on],
    [
      '9.6 in',
      pitch(96, 10),
      'Tight, 0.214 of 0.25',
      'A hanger bar of A lies 3/16" from a sleeve; it wants 1/4".',
    ],
  ],
})
