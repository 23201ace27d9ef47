import type { Bay } from '../../checks/context'
import { boxOf } from '../../geometry/box'
import { crossings } from '../../geometry/polyline'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { floorOf, type Leg, nearestOnLegs } from './legs'
import type { CutDrain, CutFooting, CutLevel, CutPit, CutService } from './section'

/** The floor is sampled this often along the section, or at so many places where it is long. */
const STEP_MM = inches(12)
const MOST_STEPS = 240

/** The floor along the section, from its beginning to its end. */
export const groundAlong = (bay: Bay, legs: readonly Leg[], endMm: number): readonly CutLevel[] => {
  const steps = Math.max(1, Math.min(MOST_STEPS, Math.ceil(endMm / STEP_MM)))
  return Array.from({ length: steps + 1 }, (_, step) => {
    const sMm = (endMm * step) / steps
    const leg = legs.findLast(({ startMm }) => startMm <= sMm) ?? legs[0]
    const at = leg && floorOf(leg, sMm)
    return { sMm, levelMm: at ? bay.site.groundAt(at.x, at.y) : 0 }
  })
}

/** How deep is dug at a place of the section: trench bottom or pit bottom. */
const digAt = (sMm: number, drains: readonly CutDrain[], pit: CutPit | undefined): number | undefined => {
  if (pit && sMm >= pit.fromMm && sMm <= pit.toMm) return pit.facts.bottomMm
  const drain = drains.find(({ fromMm, toMm }) => sMm >= fromMm && sMm <= toMm)
  return (
    drain && drain.highInvertMm - dropOver(sMm - drain.fromMm, drain.slopeMmPerM) - drain.wallMm - drain.bedMm
  )
}

/** Buried lines where they cross the section. */
export const servicesCrossed = (
  { house, site }: Bay,
  legs: readonly Leg[],
  endMm: number,
  dug: Pick<{ drains: readonly CutDrain[]; pit: CutPit | undefined }, 'drains' | 'pit'>,
): readonly CutService[] =>
  legs.flatMap((leg) =>
    house.services.flatMap(({ name, what, points, depthMm }) =>
      crossings(leg.points, points).flatMap(({ at, alongA }) => {
        const sMm = leg.startMm + alongA - leg.alongMm
        if (alongA < leg.alongMm || sMm > endMm) return []
        const levelMm = site.groundAt(at.x, at.y) - depthMm
        return [{ name, what, sMm, levelMm, digMm: digAt(sMm, dug.drains, dug.pit) }]
      }),
    ),
  )

/** A footing this near to a trench or a pit is shown. */
const NEAR_MM = inches(24)

/** Footings that a dig on the section cuts or passes near to; `legs` are those that are dug. */
export const footingsNear = (bay: Bay, legs: readonly Leg[], endMm: number): readonly CutFooting[] =>
  bay.built.flatMap(({ bodies }) =>
    bodies.flatMap((body) => {
      if (body.role !== 'footing') return []
      const { x0, y0, x1, y1 } = boxOf(body.outline)
      const middle = { x: (x0 + x1) / 2, y: (y0 + y1) / 2 }
      const half = Math.max(x1 - x0, y1 - y0) / 2
      const on = nearestOnLegs(legs, middle)
      if (!on || on.asideMm - half > NEAR_MM || on.sMm > endMm) return []
      const groundMm = bay.site.groundAt(middle.x, middle.y)
      return [
        {
          part: body.part,
          fromMm: on.sMm - half,
          toMm: on.sMm + half,
          topMm: groundMm + body.toMm,
          bottomMm: groundMm + body.fromMm,
          asideMm: Math.max(0, on.asideMm - half),
        },
      ]
    }),
  )
