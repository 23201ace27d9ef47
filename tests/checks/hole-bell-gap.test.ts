import { expect, test } from 'vitest'
import { bay, type Sketch } from '../support/bay'
import { evaluate } from '../../src/evaluate/evaluate'
import { ruleTable } from '../support/ruleTable'

/*
 * 4 in of whole pipe between a hole's edge and a bell: common practice, no source. Sticks of 10 ft are laid from the low end
 * up. Bells 1-3/4 in deep (ASTM D2729, from memory) reach from their mouths downhill. A hole for a 2 in drop tube is 2-1/2 in.
 * Along the fall 10 ft of pipe are 0.007 in short of 10 ft on the flat: 120 x (1/96)^2 / 2.
 * The troughs' outlets drop at the numbers told, from the low end at x = 400.
 */
const lone = (fromLow: number, values: { firstStick?: number } = {}): Sketch =>
  bay('40 x 60 ft')
    .drain(
      'D',
      [
        [60, 100],
        [400, 100],
      ],
      values,
    )
    // Falls south over 100 in; its outlet lies 6 in from its low end, over the line.
    .trough('T', [400 - fromLow, 194], { heading: 270, length: 100, outletFromLow: 6, highInvert: 20 })

ruleTable('hole-bell-gap', {
  passes: [
    // The first mouth lies at 120; downhill of it the bell ends at 118.25. 118.25 - 4 - 1.25 = 113.
    ['a hole 112-7/8 in up, its edge 4-1/8 in downhill of the bell', lone(112.875)],
    // 120 + 4 + 1.25 = 125.25.
    ['a hole 125-1/4 in up, its edge 4 in uphill of the mouth', lone(125.25)],
    ['a hole at 120 in where the first stick is 60 in, the next bell at 180', lone(120, { firstStick: 60 })],
  ],
  fails: [
    [
      'a hole 114 in up, 3 in from the bell',
      lone(114),
      'Tight, 2.993 of 4',
      // A mouth downhill of the hole lies at 114 - 1.25 - 4 = 108.75 at most, in whole inches 108.
      'The hole 9\' 6" from the low end of D is 3" from a bell; it wants 4". Start D with a stick of 108" at its low end.',
    ],
    [
      'a hole in the mouth of a bell',
      lone(120),
      'Clash, -1.243 of 4',
      'The hole 10\' 0" from the low end of D runs into a bell; it wants 4" of whole pipe beside it. Start D with a stick of 114" at its low end.',
    ],
  ],
})

test('pipe is counted as it is laid: a first stick, whole ones after it, and a rest', () => {
  // 340 in at 1/8 in a foot are 340.018 in along the pipe: 60, two of 120, and 40.018.
  const { cuts } = evaluate(lone(130, { firstStick: 60 }).layout())
  const pieces = cuts
    .find(({ stock }) => stock === 'drain-4in')!
    .bought.reduce((sum, { count }) => sum + count, 0)
  // 60 and 40 in come out of one stick.
  expect(pieces).toBe(3)
})
