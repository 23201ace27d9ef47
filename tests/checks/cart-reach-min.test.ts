import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

/** One row, 66 in wide, in a house that leaves the same way on both sides of it. */
const corridor = (way: number): Sketch =>
  bay(`${66 + 2 * way} x 500 in`).row('A', [33 + way, 100], { racks: 2 })

const withDoor = (way: number, values = {}): Sketch =>
  corridor(way).door('Door', [33 + way, 0], { width: 60, ...values })

// Geometry.
ruleTable('cart-reach-min', {
  passes: [
    ['a door for people only, where there is no other', withDoor(24, { access: 'people' })],
    ['no door: that is said by itself, not of every row', corridor(10)],
    ['a 24 in cart in a 24 in way', withDoor(24)],
    ['a 30 in cart in a 36 in way', withDoor(36).settings({ cart: 30 })],
    ['a door as wide as the cart', withDoor(36, { width: 24 })],
    ['one side shut by a post', withDoor(36).post('Post', [18, 200], { length: 30, width: 30 })],
  ],
  fails: [
    [
      'a 24 in cart in a 23 in way',
      withDoor(23),
      'Tight, 23 of 24',
      'The widest cart that comes alongside A from a door is 23"; yours is 24".',
    ],
    [
      'a door narrower than the cart',
      withDoor(36, { width: 20 }),
      'Tight, 20 of 24',
      'The widest cart that comes alongside A from a door is 20"; yours is 24".',
    ],
    [
      'a wide door for people only beside a narrow one for carts',
      withDoor(36, { width: 20 }).door('Back door', [69, 500], { width: 60, heading: 270, access: 'people' }),
      'Tight, 20 of 24',
      'The widest cart that comes alongside A from a door is 20"; yours is 24".',
    ],
  ],
})
