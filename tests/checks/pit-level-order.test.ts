import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// What runs home stays 1 in under the overflow: common practice, no source.
const pit = (values = {}): Sketch => bay('40 x 60 ft').pit('Pit', { x: [400, 436], y: [50, 164] }, values)

ruleTable('pit-level-order', {
  passes: [
    ['a pit as it comes, its overflow 1 in over what runs home', pit()],
    ['two levels in one', pit({ makeUp: -22.5 })],
  ],
  fails: [
    [
      'a drain-back level 1/2 in under the overflow',
      pit({ overflow: -13.5 }),
      'Flat, 0.5 of 1',
      'The drain-back level of Pit is 1/2" under its overflow; it wants 1" under it.',
    ],
    [
      'an overflow let down past it',
      pit({ overflow: -17 }),
      'Backs up, -3 of 1',
      'The drain-back level of Pit is 3" over its overflow; it wants 1" under it.',
    ],
    [
      // The intake stands 2 in over the bottom: -28 + 2 = -26, and the pump stops at -29.
      'a pump that stops under its intake',
      pit({ bottom: -28 }),
      'Backs up, -3 of 0',
      'The pump intake of Pit is 3" over its pump-off level; it belongs under it.',
    ],
  ],
})
