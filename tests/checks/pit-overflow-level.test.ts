import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// A hand, 4 in, from the overflow up to what the pit would spill over. Common practice, no source.
const pit = (values = {}): Sketch => bay('40 x 60 ft').pit('Pit', { x: [400, 436], y: [50, 164] }, values)

ruleTable('pit-overflow-level', {
  passes: [
    ['a pit as it comes, 13 in under its rim', pit()],
    ['a hand under the floor, with a kerb of 2 in', pit({ rim: 2, overflow: -4, drainBack: -5 })],
    [
      'a tank that stands 20 in over the floor, its overflow over the floor too',
      pit({ rim: 20, overflow: 16 }),
    ],
  ],
  fails: [
    [
      'an overflow 3 in under the floor, with a kerb',
      pit({ rim: 2, overflow: -3, drainBack: -5 }),
      'Thin, 3 of 4',
      'The overflow of Pit is 3" under the floor around it; it wants 4", or Pit spills while it runs. Set the overflow of Pit to -4".',
    ],
    [
      'an overflow over the floor behind a kerb',
      pit({ rim: 2, overflow: 1, drainBack: -5 }),
      'Spills, -1 of 4',
      'The overflow of Pit is 1" over the floor around it: Pit spills before it runs. It wants 4" under it. Set the overflow of Pit to -4".',
    ],
    [
      'a pit that is too high as a whole',
      pit({ rim: 0, overflow: -2, drainBack: -3 }),
      'Thin, 2 of 4',
      'The overflow of Pit is 2" under its rim; it wants 4", or Pit spills while it runs. Let Pit down 2", all its levels but the rim.',
    ],
    [
      'a tank that its overflow nearly reaches the rim of',
      pit({ rim: 20, overflow: 18, drainBack: 10 }),
      'Thin, 2 of 4',
      'The overflow of Pit is 2" under its rim; it wants 4", or Pit spills while it runs. Set the overflow of Pit to 1\' 4".',
    ],
  ],
})
