import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 3 in of undisturbed ground between a trench and a foot plate. Common practice, no source.

/**
 * Riser pairs stand 30 in apart, on plates 8 in long along the row: the third pair, 60 in up the row, covers y = 156 to 164.
 * A trench is 10 in wide.
 */
const trenchAt = (y: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain(
      'D',
      [
        [100, y],
        [300, y],
      ],
      values,
    )

const pitFrom = (x: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100])
    .pit('Pit', { x: [x, x + 36], y: [150, 264] }, values)

ruleTable('trench-foot-clear', {
  passes: [
    ['a trench in the middle of a riser bay: 15 - 4 - 5 = 6 in', trenchAt(175)],
    ['3 in from a plate', trenchAt(172)],
    ['a narrow trench nearer to it', trenchAt(169, { trench: 4 })],
    [
      'a trench that passes beside the row',
      bay('40 x 60 ft')
        .row('A', [165, 100])
        .drain('D', [
          [100, 100],
          [100, 400],
        ]),
    ],
    // The plate at x = 185 reaches 8 in across the row, to 193.
    ['a pit 3 in from the plates', pitFrom(196)],
    ['a tote that stands on the floor over them', pitFrom(180, { bottom: 1 })],
  ],
  fails: [
    [
      '2 in from a plate',
      trenchAt(171),
      'Tight, 2 of 3',
      'The trench of D passes 2" from a foot plate of A; it wants 3".',
    ],
    [
      'a trench under a plate',
      trenchAt(160),
      'Clash, -9 of 3',
      'The trench of D runs under a foot plate of A.',
    ],
    [
      'a pit 1 in from the plates',
      pitFrom(194),
      'Tight, 1 of 3',
      'Pit passes 1" from a foot plate of A; it wants 3".',
    ],
    ['a pit under a plate', pitFrom(190), 'Clash, -3 of 3', 'Pit runs under a foot plate of A.'],
    [
      'a line whose second leg comes nearest',
      bay('40 x 60 ft')
        .row('A', [165, 100], { racks: 2 })
        .drain('D', [
          [100, 171],
          [300, 171],
          [300, 172],
          [100, 172.5],
        ]),
      'Tight, 2 of 3',
      'The trench of D passes 2" from a foot plate of A; it wants 3".',
    ],
  ],
})
