import { expect, test } from 'vitest'
import { bay, type Sketch } from '../support/bay'
import { told } from '../support/judged'
import { ruleTable } from '../support/ruleTable'

// The inlet stands 1 in over the overflow, so that a full pit never stands in the drain. Common practice, no source.

/** A drain that starts 8 in down and falls 2-1/2 in over 20 ft: its inlet is at -10.5. */
const inlet = (overflow: number, values = {}, start = -8): Sketch =>
  bay('40 x 60 ft')
    .drain(
      'D',
      [
        [160, 100],
        [400, 100],
      ],
      { startInvert: start },
    )
    .pit('Pit', { x: [400, 436], y: [50, 164] }, { overflow, ...values })

/** The same pit with a second drain, whose inlet is 1/2 in lower. */
const twoInlets = (overflow: number, start = -8.5): Sketch =>
  inlet(overflow).drain(
    'E',
    [
      [160, 130],
      [400, 130],
    ],
    { startInvert: start },
  )

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
    [
      // D falls from -20 to -22.5; with 3 in over a crown 4 in and a wall over its invert it may start at about -7-1/4, its inlet near -9-3/4.
      'a drain that starts far deeper than its cover asks',
      inlet(-13, {}, -20),
      'Backs up, -9.5 of 1',
      'D comes into Pit 9-1/2" under the overflow; it wants 1" over it. Start D as high as its cover allows.',
    ],
  ],
})

test('one mend lowers the overflow under every drain that comes into the pit', () => {
  // D comes in at -10.5 and E at -11: the overflow belongs at -12.
  expect(told('pit-inlet-level', twoInlets(-8.5))).toEqual([
    'D comes into Pit 2" under the overflow; it wants 1" over it. Set the overflow of Pit to -1\' 0".',
    'E comes into Pit 2-1/2" under the overflow; it wants 1" over it. Set the overflow of Pit to -1\' 0".',
  ])
})

test('a drain that starts too deep does not pull the overflow down for its neighbour', () => {
  // No overflow of this pit lies under E's inlet, so that D alone says how low it must be.
  expect(told('pit-inlet-level', twoInlets(-10, -20))[0]).toBe(
    'D comes into Pit 1/2" under the overflow; it wants 1" over it. Set the overflow of Pit to -11-1/2".',
  )
})
