import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/* Four diameters of 3/4 in conduit: 4 x 0.922 = 3.688. Common practice, no source. */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('rail-insertion-min', {
  passes: [
    ['4 in', row()],
    ['3-11/16 in less a hair', row({ insertion: 3.6879 })],
    ['big and small sticks, which overlap by 6 in', row({ joint: 'J3', insertion: 3 })],
    ['3 in in a rack of its own, which has no joint', row({ racks: 1, insertion: 3 })],
  ],
  fails: [
    [
      '3-1/2 in',
      row({ insertion: 3.5 }),
      'Tight, 3.5 of 3.688',
      'The rails of A go 3-1/2" into their joints; they want 3-11/16", four times their diameter.',
    ],
  ],
})
