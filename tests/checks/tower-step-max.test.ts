import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Grip reach upward: 71.1 in of a small woman, 87.0 in of a tall man (Pheasant, Bodyspace, 1996); a step platform is 10 in high, common
// practice, no source. Tips hang at 10-1/4 in and hooks are 2-1/2 in: the bars are 12-3/4 in higher than a tower is long.
const rowOf = (tower: number): Sketch => bay('30 x 60 ft').row('A', [165, 100], { tower })

ruleTable('tower-step-max', {
  passes: [
    ['bars at 72-3/4 in, which want a step', rowOf(60)],
    ['bars just under 71.1 + 10 = 81.1 in: 12-3/4 + 68', rowOf(68)],
  ],
  fails: [
    [
      'bars a little over it',
      rowOf(69),
      'Tight, 81.75 of 81.1',
      'The bars of A are 81-3/4" over the floor where it is lowest; from a step platform everybody grips 81-1/8".',
    ],
    [
      'bars that a tall man does not grip from a step: over 87 + 10 in',
      rowOf(85),
      'Clash, 97.75 of 81.1',
      'The bars of A are 97-3/4" over the floor where it is lowest; from a step platform everybody grips 81-1/8".',
    ],
  ],
})
