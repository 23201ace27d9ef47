import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

const ell = (): Sketch =>
  bay('480 x 480 in').outline([
    [0, 0],
    [288, 0],
    [288, 288],
    [480, 288],
    [480, 480],
    [0, 480],
  ])

// Geometry. The gutter bearers of a row are 59-15/16 in long: 29-31/32 to each side of its middle.
ruleTable('inside-house', {
  passes: [
    ['a row whose bearers just stay off the wall', bay('30 x 60 ft').row('A', [30, 100])],
    ['a row in the leg of an L', ell().row('A', [340, 320], { racks: 1 })],
    ['posts in the thickness of the wall', bay('30 x 60 ft').post('Leg', [-1, 100])],
  ],
  fails: [
    [
      'a row whose bearers go through the wall',
      bay('30 x 60 ft').row('A', [29.9375, 100]),
      'Clash, 0 of 0',
      'A stands through a wall of the house.',
    ],
    [
      'a row over the inner corner of an L',
      ell().row('A', [280, 200], { racks: 1 }),
      'Clash, 0 of 0',
      'A stands through a wall of the house.',
    ],
    [
      'a pit outside',
      bay('30 x 60 ft').pit('Pit', { x: [340, 376], y: [100, 200] }),
      'Clash, 0 of 0',
      'Pit stands through a wall of the house.',
    ],
  ],
})
