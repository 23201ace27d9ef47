import * as z from 'zod/mini'
import { choice, heading, length, point } from '../../model/fields'
import { inches } from '../../units/length'
import { baseFields } from '../base'

export const OPENING_WIDTH = { leastMm: inches(12), mostMm: inches(480) }

/** A door or gap in a wall. `at` is the middle of its threshold on the wall line; `heading` points into the house. */
export const openingSchema = z.object({
  ...baseFields,
  kind: z.literal('opening'),
  at: point,
  heading: z._default(heading, 90),
  widthMm: length(
    inches(36),
    { label: 'Clear width', group: 'Opening' },
    OPENING_WIDTH.leastMm,
    OPENING_WIDTH.mostMm,
  ),
  heightMm: length(inches(80), { label: 'Clear height', group: 'Opening' }, inches(24), inches(240)),
  leaves: choice(['none', 'single', 'double'], 'single', {
    label: 'Door leaves',
    group: 'Opening',
    choices: { none: 'None, a gap or a slider', single: 'One leaf', double: 'Two leaves' },
  }),
  swing: choice(['in', 'out'], 'out', {
    label: 'Swings',
    group: 'Opening',
    choices: { in: 'Into the house', out: 'Out of the house' },
  }),
  hinge: choice(['left', 'right'], 'left', {
    label: 'Hinge, seen from inside',
    group: 'Opening',
    choices: { left: 'Left', right: 'Right' },
  }),
  access: choice(['carts', 'people'], 'carts', {
    label: 'Used by',
    group: 'Opening',
    choices: { carts: 'Carts and people', people: 'People only' },
  }),
})

export type Opening = z.infer<typeof openingSchema>
