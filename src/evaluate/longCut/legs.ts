import { distance, type Point } from '../../geometry/point'
import { nearestOn, pointAlong, polylineLength } from '../../geometry/polyline'

/** A stretch of the section over a line on the floor: from `alongMm` of the line's length on, and from `startMm` of the section. */
export interface Leg {
  readonly points: readonly Point[]
  readonly alongMm: number
  readonly startMm: number
  readonly lengthMm: number
}

/** A leg over the rest of a line, behind those before it. */
export const legAfter = (before: Leg | undefined, points: readonly Point[], alongMm: number): Leg => ({
  points,
  alongMm,
  startMm: before ? before.startMm + before.lengthMm : 0,
  lengthMm: Math.max(0, polylineLength(points) - alongMm),
})

/** The place on the floor of a place on a leg. */
export const floorOf = ({ points, alongMm, startMm }: Leg, sMm: number): Point =>
  pointAlong(points, alongMm + sMm - startMm)

/** Where a place on the floor is on the section, and how far aside of it. */
export interface OnSection {
  readonly sMm: number
  readonly asideMm: number
}

/** The nearest place of a leg; a place that lies before the leg's beginning is nearest to that. */
export const nearestOnLeg = (leg: Leg, p: Point): OnSection => {
  const { at, alongMm, gapMm } = nearestOn(leg.points, p)
  if (alongMm >= leg.alongMm) return { sMm: leg.startMm + alongMm - leg.alongMm, asideMm: gapMm }
  const start = pointAlong(leg.points, leg.alongMm)
  return { sMm: leg.startMm, asideMm: gapMm + distance(at, start) }
}

/** The nearest place of the whole section; undefined for one without legs. */
export const nearestOnLegs = (legs: readonly Leg[], p: Point): OnSection | undefined =>
  legs
    .map((leg) => nearestOnLeg(leg, p))
    .reduce<OnSection | undefined>(
      (near, one) => (near && near.asideMm <= one.asideMm ? near : one),
      undefined,
    )
