import { expect, test } from 'vitest'
import { aisleClass } from '../../src/checks/aisles'
import { inches } from '../../src/units/length'
import { bay, type Sketch } from '../support/bay'
import { aisleBetween, findingsOf, judged } from '../support/judged'
import { ruleTable } from '../support/ruleTable'
import { inchesOf } from '../support/site'

// Work aisle 36 in, or cart + 6 in on both sides; row ends 36 in; leaf to wall 6 in; a person squeezes through 18 in.
// Common practice, no source.

/** A row of four lines is 66 in wide with its leaves: 3 x 18 + 2 x 6. */
const rows = (secondX: number): Sketch =>
  bay('30 x 60 ft').row('A', [63, 100], { racks: 2 }).row('B', [secondX, 100], { racks: 2 })

/** Two racks are 240 in long, and reach 6 in further with their leaves. */
const one = (x: number, y: number): Sketch => bay('30 x 60 ft').row('A', [x, y], { racks: 2 })

const endToEnd = (secondY: number): Sketch => one(165, 50).row('B', [165, secondY], { racks: 2 })

/** A post 4 in wide before the north end of a row, whose leaves end at y = 346. */
const beforePost = (y: number): Sketch => one(165, 100).post('Post', [165, y])

ruleTable('aisle-width-min', {
  passes: [
    ['36 in between two rows', rows(165)],
    ['36 in between the ends of two rows', endToEnd(338)],
    ['6 in from leaf to wall', one(39, 100)],
    ['36 in from a row end to the wall', one(165, 438)],
    // 66 in across with its leaves and 60 in along: it is worked from its shorter sides all the same.
    [
      'a face 27 in from the wall, of a rack that is wider than it is long',
      bay('30 x 60 ft').row('A', [60, 200], { racks: 1, rackLength: 48, barsPerRack: 4, midPairs: 1 }),
    ],
    ['36 in between a row end and a post', beforePost(384)],
    ['6 in to a post that is passed on its other side', beforePost(354)],
    ['a post at the wall', one(63, 100).post('Post', [4, 200])],
    ['a lamp over all heads', one(165, 100).post('Lamp', [165, 350], { underside: 80, top: 90 })],
    ['24 in where the bay asks for no more', rows(153).settings({ workAisle: 24, cart: 12 })],
  ],
  fails: [
    [
      '35-15/16 in between two rows',
      rows(165 - 1 / 16),
      'Tight, 35.938 of 36',
      'A to B is 35-15/16" leaf to leaf, a cart aisle; a work aisle wants 36". Move A 1/16" west.',
    ],
    [
      '18 in, which a person squeezes through',
      rows(147),
      'Tight, 18 of 36',
      'A to B is 18" leaf to leaf, a scouting aisle; a work aisle wants 36". Move A 18" west.',
    ],
    [
      '17-15/16 in, where nobody passes',
      rows(147 - 1 / 16),
      'Clash, 17.938 of 36',
      'A to B is 17-15/16" leaf to leaf, a squeeze; a work aisle wants 36". Move A 18-1/16" west.',
    ],
    [
      '36 in for a cart of 30, which wants 42',
      rows(165).settings({ cart: 30 }),
      'Tight, 36 of 42',
      'A to B is 36" leaf to leaf, a work aisle; a 30" cart wants 42". Move A 6" west.',
    ],
    [
      '35 in between the ends of two rows',
      endToEnd(337),
      'Tight, 35 of 36',
      'A to B is 35" leaf to leaf, a cart aisle; a work aisle wants 36". Move A 1" south.',
    ],
    [
      '5 in from leaf to wall',
      one(38, 100),
      'Tight, 5 of 6',
      'A to the wall is 5" leaf to leaf; wanted there is 6". Move A 1" east.',
    ],
    [
      'leaves that press through the wall',
      one(31, 100),
      'Clash, -2 of 6',
      'A to the wall: they run 2" into each other. Move A 8" east.',
    ],
    [
      '20 in from a row end to the wall',
      one(165, 454),
      'Tight, 20 of 36',
      'A to the wall is 20" leaf to leaf; wanted there is 36". Move A 16" south.',
    ],
  ],
})

test('a mend that would push the row too near to what stands behind it is not offered', () => {
  const [finding] = findingsOf('aisle-width-min', rows(147).post('Post', [14, 200]))
  expect(finding?.state).toBe('Tight')
  expect(finding?.mend).toBeUndefined()
})

test('a crop grown from 6 to 12 in takes 12 in from the aisle between two rows', () => {
  const grown = (growth: number) =>
    inchesOf(aisleBetween(rows(200).settings({ leafReach: 12, growth }).layout(), 'A', 'B').widthMm)
  // 200 - 63 = 137 in from middle to middle, less 54 in from line to line and the leaves.
  expect([grown(0.5), grown(1)]).toEqual([71, 59])
})

test('a crop just planted leaves the gutter bearers as the widest parts: 59-15/16 in', () => {
  const layout = rows(165).settings({ growth: 0 }).layout()
  expect(aisleBetween(layout, 'A', 'B').widthMm / 25.4).toBeCloseTo(102 - 59.9375, 3)
})

test('a post leaves 22 in on either side of it: both are Tight, since people must pass on one', () => {
  // Leaf to leaf 48 in, and a 4 in post in the middle.
  const sketch = one(165, 50).row('B', [165, 350], { racks: 2 }).post('Post', [165, 320])
  expect(judged('aisle-width-min', sketch)).toEqual(['Tight, 22 of 36', 'Tight, 22 of 36'])
})

test.each([
  [72, 'door/head'],
  [71.9375, 'main'],
  [48, 'main'],
  [47.9375, 'work'],
  [36, 'work'],
  [35.9375, 'cart'],
  [30, 'cart'],
  [29.9375, 'scouting'],
  [18, 'scouting'],
  [17.9375, 'squeeze'],
])('%d in is by name a %s aisle', (inch, name) => {
  expect(aisleClass(inches(inch), rows(165).layout().settings)).toBe(name)
})
