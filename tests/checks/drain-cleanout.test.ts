import { bay, type Sketch, type Spot } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/*
 * A cleanout at the high end, at every change of direction, and none more than 100 ft from the next: International Plumbing
 * Code 708.1, from memory, edition unknown.
 */
const line = (points: readonly Spot[], cleanouts: 'none' | 'bends' | 'spaced'): Sketch =>
  bay('80 x 200 ft').drain('D', points, { cleanouts })

const straight = (inchesLong: number): readonly Spot[] => [
  [100, 100],
  [100, 100 + inchesLong],
]

const bent: readonly Spot[] = [
  [100, 100],
  [100, 400],
  [300, 400],
]

ruleTable('drain-cleanout', {
  passes: [
    ['one at the high end of 100 ft', line(straight(1200), 'bends')],
    ['one at the high end and one at the bend', line(bent, 'bends')],
    ['a line of 150 ft with one more in its middle', line(straight(1800), 'spaced')],
  ],
  fails: [
    [
      'a line without any',
      line(straight(600), 'none'),
      'Tight, 600 of 1200',
      'D has no cleanout at its high end: no rod comes into it. Give D its cleanouts.',
    ],
    [
      'a line of 100 ft and 1 in',
      line(straight(1201), 'bends'),
      'Tight, 1201 of 1200',
      'D has 100\' 1" without a cleanout; no more than 100\' 0" are wanted. Give D its cleanouts.',
    ],
  ],
})
