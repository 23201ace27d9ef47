import * as z from 'zod/mini'
import { choice, fall, heading, length, point } from '../../model/fields'
import { inches } from '../../units/length'
import { inchesPerFoot } from '../../units/slope'
import { baseFields } from '../base'
import { outletBore } from '../outletBore'

export const TROUGH_LENGTH = { leastMm: inches(12), mostMm: inches(1200) }

/** A trough that stands alone, on its own blocks. `at` is its high end; it runs and falls along `heading`. */
export const troughSchema = z.object({
  ...baseFields,
  kind: z.literal('trough'),
  at: point,
  heading: z._default(heading, 90),
  lengthMm: length(
    inches(120),
    { label: 'Length', group: 'Trough' },
    TROUGH_LENGTH.leastMm,
    TROUGH_LENGTH.mostMm,
  ),
  gutter: choice(['gutter-5in', 'gutter-4in'], 'gutter-5in', {
    label: 'Gutter',
    group: 'Trough',
    choices: { 'gutter-5in': '5 in roof gutter', 'gutter-4in': '4 in gutter' },
  }),
  gutterFall: fall(
    inchesPerFoot(1 / 16),
    { label: 'Fall', group: 'Trough' },
    inchesPerFoot(1 / 32),
    inchesPerFoot(1 / 2),
  ),
  highInvertMm: length(inches(9), { label: 'Invert above floor, high end', group: 'Trough' }, 0, inches(96)),
  outletFromLowMm: length(
    inches(15),
    { label: 'Outlet from low end', group: 'Trough' },
    inches(2),
    inches(1200),
  ),
  outletBore,
})

export type Trough = z.infer<typeof troughSchema>
