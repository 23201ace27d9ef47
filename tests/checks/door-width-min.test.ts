import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// 28 in: 29 CFR 1910.36(g)(2). 32 in for a wheelchair: 2010 ADA Standards 404.2.3 (from memory).

const door = (width: number, wheelchair = false): Sketch =>
  bay('30 x 60 ft').door('Door', [100, 0], { width }).settings({ wheelchair })

ruleTable('door-width-min', {
  passes: [
    ['a door of 28 in', door(28)],
    ['a door of 32 in where a wheelchair goes', door(32, true)],
    ['a door in a side wall', bay('30 x 60 ft').door('Door', [0, 100], { width: 28, heading: 0 })],
  ],
  fails: [
    ['a door of 27 in', door(27), 'Clash, 27 of 28', 'Door is 27" clear; it wants 28".'],
    [
      'a door of 31 in where a wheelchair goes',
      door(31, true),
      'Tight, 31 of 32',
      'Door is 31" clear; it wants 32".',
    ],
    [
      'a door of 27 in where a wheelchair goes',
      door(27, true),
      'Clash, 27 of 32',
      'Door is 27" clear; it wants 32".',
    ],
  ],
})
