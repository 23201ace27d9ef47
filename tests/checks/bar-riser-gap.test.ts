import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Between a bar and a riser 1/2 in: common practice, no source. A riser is 1.5 in along the row (PS 20), 3/4 in conduit 0.922.

const bars = (barsPerRack: number, midPairs: number): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { barsPerRack, midPairs })

ruleTable('bar-riser-gap', {
  passes: [
    ['bars 15 in apart, pairs 30', bars(8, 3)],
    ['bars 10 in apart, pairs 60: 5 - 0.75 - 0.461', bars(12, 1)],
  ],
  fails: [
    [
      'bars 15 in apart, pairs 24: 24 - 22.5 - 0.75 - 0.461',
      bars(8, 4),
      'Tight, 0.289 of 0.5',
      'A hanger bar of A lies 5/16" from a riser; it wants 1/2".',
    ],
    [
      'a bar in the middle of a rack, over a pair',
      bars(5, 1),
      'Clash, -1.211 of 0.5',
      'A hanger bar of A falls on a riser.',
    ],
  ],
})
