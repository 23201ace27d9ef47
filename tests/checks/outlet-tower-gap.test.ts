import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Half a tower body (2 in) and 1 in from a station to the outlet: common practice, no source.

const bars = (barsPerRack: number, midPairs: number): Sketch =>
  bay('40 x 60 ft').row('A', [165, 100], { barsPerRack, midPairs })

ruleTable('outlet-tower-gap', {
  passes: [
    ['bars 15 in apart, pairs 30: the outlet 7-1/2 in from each tower', bars(8, 3)],
    ['bars 12 in apart, pairs 24: 6 in from each', bars(10, 4)],
  ],
  fails: [
    [
      'bars 30 in apart, pairs 30: a bar over the middle of each riser bay',
      bars(4, 3),
      'Tight, 0 of 3',
      'The trough outlets of A lie right under a tower.',
    ],
    [
      'eleven bars a rack: 15 in from the end, the second bar at 1-1/2 x 120/11 = 16.364',
      bars(11, 3),
      'Tight, 1.364 of 3',
      'The trough outlets of A lie 1-3/8" from the middle of a tower; they want 3".',
    ],
  ],
})
