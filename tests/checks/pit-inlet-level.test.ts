import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// The inlet stands 1 in over the overflow, so that a full pit never stands in the drain. Common practice, no source.

/** A drain that starts 8 in down and falls 2-1/2 in over 20 ft: its inlet is at -10.5. */
const inlet = (overflow: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .drain(
      'D',
      [
        [160, 100],
        [400, 100],
      ],
      { startInvert: -8 },
    )
    .pit('Pit', { x: [400, 436], y: [50, 164] }, { overflow, ...values })

ruleTable('pit-inlet-level', {
  passes: [
    ['an inlet 1 in over the overflow', inlet(-11.5)],
    ['an inlet high over it', inlet(-20)],
  ],
  fails: [
    [
      'an inlet 15/16 in over the overflow',
      inlet(-11.4375),
      'Flat, 0.938 of 1',
      'D comes into Pit 15/16" over the overflow; it wants 1" over it. Set the overflow of Pit to -11-1/2".',
    ],
    [
      'an inlet 2 in under the overflow',
      inlet(-8.5),
      'Backs up, -2 of 1',
      'D comes into Pit 2" under the overflow; it wants 1" over it. Set the overflow of Pit to -11-1/2".',
    ],
    [
      // The overflow alone, at -11.5, would stand under what runs home, which fills the pit to -11.
      'an inlet 2 in under the overflow of a full pit',
      inlet(-8.5, { drainBack: -11 }),
      'Backs up, -2 of 1',
      'D comes into Pit 2" under the overflow; it wants 1" over it. Let Pit down 3", all its levels but the rim.',
    ],
  ],
})
