import { expect, test } from 'vitest'
import { digCautions } from '../../src/model/digCautions'
import { inches } from '../../src/units/length'
import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * A ladder from 4 ft on, sides sloped or shored from 5 ft on: 29 CFR 1926.651(c)(2), 1926.652(a)(1), from memory. A 4 in line of
 * one level is dug to its invert, a wall of 0.0775 in and a bed of 2 in below that.
 */
const dug = (depth: number): Sketch =>
  bay('40 x 60 ft').drain(
    'D',
    [
      [60, 100],
      [156, 100],
    ],
    // 8 ft at 1/8 in a foot fall 1 in.
    { startInvert: -(depth - 2 - 0.0775 - 1) },
  )

ruleTable('dig-depth-max', {
  passes: [
    ['a trench of 24 in, which is told on paper alone', dug(24)],
    ['a trench of 47-7/8 in', dug(47.875)],
  ],
  fails: [
    [
      'a trench of 4 ft',
      dug(48),
      'Tight, 48 of 48',
      'D is dug 48" deep; from 48" on a ladder stands by whoever is in it, and a competent person looks at it daily.',
    ],
    ['a trench just short of 5 ft', dug(59.875), 'Tight, 59.875 of 48', expect.stringContaining('a ladder')],
    [
      'a trench of 5 ft',
      dug(60),
      'Clash, 60 of 60',
      'D is dug 60" deep; from 60" on nobody goes in until its sides are sloped or shored as a competent person says.',
    ],
  ],
})

test('cautions grow with the depth: marks at once, a fence from 2 ft, a ladder from 4 ft, held sides from 5 ft', () => {
  const begins = (depth: number) =>
    digCautions(inches(depth), 'feet-inches').map((words) => words.split(':')[0])
  expect([0, 12, 24, 48, 60].map(begins)).toEqual([
    [],
    ['Digging'],
    ['Digging'],
    ['Digging', 'Ladder'],
    ['Digging', 'Ladder', 'Sides'],
  ])
  expect([23.9, 24].map((depth) => digCautions(inches(depth), 'metric')[0]!.includes('fence'))).toEqual([
    false,
    true,
  ])
  expect(digCautions(inches(48), 'metric').join(' ')).toContain('7.6 m')
})
