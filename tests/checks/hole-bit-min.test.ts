import { bay, type Sketch } from '../support/bay'
import { measuredBay, measuring } from '../support/measuring'
import { ruleTable } from '../support/ruleTable'

/* 3/4 in conduit is 0.922 in outside, 1 in conduit 1.163: Steel Tube Institute, EMT Weights and Dimensions. */
const row = (values = {}): Sketch => bay('40 x 60 ft').row('A', [165, 100], values)

ruleTable('hole-bit-min', {
  passes: [
    ['bits of 15/16 and 1-3/16: 0.9375 - 0.922 and 1.1875 - 1.163', row()],
    ['one bit of 1-3/16 for all', row({ oneBit: true, railBit: 0.5 })],
    ['a small sleeve bit where no rack is joined to another', row({ racks: 1, sleeveBit: 1 })],
    ['a stick that measures thinner', measuredBay(row().layout(), measuring('conduit-3/4', { od: 0.915 }))],
  ],
  fails: [
    [
      'a bit of 0.90 under 3/4 in conduit',
      row({ racks: 1, railBit: 0.9 }),
      'Clash, -0.022 of 0.016',
      'The bit of 0.900" that A is drilled with is smaller than its 3/4 in thin-wall conduit of 0.922" outside: no stick goes through.',
    ],
    [
      'a stick that measures 0.932 under a bit of 0.94',
      measuredBay(row({ railBit: 0.94 }).layout(), measuring('conduit-3/4', { od: 0.932 })),
      'Tight, 0.008 of 0.016',
      'The bit of 0.940" that A is drilled with leaves its 3/4 in thin-wall conduit of 0.932" outside no more than 0.008" of room.',
    ],
  ],
})
