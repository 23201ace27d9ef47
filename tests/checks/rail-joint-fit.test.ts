import { bay, type Sketch } from '../support/bay'
import { measuredBay, measuring } from '../support/measuring'
import { ruleTable } from '../support/ruleTable'

/* 1 in conduit is 1.163 in outside and 0.057 in the wall: Steel Tube Institute, EMT Weights and Dimensions. */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

const wall = (inch: number, values = {}) =>
  measuredBay(row(values).layout(), measuring('conduit-1', { wall: inch }))

ruleTable('rail-joint-fit', {
  passes: [
    ['3/4 in in 1 in: 1.163 - 2 x 0.057 - 0.922 = 0.127', row()],
    ['a wall of 0.13 where no rack is joined to another', wall(0.13, { racks: 1 })],
  ],
  fails: [
    [
      'a wall of 0.12: 1.163 - 0.24 - 0.922 = 0.001',
      wall(0.12),
      'Tight, 0.001 of 0.016',
      'A rail of A, 0.922" outside, binds in the bore of 0.923" that takes it.',
    ],
    [
      'a wall of 0.13: 1.163 - 0.26 - 0.922',
      wall(0.13),
      'Clash, -0.019 of 0.016',
      'A rail of A, 0.922" outside, does not go into the bore of 0.903" that takes it.',
    ],
  ],
})
