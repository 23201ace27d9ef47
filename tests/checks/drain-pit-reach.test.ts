import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Geometry. The last fitting reaches over 50 mm to the pit's wall: common practice, no source.

const endingAt = (x: number): Sketch =>
  bay('40 x 60 ft')
    .pit('Pit', { x: [400, 436], y: [50, 164] })
    .drain('D', [
      [100, 100],
      [x, 100],
    ])

const alone = (): Sketch =>
  bay('40 x 60 ft').drain('D', [
    [100, 100],
    [300, 100],
  ])

ruleTable('drain-pit-reach', {
  passes: [
    ['a drain that ends at the wall of its pit', endingAt(400)],
    ['a drain that ends in its pit', endingAt(410)],
    ['a drain that ends 1-7/8 in short', endingAt(400 - 1.875)],
  ],
  fails: [
    [
      'a drain that ends 2 in short',
      endingAt(398),
      'Backs up, 2 of 0',
      'D ends 2" short of the nearest pit.',
    ],
    ['no pit', alone(), 'Backs up, 0 of 0', 'D has no pit to fall to. Dig a pit at the end of D.'],
  ],
})
