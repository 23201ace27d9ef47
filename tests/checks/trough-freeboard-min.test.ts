import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * 2 in free after a minute: common practice, no source. What runs in within a minute lies on the film as a wedge at the low end. A 4 in
 * gutter (2.5 in at the bottom, 4 at the lip 2.75 up) of one rack at 1/16 in a foot takes 8 towers of 4 gph, 0.533 gal or 123.2 in3 a
 * minute: 192 (1.25 d^2 + 0.0909 d^3) = 123.2 alone is d = 0.69 in; with all of the film that was running, 48 in3, it is 0.81.
 */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('trough-freeboard-min', {
  passes: [
    ['three racks of 5 in gutter as they come', row()],
    ['one rack', row({ racks: 1 })],
    ['a trough that nothing drips into', bay('40 x 60 ft').trough('T', [100, 100], { gutter: 'gutter-4in' })],
    // outlet-flow-max says it.
    ['a trough that runs over with its outlet free', row({ outletBore: '1/2' })],
  ],
  fails: [
    [
      'one rack of 4 in gutter: 2.75 less 0.69 to 0.81',
      row({ racks: 1, gutter: 'gutter-4in', tipBelowLip: 1.625 }),
      'Tight, 1.954 of 2',
      'With its outlet blocked for a minute a trough of A fills to 1-15/16" under its lip; 2" should stay free.',
    ],
    [
      // 1.52 in over the outlet before it is blocked (tip-air-min has the sum), and 246 in3 more over some 3.3 by 240 in: 0.3.
      'two racks whose 1/2 in outlet had backed them up already: 3.375 - 1.6 - 0.3',
      row({ racks: 2, outletBore: '1/2' }),
      'Tight, 1.487 of 2',
      'With its outlet blocked for a minute a trough of A fills to 1-1/2" under its lip; 2" should stay free.',
    ],
  ],
})
