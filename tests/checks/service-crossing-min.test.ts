import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 12 in of earth between a dig and any buried line. Common practice, no source; call before you dig.

/**
 * A 4 in drain under 3 in of cover in 2 in of sand is dug 3 + 4.215 + 2 = 9.215 in deep at its high end, and 60 in further
 * on at 1/8 in a foot, where it crosses the line, 0.625 in deeper: 9.84 in.
 */
const over = (depth: number): Sketch =>
  bay('40 x 60 ft')
    .drain('D', [
      [100, 100],
      [220, 100],
    ])
    .buried(
      'gas',
      'Gas line',
      [
        [160, 0],
        [160, 300],
      ],
      depth,
    )

ruleTable('service-crossing-min', {
  passes: [
    ['12 in and a hair under the trench', over(21.84)],
    [
      'a line that the trench does not cross',
      bay('40 x 60 ft')
        .drain('D', [
          [100, 100],
          [220, 100],
        ])
        .buried(
          'wire',
          'Wire',
          [
            [100, 110],
            [220, 110],
          ],
          6,
        ),
    ],
  ],
  fails: [
    [
      '21-1/2 in deep: 11.66 in under the trench',
      over(21.5),
      'Tight, 11.66 of 12',
      'D is dug to 11-11/16" over the gas line “Gas line”, 21-1/2" deep; it wants 12". Call before you dig.',
    ],
    [
      'a line in the trench itself',
      over(6),
      'Clash, -3.84 of 12',
      'D is dug through the gas line “Gas line”, 6" deep. Call before you dig, and have it located and moved first.',
    ],
    [
      'a pit over a wire',
      bay('40 x 60 ft')
        .pit('Pit', { x: [100, 136], y: [50, 164] }, { bottom: -37 })
        .buried(
          'wire',
          'Feed',
          [
            [0, 100],
            [300, 100],
          ],
          18,
        ),
      'Clash, -19 of 12',
      'Pit is dug through the buried wire “Feed”, 18" deep. Call before you dig, and have it located and moved first.',
    ],
  ],
})
