import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 4 in from trough invert to drain crown: room for outlet, tube and slack. Common practice, no source.

/**
 * A trough of 120 in whose outlet, 15 in from its low end, is 105 in down: 105/12/16 = 35/64 in under its high end.
 * The drain has 3 in of cover at its start, right under the outlet: its crown is at -3.
 */
const trough = (overFloor: number, level = 0): Sketch =>
  bay('40 x 60 ft')
    .level([0, 0], level)
    .trough('T', [165, 100], { highInvert: overFloor + 35 / 64 })
    .drain('D', [
      [165, 205],
      [300, 205],
    ])

/** A row stands on the highest floor of the bay, the trench lies where the floor is. */
const row = (): Sketch =>
  bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain('D', [
      [100, 325],
      [300, 325],
    ])

ruleTable('outlet-drop-min', {
  passes: [
    ['4 in from invert to crown', trough(1)],
    ['the same on a floor at another level', trough(1, -20)],
    ['rows on their runners', row()],
  ],
  fails: [
    [
      '1/16 in less',
      trough(15 / 16),
      'Flat, 3.938 of 4',
      'T has 3-15/16" from trough to the crown of D; it wants 4".',
    ],
    [
      'a drain laid over the floor, its crown higher than the trough',
      bay('40 x 60 ft')
        .trough('T', [165, 100], { highInvert: 1 + 35 / 64 })
        .drain(
          'D',
          [
            [165, 205],
            [300, 205],
          ],
          { startInvert: -3, cover: 0 },
        ),
      // Crown at -3 + 4.215 - 0.078 = 1.137.
      'Backs up, -0.137 of 4',
      'T has -1/8" from trough to the crown of D; it wants 4".',
    ],
  ],
})
