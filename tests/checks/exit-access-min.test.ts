import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 29 CFR 1910.36(g)(2): an exit access is at least 28 in wide at all points.

/** One row, 66 in wide, in a house that leaves the same way on both sides of it. */
const corridor = (way: number): Sketch =>
  bay(`${66 + 2 * way} x 500 in`).row('A', [33 + way, 100], { racks: 2 })

const withDoor = (way: number, values = {}): Sketch =>
  corridor(way).door('Door', [33 + way, 0], { width: 60, ...values })

ruleTable('exit-access-min', {
  passes: [
    ['no door: that is said by itself, not of every row', corridor(10)],
    ['28 in on both sides', withDoor(28)],
    ['a door for people only', withDoor(36, { access: 'people', width: 28 })],
    ['one side shut by a post', withDoor(36).post('Post', [18, 200], { length: 30, width: 30 })],
  ],
  fails: [
    [
      '27 in on both sides',
      withDoor(27),
      'Clash, 27 of 28',
      'The way from A to a door narrows to 27"; a way out wants 28".',
    ],
    [
      'a row shut in by a tank before the door',
      withDoor(36).obstacle('tank', 'Tank', { x: [0, 138], y: [20, 40] }, 0, { top: 60 }),
      'Clash, 0 of 28',
      'No way from A to a door: a way out wants 28".',
    ],
  ],
})
