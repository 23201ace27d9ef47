import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'

/** Snapping goes along each axis by itself: x is west to east, y south to north. */
export type Axis = 'x' | 'y'

export const otherAxis = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x')

/** What a box covers along one axis, mm. */
export interface Span {
  readonly low: number
  readonly high: number
}

export const spanOf = (box: Box, axis: Axis): Span =>
  axis === 'x' ? { low: box.x0, high: box.x1 } : { low: box.y0, high: box.y1 }

export const middleOf = ({ low, high }: Span): number => (low + high) / 2

/** What two spans share; undefined where that is nothing. */
export const shared = (a: Span, b: Span): Span | undefined => {
  const low = Math.max(a.low, b.low)
  const high = Math.min(a.high, b.high)
  return high > low ? { low, high } : undefined
}

/** The point `along` an axis and `aside` on the other. */
export const pointOn = (axis: Axis, along: number, aside: number): Point =>
  axis === 'x' ? { x: along, y: aside } : { x: aside, y: along }
