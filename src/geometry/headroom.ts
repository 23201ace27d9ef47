import type { Point } from './point'
import { segmentGap } from './segment'

/** Clear heights at distances from a wall, mm. */
export type Profile = readonly { readonly distanceMm: number; readonly heightMm: number }[]

/** A wall that curves in overhead; `edge` is the outline's edge from point `edge` to the next. */
export interface CurvedWall {
  readonly edge: number
  readonly profile: Profile
}

/**
 * The profile's height at a distance from the wall: straight lines between its points, the first point's height
 * nearer than that, and no limit (Infinity) past the last.
 */
const heightAt = (profile: Profile, distanceMm: number): number => {
  let nearer: Profile[number] | undefined
  for (const point of profile) {
    if (distanceMm <= point.distanceMm) {
      if (!nearer) return point.heightMm
      const share = (distanceMm - nearer.distanceMm) / (point.distanceMm - nearer.distanceMm)
      return nearer.heightMm + share * (point.heightMm - nearer.heightMm)
    }
    nearer = point
  }
  return Infinity
}

const inOrder = (profile: Profile): Profile => profile.toSorted((a, b) => a.distanceMm - b.distanceMm)

interface Wall {
  readonly from: Point
  readonly to: Point
  readonly profile: Profile
}

const wallOf = (outline: readonly Point[], { edge, profile }: CurvedWall): Wall[] => {
  const from = outline[edge]
  const to = outline[edge + 1] ?? outline[0]
  return from && to ? [{ from, to, profile: inOrder(profile) }] : []
}

/**
 * Clear height above the floor at any place, mm: the general headroom, or less where a curved wall says so. Distance
 * is from the wall itself, not from its line drawn on past its ends, so that the far leg of an L keeps its height.
 * A curved wall whose edge the outline does not have limits nothing.
 */
export const headroomOf = (
  outline: readonly Point[],
  headroomMm: number,
  curvedWalls: readonly CurvedWall[],
): ((x: number, y: number) => number) => {
  const walls = curvedWalls.flatMap((wall) => wallOf(outline, wall))
  return (x, y) =>
    walls.reduce(
      (least, { from, to, profile }) => Math.min(least, heightAt(profile, segmentGap(from, to, { x, y }))),
      headroomMm,
    )
}
