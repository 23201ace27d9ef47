import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/**
 * A wall that leans in: at the wall 60 in high, an inch more for each inch away from it. A tower of the sample bay is off
 * its bar at 79-1/4 in over the highest foot, the worked example of the trade notes: laterals at 76, 2-1/4 in out of the
 * trough, 1 in of hook. With 2 in of air (common practice, no source) that is 81-1/4 in, 21-1/4 in off the wall; the leaves
 * reach 33 in from the middle of the row.
 */
const leaning = (x: number, y = 100): Sketch =>
  bay('40 x 60 ft')
    .house({ headroom: 120 })
    .curved(3, [
      [0, 60],
      [60, 120],
    ])
    .row('A', [x, y])

/** The same under the south wall: the leaves reach 6 in past the end of the row. */
const leaningSouth = (y: number): Sketch =>
  bay('40 x 60 ft')
    .house({ headroom: 120 })
    .curved(0, [
      [0, 60],
      [60, 120],
    ])
    .row('A', [240, y])

ruleTable('headroom-min', {
  passes: [
    ['a row 21-1/4 in off the wall', leaning(54.25)],
    ['a row end 21-1/4 in off the wall', leaningSouth(27.25)],
    ['a low roof that is high enough', bay('40 x 60 ft').house({ headroom: 81.25 }).row('A', [100, 100])],
  ],
  fails: [
    [
      'the first inch nearer to the wall',
      leaning(53.25),
      'Tight, 80.25 of 81.25',
      'A wants 81-1/4" of headroom to lift a tower off; the roof leaves 80-1/4". Move A 1" east.',
    ],
    [
      'a tower that just comes off',
      leaning(52.25),
      'Tight, 79.25 of 81.25',
      'A wants 81-1/4" of headroom to lift a tower off; the roof leaves 79-1/4". Move A 2" east.',
    ],
    [
      'a tower that does not come off',
      leaning(51.25),
      'Clash, 78.25 of 81.25',
      'A wants 81-1/4" of headroom to lift a tower off; the roof leaves 78-1/4". Move A 3" east.',
    ],
    [
      'a row end too near to a leaning end wall',
      leaningSouth(25.25),
      'Tight, 79.25 of 81.25',
      'A wants 81-1/4" of headroom to lift a tower off; the roof leaves 79-1/4". Move A 2" north.',
    ],
    [
      'a roof that is too low everywhere',
      bay('40 x 60 ft').house({ headroom: 80 }).row('A', [100, 100]),
      'Tight, 80 of 81.25',
      'A wants 81-1/4" of headroom to lift a tower off; the roof leaves 80".',
    ],
  ],
})
