import * as z from 'zod/mini'
import { choice, heading, length, point } from '../../model/fields'
import { inches } from '../../units/length'
import { baseFields } from '../base'

const clear = (side: string) => length(0, { label: side, group: 'Keep clear' }, 0, inches(240))

export const OBSTACLE_SIDE = { leastMm: inches(0.5), mostMm: inches(2000) }

/**
 * Anything that already stands in the house. `at` is its middle; `lengthMm` runs along `heading`, and its front faces that way.
 * The keep-clear shape is the footprint grown by each side's distance, between two heights.
 */
export const obstacleSchema = z.object({
  ...baseFields,
  kind: z.literal('obstacle'),
  what: choice(['post', 'heater', 'panel', 'tank', 'tap', 'floor-drain', 'other'], 'other', {
    label: 'What it is',
    group: 'Obstacle',
    choices: {
      post: 'Post',
      heater: 'Heater',
      panel: 'Electrical panel',
      tank: 'Tank',
      tap: 'Tap',
      'floor-drain': 'Floor drain',
      other: 'Something else',
    },
  }),
  at: point,
  heading: z._default(heading, 0),
  shape: choice(['box', 'round'], 'box', {
    label: 'Footprint',
    group: 'Obstacle',
    choices: { box: 'Box', round: 'Round' },
  }),
  lengthMm: length(
    inches(24),
    { label: 'Length, or diameter', group: 'Obstacle' },
    OBSTACLE_SIDE.leastMm,
    OBSTACLE_SIDE.mostMm,
  ),
  widthMm: length(
    inches(24),
    { label: 'Width', group: 'Obstacle' },
    OBSTACLE_SIDE.leastMm,
    OBSTACLE_SIDE.mostMm,
  ),
  undersideMm: length(0, { label: 'Underside above floor', group: 'Obstacle' }, 0, inches(400)),
  topMm: length(inches(72), { label: 'Top above floor', group: 'Obstacle' }, 0, inches(400)),
  clearFrontMm: clear('Front'),
  clearBackMm: clear('Back'),
  clearLeftMm: clear('Left'),
  clearRightMm: clear('Right'),
  clearFromMm: length(0, { label: 'From above floor', group: 'Keep clear' }, 0, inches(400)),
  clearToMm: length(inches(78), { label: 'To above floor', group: 'Keep clear' }, 0, inches(400)),
  footingMm: length(
    0,
    { label: 'Footing diameter', group: 'Footing', help: '0 where there is none.' },
    0,
    inches(120),
  ),
  footingDeepMm: length(0, { label: 'Footing depth', group: 'Footing' }, 0, inches(240)),
})

export type Obstacle = z.infer<typeof obstacleSchema>
