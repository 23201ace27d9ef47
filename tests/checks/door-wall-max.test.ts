import { bay } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Within 2 in of the outline: common practice, no source.

ruleTable('door-wall-max', {
  passes: [
    ['a door in the south wall', bay('30 x 60 ft').door('Door', [165, 0], { width: 60 })],
    ['a door in the middle of a thick wall', bay('30 x 60 ft').door('Door', [165, -2], { width: 60 })],
  ],
  fails: [
    [
      'a door that was let go on the floor',
      bay('30 x 60 ft').door('Door', [165, 40], { width: 60 }),
      'Clash, 40 of 2',
      'Door stands 40" from the nearest wall, so it leads nowhere.',
    ],
  ],
})
