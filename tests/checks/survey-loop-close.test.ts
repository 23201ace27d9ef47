import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// Read again within 1/8 in: common practice, no source. The benchmark lies at -3 in the file's levels.
const closed = (closing: number | null): Sketch => {
  const sketch = bay('40 x 60 ft').benchmark('Nail', [10, 10], -3)
  const layout = sketch.layout()
  const closingMm = closing === null ? null : closing * 25.4
  return {
    ...sketch,
    layout: () => ({
      ...layout,
      house: { ...layout.house, benchmark: { ...layout.house.benchmark, closingMm } },
    }),
  }
}

ruleTable('survey-loop-close', {
  passes: [
    ['a round that was not closed', closed(null)],
    ['one that reads 1/8 in high', closed(-2.875)],
    ['one that reads 1/8 in low', closed(-3.125)],
  ],
  fails: [
    [
      'one that reads 1/4 in low',
      closed(-3.25),
      'Tight, 0.25 of 0.125',
      'The round of levels comes back to the benchmark 1/4" off; within 1/8" is wanted. Shoot it again.',
    ],
    [
      'one that reads 1/2 in high',
      closed(-2.5),
      'Tight, 0.5 of 0.125',
      'The round of levels comes back to the benchmark 1/2" off; within 1/8" is wanted. Shoot it again.',
    ],
    [
      'one that reads 1 in high',
      closed(-2),
      'Clash, 1 of 0.125',
      'The round of levels comes back to the benchmark 1" off; within 1/8" is wanted. Shoot it again.',
    ],
  ],
})
