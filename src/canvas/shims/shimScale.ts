import type { Evaluation } from '../../evaluate/evaluation'
import { BLOCK_OVER_MM } from '../../checks/shimLimits'
import { inches, type Units } from '../../units/length'
import type { Scale } from '../water/scale'
import { shimSpots } from './shimSpots'

/** Heights that a tape shows at once, each a whole step of the scale's middle too; mm. */
const ends: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [1, 2, 3, 4, 6, 8, 12, 16, 24].map(inches),
  metric: [20, 40, 60, 80, 100, 150, 200, 300, 400, 600],
}

/** The tallest shim of the bay, under a foot or on a bearer, mm; 0 where nothing stands on feet. */
export const tallestShimMm = (evaluation: Evaluation): number =>
  shimSpots(evaluation).reduce((most, { feetMm, bearersMm }) => Math.max(most, ...feetMm, ...bearersMm), 0)

/** From no shim to the tallest, and never short of what wants a block: so a level bay looks level. */
export const shimScale = (tallestMm: number, units: Units): Scale => {
  const least = Math.max(tallestMm, BLOCK_OVER_MM)
  return { low: 0, high: ends[units].find((end) => end >= least - 1e-6) ?? least }
}
