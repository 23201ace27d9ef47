import { bay, type Sketch } from '../support/bay'
import { fromShelf } from '../support/rackRows'
import { ruleTable } from '../support/ruleTable'

/*
 * One rack of 60 in towers asks for a riser of 70.6248 in, three for 71.8748: worked examples of the trade notes, hand
 * arithmetic. A riser that is fixed and shorter lets the tips hang too low by as much.
 */
const fixed = (riser: number | null, racks = 1, values = {}): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { racks, riser, ...values })

/** The low rack as it comes off the shelf: halved boards, 5-1/2 ft risers, full 5 ft towers. */
const low = () => {
  const empty = bay('40 x 60 ft').layout()
  return { ...empty, parts: [{ ...fromShelf('low-rack'), name: 'A' }] }
}

const mend = 'Let the risers of A be as long as the levels ask.'

ruleTable('level-stack-short', {
  passes: [
    ['risers as long as the levels ask', fixed(null)],
    ['a half of a 12 ft board under three racks', fixed(71.9375, 3)],
    ['shorter towers on a short riser', fixed(66, 1, { tower: 55 })],
  ],
  fails: [
    [
      // tests/parts/rack-row/lowRack.test.ts has the sum.
      'a low rack under full towers: 2.85 in',
      low(),
      'Clash, 2.85 of 0',
      `The stack of levels of A is 2-7/8" short: the tips would hang that much too low for their troughs. ${mend}`,
    ],
    [
      'a 66 in riser: 70.625 - 66',
      fixed(66),
      'Clash, 4.625 of 0',
      `The stack of levels of A is 4-5/8" short: the tips would hang that much too low for their troughs. ${mend}`,
    ],
    [
      'a 70 in riser under three racks: 71.875 - 70',
      fixed(70, 3),
      'Clash, 1.875 of 0',
      `The stack of levels of A is 1-7/8" short: the tips would hang that much too low for their troughs. ${mend}`,
    ],
  ],
})
