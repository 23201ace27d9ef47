import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * Worked example of the trade notes, hand arithmetic: a pit 37 in deep stays 1 in and working room from a footing 36 in deep, 13 in
 * from one 24 in deep: the line that falls 1 in 1 from the footing's bottom edge. A footing of 12 in reaches 6 in from its post.
 */
const beside = (gap: number, footingDeep: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .post('Post', [200 - 6 - gap, 300], { footing: 12, footingDeep })
    .pit('Pit', { x: [200, 236], y: [243, 357] }, values)

const trenchBeside = (gap: number, footingDeep: number): Sketch =>
  bay('40 x 60 ft')
    .post('Post', [200, 100 + 5 + 6 + gap], { footing: 12, footingDeep })
    .drain(
      'D',
      [
        [100, 100],
        [300, 100],
      ],
      { startInvert: -18, trench: 10 },
    )

ruleTable('pit-footing-clear', {
  passes: [
    ['37 in deep, 1 in from a footing of 36 in', beside(1, 36)],
    ['37 in deep, 13 in from a footing of 24 in', beside(13, 24)],
    ['35 in deep, right beside a footing of 36 in', beside(0, 36, { bottom: -35 })],
    ['a post without a footing', beside(1, 0)],
    ['a tote on the floor', beside(1, 24, { bottom: 1 })],
    ['a trench that is not as deep as the footing', trenchBeside(1, 36)],
  ],
  fails: [
    [
      '37 in deep, 12 in from a footing of 24 in',
      beside(12, 24),
      'Clash, 12 of 13',
      'Pit is dug 12" from the footing of Post and 13" deeper than it; it wants 13" and working room. Move Pit 1" east.',
    ],
    [
      '37 in deep, right beside a footing of 36 in',
      beside(0, 36),
      'Clash, 0 of 1',
      'Pit is dug into the footing of Post and 1" deeper than it; it wants 1" and working room. Move Pit 1" east.',
    ],
    [
      // East is the wall; to the north or south it would go 68 in.
      'a pit at the wall, which no short move mends',
      bay('40 x 60 ft')
        .post('Post', [426, 300], { footing: 12, footingDeep: 24 })
        .pit('Pit', { x: [444, 480], y: [243, 357] }),
      'Clash, 12 of 13',
      'Pit is dug 12" from the footing of Post and 13" deeper than it; it wants 13" and working room.',
    ],
    [
      'a pit whose drain would end short of it',
      beside(12, 24).drain('D', [
        [100, 250],
        [200, 250],
      ]),
      'Clash, 12 of 13',
      'Pit is dug 12" from the footing of Post and 13" deeper than it; it wants 13" and working room.',
    ],
    [
      // 100 in along it the invert is at -18 - 100 / 12 / 8 = -19.04; 0.0775 in of wall and 2 in of bed make 21.12 dug, 3.11 under it
      // but for rounding.
      'a trench 3 in from a footing of 18 in',
      trenchBeside(3, 18),
      'Clash, 3 of 3.111',
      'The trench of D is dug 3" from the footing of Post and 3-1/8" deeper than it; it wants 3-1/8" and working room.',
    ],
  ],
})
