import { expect, test } from 'vitest'
import { bay, type Sketch } from '../support/bay'
import { findingsOf } from '../support/judged'
import { ruleTable } from '../support/ruleTable'
import { inchesOf } from '../support/site'

// A block over 1-1/2 in of shim, refused over 4 in. Common practice, no source.

/** The feet of three racks stand from 2-1/8 in up the row to 2-1/8 in short of 360: 355.75 in apart. */
const falling = (by: number): Sketch =>
  bay('40 x 60 ft').level([0, 0], 0).level([0, 355.75], -by).row('A', [165, 100])

ruleTable('foot-shim-max', {
  passes: [
    ['a level floor', bay('40 x 60 ft').row('A', [165, 100])],
    ['1-1/2 in of shim', falling(1.5)],
    ['what stacks up to 1-1/2 in', falling(1.52)],
    ['a floor that falls where nothing stands', bay('40 x 60 ft').level([0, 0], 0).level([0, 300], -20)],
  ],
  fails: [
    [
      '1-9/16 in',
      falling(1.5625),
      'Tight, 1.563 of 1.5',
      'The feet of A want up to 1-9/16" of shim; over 1-1/2" a block is steadier.',
    ],
    [
      '4 in',
      falling(4),
      'Tight, 4 of 1.5',
      'The feet of A want up to 4" of shim; over 1-1/2" a block is steadier.',
    ],
    [
      '4-1/16 in',
      falling(4.0625),
      'Clash, 4.063 of 4',
      'The feet of A want up to 4-1/16" of shim; over 4" grade the floor or step the row.',
    ],
  ],
})

test('points at the foot with the tallest shim, at the low end of the row', () => {
  const [finding] = findingsOf('foot-shim-max', falling(2))
  expect(inchesOf(finding!.at.y)).toBe(100 + 360 - 2.125)
})

test('counts from the highest foot of the bay, whichever row it stands in', () => {
  const high = falling(1).row('B', [300, 100])
  expect(findingsOf('foot-shim-max', high)).toEqual([])
  // 300 in further up the slope: 300 / 355.75 + 1 = 1.843.
  const [finding] = findingsOf('foot-shim-max', falling(1).row('B', [300, -200]))
  expect(finding!.measured.value / 25.4).toBeCloseTo(1.843, 3)
})

test('with the rails level row by row, each row counts from its own highest foot', () => {
  // 300 in further up the slope, as above: each row's own feet differ by 1 in.
  const rows = falling(1).row('B', [300, -200]).settings({ datum: 'row' })
  expect(findingsOf('foot-shim-max', rows)).toEqual([])
})
