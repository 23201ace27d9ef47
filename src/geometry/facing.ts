import { type Box, boxOf } from './box'
import type { Point } from './point'
import { TOUCH_MM } from './segment'

export type Axis = 'x' | 'y'

/** The sides of a box along an axis. */
export const low = (box: Box, axis: Axis): number => (axis === 'x' ? box.x0 : box.y0)
export const high = (box: Box, axis: Axis): number => (axis === 'x' ? box.x1 : box.y1)
export const across = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x')
/** A point from its place along an axis and aside of it. */
export const pointOn = (axis: Axis, along: number, aside: number): Point =>
  axis === 'x' ? { x: along, y: aside } : { x: aside, y: along }

/** How two boxes that stand side by side look at each other. */
export interface Facing {
  readonly axis: Axis
  /** From the first box to the second along the axis, whether or not they overlap. */
  readonly sign: 1 | -1
  /** Negative where they overlap. */
  readonly gapMm: number
  readonly lengthMm: number
  readonly from: Point
  readonly to: Point
  /** The floor between the two. */
  readonly between: Box
}

/** How two boxes face each other along an axis; undefined where they do not stand side by side. */
export const facing = (a: Box, b: Box, axis: Axis): Facing | undefined => {
  const side = across(axis)
  const from = Math.max(low(a, side), low(b, side))
  const to = Math.min(high(a, side), high(b, side))
  if (to - from <= TOUCH_MM) return undefined
  const isAhead = low(b, axis) + high(b, axis) >= low(a, axis) + high(a, axis)
  const start = isAhead ? high(a, axis) : low(a, axis)
  const end = isAhead ? low(b, axis) : high(b, axis)
  const gapMm = isAhead ? end - start : start - end
  const ends = [pointOn(axis, start, from), pointOn(axis, end, to)]
  const aside = (from + to) / 2
  return {
    axis,
    sign: isAhead ? 1 : -1,
    gapMm,
    lengthMm: to - from,
    from: pointOn(axis, start, aside),
    to: pointOn(axis, end, aside),
    between: boxOf(ends),
  }
}

/** The axis along which two boxes are apart; where they overlap, the one along which they overlap least. */
export const bestFacing = (a: Box, b: Box): Facing | undefined => {
  const x = facing(a, b, 'x')
  const y = facing(a, b, 'y')
  if (!x || !y) return x ?? y
  return x.gapMm >= y.gapMm ? x : y
}
