import { bay, type Sketch } from '../support/bay'
import { ruleTable } from '../support/ruleTable'

// International Plumbing Code, Table 704.1, as adopted: 1/4 in a foot up to 2-1/2 in pipe, 1/8 for 3 to 6 in, 1/16 from 8 in on.
// A check value, not a permit. Half of the least still runs, and settles: common practice, no source.

/** Falls in inches a foot. */
const falling = (slope: number, values = {}): Sketch =>
  bay('40 x 60 ft').drain(
    'D',
    [
      [50, 100],
      [350, 100],
    ],
    { slope, ...values },
  )

const mend = 'Give D a fall of 1/8 in/ft.'

ruleTable('drain-fall-min', {
  passes: [
    ['1/8 in a foot: Falls', falling(1 / 8)],
    ['1/4 in a foot', falling(1 / 4)],
    ['1/4 in a foot for 2 in pipe', falling(1 / 4, { pipe: 'drain-2in' })],
    ['1/16 in a foot where the line is allowed it', falling(1 / 16, { leastSlope: 1 / 16 })],
  ],
  fails: [
    [
      '1/16 in a foot',
      falling(1 / 16),
      'Flat, 0.063 of 0.125',
      `D falls 1/16 in/ft; it wants at least 1/8 in/ft. ${mend}`,
    ],
    [
      '1/32 in a foot',
      falling(1 / 32),
      'Backs up, 0.031 of 0.125',
      `D falls 1/32 in/ft; it wants at least 1/8 in/ft. ${mend}`,
    ],
    [
      'no fall',
      falling(0),
      'Backs up, 0 of 0.125',
      `D does not fall toward its low end; it wants at least 1/8 in/ft. ${mend}`,
    ],
    [
      'a fall the wrong way',
      falling(-1 / 8),
      'Backs up, -0.125 of 0.125',
      `D does not fall toward its low end; it wants at least 1/8 in/ft. ${mend}`,
    ],
    [
      '1/8 in a foot for 2 in pipe',
      falling(1 / 8, { pipe: 'drain-2in' }),
      'Flat, 0.125 of 0.25',
      'D falls 1/8 in/ft; it wants at least 1/4 in/ft. Give D a fall of 1/4 in/ft.',
    ],
  ],
})
