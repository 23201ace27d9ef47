import { expect, test } from 'vitest'
import { bay, type Sketch } from '../support/bay'
import { findingsOf, judged, mended } from '../support/judged'
import { ruleTable } from '../support/ruleTable'

/*
 * Crowns level where pipes meet: common practice, no source. A line that starts 20 in down and falls 1/8 in a foot is, 10 ft
 * on, at -21.25. A branch of 8 ft falls 1 in.
 */
const branch = (startInvert: number, values = {}): Sketch =>
  bay('40 x 60 ft')
    .drain(
      'D',
      [
        [100, 100],
        [400, 100],
      ],
      { startInvert: -20 },
    )
    .pit('Pit', { x: [400, 436], y: [50, 164] }, { overflow: -30, drainBack: -31, running: -32 })
    .drain(
      'Branch',
      [
        [220, 196],
        [220, 100],
      ],
      { startInvert, ...values },
    )

ruleTable('drain-branch-level', {
  passes: [
    ['a branch as low as the line, both of 4 in', branch(-20.25)],
    ['a branch high over it', branch(-10)],
    // Bores of 4.06 and 2.067 in: 1.993 in from invert to invert puts the crowns level. It falls 1/8 in a foot here.
    [
      'a 2 in branch with its crown level with that of the line',
      branch(-20.25 + 1.993, { pipe: 'drain-2in' }),
    ],
  ],
  fails: [
    [
      'a branch 3/4 in lower',
      branch(-21),
      'Backs up, -0.75 of 0',
      'Branch comes into D 3/4" under its invert; it wants to be no lower. Start D at -1\' 8-3/4".',
    ],
    [
      'a 2 in branch invert to invert with a 4 in line',
      branch(-20.25, { pipe: 'drain-2in' }),
      'Flat, 0 of 1.993',
      'Branch comes into D 0" over its invert; it wants 2" over it. Start D at -1\' 10".',
    ],
    // Lowered by 8-3/4 in the line would come into the pit at -23.9 - 8.75 = -32.6, under its overflow at -30: no press mends that.
    [
      'a branch so low that the pit would have to follow',
      branch(-29),
      'Backs up, -8.75 of 0',
      'Branch comes into D 8-3/4" under its invert; it wants to be no lower.',
    ],
  ],
})

test('of two branches the lower one says how low the line starts', () => {
  const both = branch(-21).drain(
    'Other',
    [
      [340, 196],
      [340, 100],
    ],
    // The line lies at -22.5 there, 20 ft on; this branch falls 1 in and comes in at -24.5, 2 in too low.
    { startInvert: -23.5 },
  )
  for (const { mend } of findingsOf('drain-branch-level', both))
    expect(mend).toMatchObject({ field: 'startInvertMm', value: expect.closeTo(-22 * 25.4, 6) })
  expect(judged('drain-branch-level', mended('drain-branch-level', both))).toEqual([])
})
