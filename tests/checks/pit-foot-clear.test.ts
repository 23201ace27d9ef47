import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * As a footing's, a foot plate's load spreads at 1 to 1 (common practice, no source; IRC P2604.4 of trenches beside footings): a pit
 * 37 in deep leaves 37 in. Rails 40 in apart about x = 165: plates of 16 in reach from the riser, at 185, to 193.
 */
const beside = (gap: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100])
    .pit('Pit', { x: [193 + gap, 229 + gap], y: [150, 264] }, values)

ruleTable('pit-foot-clear', {
  passes: [
    ['as far as the pit is deep', beside(37)],
    ['a shallower pit nearer by', beside(30, { bottom: -30 })],
    ['a tote on the floor', beside(9, { bottom: 1 })],
    ['a pit under a plate, of which another rule tells', beside(-2)],
    [
      'a trench as near, which is filled again',
      bay('40 x 60 ft')
        .row('A', [165, 100])
        .drain(
          'D',
          [
            [202, 100],
            [202, 300],
          ],
          { trench: 10, startInvert: -18 },
        ),
    ],
  ],
  fails: [
    [
      'a pit 37 in deep, 36 in from a plate',
      beside(36),
      'Tight, 36 of 37',
      'Pit is dug 36" from a foot plate of A and 37" deep: its wall there bears the rack, and must be built to.',
    ],
    [
      'the nearer of two rows, once',
      beside(9).row('B', [193 + 9 + 36 + 12 + 28, 100]),
      'Tight, 9 of 37',
      'Pit is dug 9" from a foot plate of A and 37" deep: its wall there bears the rack, and must be built to.',
    ],
  ],
})
