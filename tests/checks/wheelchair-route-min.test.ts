import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 2010 ADA Standards: 403.5.1, 36 in clear width of a walking surface; 304.3.1, turning space 60 in in diameter.

/** One row, 66 in wide, with the same way on both sides; its leaves end `turn` in short of the south wall, where the door is. */
const route = (way: number, turn: number, wheelchair = true): Sketch =>
  bay(`${66 + 2 * way} x 500 in`)
    .row('A', [33 + way, turn + 6], { racks: 3 })
    .door('Door', [33 + way, 0], { width: 66 })
    .settings({ wheelchair })

ruleTable('wheelchair-route-min', {
  passes: [
    ['36 in to a side and 60 in at an end', route(36, 60)],
    ['less where no wheelchair route is asked for', route(30, 40, false)],
  ],
  fails: [
    [
      '35 in to both sides',
      route(35, 60),
      'Clash, 35 of 36',
      'The way to A is 35" clear; a wheelchair wants 36".',
    ],
    [
      '59 in at the wider end',
      route(36, 59),
      'Tight, 59 of 60',
      'At the ends of A there is 59" to turn a wheelchair; it wants 60".',
    ],
  ],
})
