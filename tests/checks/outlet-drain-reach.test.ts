import { bay, type Sketch, type Spot } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// A drop tube leans 6 in at most. Common practice, no source.

/** The outlets of two racks, 240 in long, are 15 in short of the low end: at y = 325, on lines from x = 138 to 192. */
const row = (): Sketch => bay('40 x 60 ft').row('A', [165, 100], { racks: 2 })

const under = (y: number): readonly Spot[] => [
  [100, y],
  [300, y],
]

ruleTable('outlet-drain-reach', {
  passes: [
    ['a drain under the outlets', row().drain('D', under(325))],
    ['a drain 6 in off', row().drain('D', under(331))],
    ['a drain 9 in off where the bay allows it', row().drain('D', under(334)).settings({ outletReach: 9 })],
    [
      'a trough alone over a drain along it',
      bay('40 x 60 ft')
        .trough('T', [165, 100])
        .drain('D', [
          [165, 50],
          [165, 300],
        ]),
    ],
  ],
  fails: [
    [
      'no drain and no pit, so that a drain is laid to where a pit has room at the far wall',
      row(),
      'Backs up, 0 of 6',
      'A: 4 trough outlets have no drain line to fall into. Lay a drain line under A.',
    ],
    [
      'a house too narrow for a pit beside the row',
      bay('9 x 60 ft').row('A', [54, 100], { racks: 2 }),
      'Backs up, 0 of 6',
      'A: 4 trough outlets have no drain line to fall into.',
    ],
    [
      'a drain 7 in off',
      row().drain('D', under(332)),
      'Backs up, 7 of 6',
      'A: 4 trough outlets miss the drain line; the nearest is 7" off, a drop tube reaches 6".',
    ],
    [
      'a pit straight ahead, to which a drain can be laid',
      row().pit('Pit', { x: [400, 436], y: [270, 380] }),
      'Backs up, 0 of 6',
      'A: 4 trough outlets have no drain line to fall into. Lay a drain line under A.',
    ],
    [
      'a pit to the north of a trough that stands alone',
      bay('40 x 60 ft')
        .trough('T', [165, 100])
        .pit('Pit', { x: [150, 186], y: [400, 500] }),
      'Backs up, 0 of 6',
      'T: 1 trough outlet has no drain line to fall into. Lay a drain line under T.',
    ],
    [
      'a pit that is not straight ahead, but round one corner',
      row().pit('Pit', { x: [400, 436], y: [400, 500] }),
      'Backs up, 0 of 6',
      'A: 4 trough outlets have no drain line to fall into. Lay a drain line under A.',
    ],
    [
      'a pit under which the outlets lie, that no drain with one corner comes to',
      row().pit('Pit', { x: [147, 183], y: [400, 500] }),
      'Backs up, 0 of 6',
      'A: 4 trough outlets have no drain line to fall into.',
    ],
  ],
})
