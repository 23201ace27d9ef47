import { bay } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Geometry: every way starts at a door.
ruleTable('door-missing', {
  passes: [
    ['an empty house', bay('30 x 60 ft')],
    ['a house with a door', bay('30 x 60 ft').row('A', [165, 100]).door('Door', [165, 0])],
    [
      'a house with a door for people',
      bay('30 x 60 ft').row('A', [165, 100]).door('Door', [165, 0], { access: 'people' }),
    ],
  ],
  fails: [
    [
      'rows in a house without a door',
      bay('30 x 60 ft').row('A', [63, 100]).row('B', [165, 100]),
      'Tight, 0 of 0',
      'The house has no door yet, so ways for people and carts are not looked at. Drag a door from the shelf on to a wall.',
    ],
  ],
})
