import type { Box } from '../geometry/box'
import type { Mark } from '../model/drawing'
import type { Hatch } from './theme'

/** More lines than this are a grey smear: the wash alone is shown instead. */
const MOST_LINES = 600

/** Bounding box of what a filled mark covers, mm. */
export const reachOf = (mark: Extract<Mark, { as: 'boxes' | 'discs' | 'path' }>): Box => {
  const reach = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity }
  const take = (x: number, y: number, by: number) => {
    reach.x0 = Math.min(reach.x0, x - by)
    reach.y0 = Math.min(reach.y0, y - by)
    reach.x1 = Math.max(reach.x1, x + by)
    reach.y1 = Math.max(reach.y1, y + by)
  }
  if (mark.as === 'discs')
    for (let i = 0; i + 2 < mark.discs.length; i += 3)
      take(mark.discs[i] ?? 0, mark.discs[i + 1] ?? 0, mark.discs[i + 2] ?? 0)
  else {
    const flat = mark.as === 'boxes' ? mark.boxes : mark.points
    for (let i = 0; i + 1 < flat.length; i += 2) take(flat[i] ?? 0, flat[i + 1] ?? 0, 0)
  }
  return reach
}

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
