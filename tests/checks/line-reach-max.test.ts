import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// At most 30 in from an aisle: common practice; a small woman's forward grip reach is 25.8 in, a tall man's 33.3 in
// (Pheasant, Bodyspace, 1996).

/**
 * A row of two lines whose west side is 12 in off the wall, where nobody stands: both are reached from the east. Its frame is
 * wider than its leaves: 40 + 3-1/2 + 2 x 1-1/2 in to the outside of the runners, half an inch and a half more at splices.
 */
const oneSided = (lineSpacing: number): Sketch =>
  bay('30 x 60 ft').row('A', [12 + 24.75, 100], { lines: 2, lineSpacing })

/** Between two walls 12 in off: nobody stands at either side. */
const shutIn = (): Sketch => bay('90 x 720 in').row('A', [45, 100])

ruleTable('line-reach-max', {
  passes: [
    ['four lines from both sides', bay('30 x 60 ft').row('A', [165, 100])],
    ['two lines 24 in apart from one side: 6 + 24 = 30', oneSided(24)],
    [
      'five lines 12 in apart from both sides: the middle is 30 in in',
      bay('30 x 60 ft').row('A', [165, 100], { lines: 5, lineSpacing: 12 }),
    ],
    ['a side that is just wide enough to stand', bay('30 x 60 ft').row('A', [51, 100])],
  ],
  fails: [
    [
      'two lines 25 in apart from one side',
      oneSided(25),
      'Tight, 31 of 30',
      'Line 1 of A is 31" from where a person can stand; an arm reaches 30".',
    ],
    [
      'four lines from one side: 6 + 3 x 18 = 60',
      bay('30 x 60 ft').row('A', [50.9375, 100]),
      'Tight, 60 of 30',
      'Line 1 of A is 60" from where a person can stand; an arm reaches 30".',
    ],
    [
      'a row with nowhere to stand',
      shutIn(),
      'Clash, 66 of 30',
      'A can be worked from neither side: nobody can stand along it.',
    ],
  ],
})
