import * as z from 'zod/mini'
import { choice, point, rise, tickMm } from '../../model/fields'
import { inches, LONGEST_MM } from '../../units/length'
import { baseFields } from '../base'
import { MOST_POINTS } from '../points'

/** A point may have a height over the floor of its own, mm: over a door, under an aisle. */
const mainPoint = z.extend(point, { heightMm: z.optional(tickMm(-LONGEST_MM, LONGEST_MM)) })

/** Pump line: from its first point, at a pump, to its last. */
export const mainSchema = z.object({
  ...baseFields,
  kind: z.literal('main'),
  points: z.array(mainPoint).check(z.minLength(2), z.maxLength(MOST_POINTS)),
  pipe: choice(['pe-1', 'pe-1-1/4', 'pe-1-1/2', 'pe-2'], 'pe-2', {
    label: 'Pipe',
    group: 'Main',
    choices: {
      'pe-1': '1 in poly pipe',
      'pe-1-1/4': '1-1/4 in poly pipe',
      'pe-1-1/2': '1-1/2 in poly pipe',
      'pe-2': '2 in poly pipe',
    },
  }),
  heightMm: rise(inches(4), { label: 'Centre above floor', group: 'Main' }),
})

export type Main = z.infer<typeof mainSchema>
