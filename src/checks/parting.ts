import { type Box, overlaps } from '../geometry/box'
import { type Axis, across, high, low, pointOn } from '../geometry/facing'
import type { Point } from '../geometry/point'
import { gapBetween, isUprightBox } from '../geometry/polygon'
import { CLOSE_MM } from './found'
import { shareHeight, type Solid, type Solids } from './solids'

const shifted = ({ body, box }: Solid, { x, y }: Point): Solid => ({
  body: { ...body, outline: body.outline.map((p) => ({ x: p.x + x, y: p.y + y })) },
  box: { x0: box.x0 + x, y0: box.y0 + y, x1: box.x1 + x, y1: box.y1 + y },
})

const isClear = (one: Solid, others: readonly Solid[]): boolean =>
  !others.some(
    (other) =>
      overlaps(one.box, other.box) &&
      shareHeight(one.body, other.body) &&
      gapBetween(one.body.outline, other.body.outline).gapMm < -CLOSE_MM,
  )

const isBeside = (a: Box, b: Box, axis: Axis): boolean => {
  const side = across(axis)
  return low(a, side) < high(b, side) - CLOSE_MM && low(b, side) < high(a, side) - CLOSE_MM
}

/** How far all of `a` goes one way along an axis until nothing of it lies beside anything of `b`. */
const wayPast = (a: Solids, b: Solids, axis: Axis, sign: 1 | -1): Point => {
  let furthest = 0
  for (const one of a.all)
    for (const other of b.all) {
      if (!shareHeight(one.body, other.body) || !isBeside(one.box, other.box, axis)) continue
      const past =
        sign > 0 ? high(other.box, axis) - low(one.box, axis) : high(one.box, axis) - low(other.box, axis)
      furthest = Math.max(furthest, past)
    }
  return pointOn(axis, sign * furthest, 0)
}

const farness = ({ x, y }: Point): number => Math.abs(x) + Math.abs(y)

const isUpright = ({ all }: Solids): boolean => all.every(({ body }) => isUprightBox(body.outline))

/**
 * The least shift of `a` as a whole, along x or y, that takes it clear of `b`: the one that parts its worst body, or for
 * upright boxes the shortest way past. Undefined where neither does: then no shift is obvious.
 */
export const partingShift = (a: Solids, b: Solids, ofWorst: Point): Point | undefined => {
  const ways =
    isUpright(a) && isUpright(b)
      ? (['x', 'y'] as const).flatMap((axis) => [wayPast(a, b, axis, 1), wayPast(a, b, axis, -1)])
      : []
  return [ofWorst, ...ways]
    .sort((one, other) => farness(one) - farness(other))
    .find((shift) => a.all.every((solid) => isClear(shifted(solid, shift), b.all)))
}
