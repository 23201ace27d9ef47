import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Door and head aisles 6 to 8 ft; a work aisle at the very least. Common practice, no source.

/** A row whose leaves, 6 in before its first rack, start so far inside a door. */
const before = (gap: number, values = {}): Sketch =>
  bay('30 x 60 ft')
    .row('A', [165, gap + 6], { racks: 2 })
    .door('Door', [165, 0], { width: 60, ...values })

ruleTable('door-head-min', {
  passes: [
    ['6 ft before a door', before(72)],
    ['less before a door that people alone use', before(40, { access: 'people' })],
    [
      'a row beside the way of a door',
      bay('30 x 60 ft').row('A', [165, 40]).door('Door', [60, 0], { width: 60 }),
    ],
  ],
  fails: [
    [
      'an inch less',
      before(71),
      'Tight, 71 of 72',
      'A stands 71" in front of Door; turning a cart there wants 72".',
    ],
    [
      'less than a work aisle',
      before(35),
      'Clash, 35 of 72',
      'A stands 35" in front of Door; turning a cart there wants 72".',
    ],
  ],
})
