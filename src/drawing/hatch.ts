import type { Box } from '../geometry/box'
import type { Hatch } from './theme'

/** More lines than this are a grey smear: the wash alone is shown instead. */
const MOST_LINES = 600

/** Lines x - y = k (rising) or x + y = k (falling) across a box, at fixed k so that neighbouring shapes agree. */
const leaning = (reach: Box, stepMm: number, rising: boolean): number[] => {
  const height = reach.y1 - reach.y0
  const least = rising ? reach.x0 - reach.y1 : reach.x0 + reach.y0
  const most = rising ? reach.x1 - reach.y0 : reach.x1 + reach.y1
  if (!(most - least <= MOST_LINES * stepMm)) return []
  const lines: number[] = []
  for (let k = Math.ceil(least / stepMm) * stepMm; k <= most; k += stepMm) {
    const x = rising ? k + reach.y0 : k - reach.y0
    lines.push(x, reach.y0, rising ? x + height : x - height, reach.y1)
  }
  return lines
}

/** Hatch lines over a box: x0, y0, x1, y1 for each. `spacingMm` is square to the lines, in the box's mm. */
export const hatchLines = (reach: Box, lean: Hatch['lean'], spacingMm: number): Float64Array => {
  const stepMm = spacingMm * Math.SQRT2
  return Float64Array.from([
    ...(lean === 'falling' ? [] : leaning(reach, stepMm, true)),
    ...(lean === 'rising' ? [] : leaning(reach, stepMm, false)),
  ])
}
