import * as z from 'zod/mini'
import { heading, length, level, point } from '../../model/fields'
import { inches } from '../../units/length'
import { baseFields } from '../base'

const levelOf = (inch: number, label: string) => level(inches(inch), { label, group: 'Levels' })

/** A pit is no narrower than a person can clean and no longer than one liner. Common practice, no source. */
export const PIT_SIDE = { leastMm: inches(12), mostMm: inches(600) }

/** An in-ground pit. `at` is its middle; `lengthMm` runs along `heading`. Levels from the bay's zero, top to bottom. */
export const sumpSchema = z.object({
  ...baseFields,
  kind: z.literal('sump'),
  at: point,
  heading: z._default(heading, 90),
  lengthMm: length(inches(114), { label: 'Length', group: 'Pit' }, PIT_SIDE.leastMm, PIT_SIDE.mostMm),
  widthMm: length(inches(36), { label: 'Width', group: 'Pit' }, PIT_SIDE.leastMm, PIT_SIDE.mostMm),
  rimMm: levelOf(0, 'Rim'),
  overflowMm: levelOf(-13, 'Overflow invert'),
  drainBackMm: levelOf(-14, 'Drain-back level'),
  runningMm: levelOf(-22.5, 'Running level'),
  makeUpMm: levelOf(-23.5, 'Make-up opens'),
  lowAlarmMm: levelOf(-27, 'Low alarm'),
  pumpOffMm: levelOf(-29, 'Pump off'),
  bottomMm: levelOf(-37, 'Bottom'),
})

export type Sump = z.infer<typeof sumpSchema>
