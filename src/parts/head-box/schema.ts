import * as z from 'zod/mini'
import { heading, length, point } from '../../model/fields'
import { inches } from '../../units/length'
import { baseFields } from '../base'

/** From a bucket to a stock tank. */
export const BOX_SIDE = { leastMm: inches(6), mostMm: inches(96) }

/**
 * A small overflow tank on a stand that keeps one head. `at` is its middle; `lengthMm` runs along `heading`. The pump
 * overfeeds it and the excess falls back to the pit.
 */
export const headBoxSchema = z.object({
  ...baseFields,
  kind: z.literal('head-box'),
  at: point,
  heading: z._default(heading, 90),
  lengthMm: length(inches(24), { label: 'Length', group: 'Head box' }, BOX_SIDE.leastMm, BOX_SIDE.mostMm),
  widthMm: length(inches(18), { label: 'Width', group: 'Head box' }, BOX_SIDE.leastMm, BOX_SIDE.mostMm),
  waterAboveFloorMm: length(
    inches(88),
    {
      label: 'Water above floor',
      group: 'Head box',
      help: 'The lip of its overflow, 10 to 14 in over the laterals.',
    },
    inches(12),
    inches(240),
  ),
  depthMm: length(inches(12), { label: 'Water depth', group: 'Head box' }, inches(3), inches(48)),
})

export type HeadBox = z.infer<typeof headBoxSchema>
