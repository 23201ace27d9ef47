import type { Box } from './box'
import { type Axis, across, high, low } from './facing'
import type { Point } from './point'
import { TOUCH_MM } from './segment'

/** A wall ahead of one side of a box. */
export interface WallHit {
  readonly gapMm: number
  readonly aside: number
}

/** The part of wall a-b that lies beside the span lo..hi, as its nearest approach to `edge` in direction `sign` along the axis. */
const wallBeside = (
  a: Point,
  b: Point,
  axis: Axis,
  edge: number,
  sign: 1 | -1,
  lo: number,
  hi: number,
): WallHit | undefined => {
  const side = across(axis)
  const d = b[side] - a[side]
  const clip = (v: number) => (d === 0 ? 0 : Math.min(1, Math.max(0, (v - a[side]) / d)))
  if (Math.max(a[side], b[side]) <= lo || Math.min(a[side], b[side]) >= hi) return undefined
  const hitAt = (t: number): WallHit => ({
    gapMm: sign * (a[axis] + (b[axis] - a[axis]) * t - edge),
    aside: a[side] + d * t,
  })
  const [first, last] = [hitAt(clip(lo)), hitAt(clip(hi))]
  // Along a wall that runs level with the box it is as near everywhere: the middle stands for all of it.
  if (Math.abs(first.gapMm - last.gapMm) <= TOUCH_MM)
    return { gapMm: Math.min(first.gapMm, last.gapMm), aside: (first.aside + last.aside) / 2 }
  return first.gapMm < last.gapMm ? first : last
}

/** How far a box's side is from the wall that it faces, and where that is nearest. */
export const wallAhead = (
  box: Box,
  outline: readonly Point[],
  axis: Axis,
  sign: 1 | -1,
): WallHit | undefined => {
  const side = across(axis)
  const edge = sign > 0 ? high(box, axis) : low(box, axis)
  const size = high(box, axis) - low(box, axis)
  let best: WallHit | undefined
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a
    const hit = wallBeside(a, b, axis, edge, sign, low(box, side), high(box, side))
    // A wall through the far half of the box is ahead of its other side.
    if (hit && hit.gapMm > TOUCH_MM - size / 2 && (!best || hit.gapMm < best.gapMm)) best = hit
  })
  return best
}

/** The four ways out of a box: axis, and 1 or -1 along it. */
export const sides = [
  ['x', 1],
  ['x', -1],
  ['y', 1],
  ['y', -1],
] as const
