import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// A tower lifted and tilted wants more than 4 in beside its body between two bars: common practice, no source.

const pitch = (rackLength: number, barsPerRack: number, body = 4): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { rackLength, barsPerRack, body, racks: 1 })

ruleTable('tower-withdrawal-min', {
  passes: [
    ['11 in beside a 4 in body at a pitch of 15', pitch(120, 8)],
    ['a narrower body at a pitch of 8', pitch(96, 12, 3.9375)],
  ],
  fails: [
    [
      '4 in beside a 4 in body at a pitch of 8',
      pitch(96, 12),
      'Tight, 4 of 4',
      'Between two bars of A a tower has 4" to pass; lifted and tilted it wants more than 4".',
    ],
    [
      'a body as wide as the pitch',
      pitch(96, 12, 8.5),
      'Clash, -0.5 of 4',
      'Between two bars of A a tower has -1/2" to pass; lifted and tilted it wants more than 4".',
    ],
  ],
})
