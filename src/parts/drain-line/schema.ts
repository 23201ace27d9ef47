import * as z from 'zod/mini'
import { choice, fall, length, level, point } from '../../model/fields'
import { inches } from '../../units/length'
import { inchesPerFoot } from '../../units/slope'
import { baseFields } from '../base'
import { MOST_POINTS } from '../points'

/** Buried pipe that falls from its first point to its last. */
export const drainLineSchema = z.object({
  ...baseFields,
  kind: z.literal('drain-line'),
  points: z.array(point).check(z.minLength(2), z.maxLength(MOST_POINTS)),
  pipe: choice(['drain-2in', 'drain-3in', 'drain-4in', 'drain-6in', 'drain-8in'], 'drain-4in', {
    label: 'Pipe',
    group: 'Drain',
    choices: {
      'drain-2in': '2 in drain',
      'drain-3in': '3 in drain',
      'drain-4in': '4 in drain',
      'drain-6in': '6 in drain',
      'drain-8in': '8 in drain',
    },
  }),
  slope: fall(inchesPerFoot(1 / 8), { label: 'Fall', group: 'Drain' }, -inchesPerFoot(1), inchesPerFoot(2)),
  leastSlope: z._default(
    z.nullable(
      fall(
        inchesPerFoot(1 / 8),
        {
          label: 'Least fall allowed',
          group: 'Drain',
          whenNull: 'As the plumbing code asks of its size',
        },
        0,
        inchesPerFoot(2),
      ),
    ),
    null,
  ),
  coverMm: length(inches(3), { label: 'Least cover', group: 'Drain' }, 0, inches(60)),
  bedMm: length(inches(2), { label: 'Sand bed', group: 'Drain' }, 0, inches(12)),
  pegTopMm: length(
    inches(6),
    {
      label: 'Peg tops over the floor',
      group: 'Drain',
      help: 'A hand’s breadth, so that a string over the pegs clears the floor. Cuts are written from there.',
    },
    0,
    inches(36),
  ),
  cleanouts: choice(['none', 'bends', 'spaced'], 'spaced', {
    label: 'Cleanouts',
    group: 'Drain',
    choices: {
      none: 'None',
      bends: 'At the high end and every bend',
      spaced: 'At the high end, every bend, and on long runs',
    },
  }),
  firstStickMm: z._default(
    z.nullable(
      length(
        inches(60),
        {
          label: 'First stick, at the low end',
          group: 'Drain',
          whenNull: 'A whole one',
          help: 'Sticks are laid from the pit up, bell uphill. A shorter first one shifts every bell off the holes.',
        },
        inches(6),
        inches(240),
      ),
    ),
    null,
  ),
  trenchMm: length(inches(10), { label: 'Trench width', group: 'Drain' }, inches(4), inches(48)),
  /** From the benchmark's zero. */
  startInvertMm: z._default(
    z.nullable(
      level(inches(-8), {
        label: 'Invert at the high end',
        group: 'Drain',
        whenNull: 'As high as the cover allows',
      }),
    ),
    null,
  ),
})

export type DrainLine = z.infer<typeof drainLineSchema>
