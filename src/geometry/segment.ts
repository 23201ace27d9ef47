import { between, distance, type Point } from './point'

/** Closer than this is touching, mm: far under a tick, far over the rounding of sums of house-sized lengths. */
export const TOUCH_MM = 1e-6

/** Sine of the angle below which two segments count as parallel. */
const PARALLEL_SINE = 1e-12

const clampShare = (t: number): number => Math.min(1, Math.max(0, t))

/** Twice the signed area of the triangle o, p, q, mm²: positive where q lies left of the way from o to p. */
export const turnOf = (o: Point, p: Point, q: Point): number =>
  (p.x - o.x) * (q.y - o.y) - (p.y - o.y) * (q.x - o.x)

/** The point of the segment a-b nearest to `p`; both ends belong to the segment. */
export const nearestOnSegment = (a: Point, b: Point, p: Point): Point => {
  const dx = b.x - a.x
  const dy = b.y - a.y
  const square = dx * dx + dy * dy
  if (square === 0) return a
  return between(a, b, clampShare(((p.x - a.x) * dx + (p.y - a.y) * dy) / square))
}

/** Distance from `p` to the segment a-b, mm. */
export const segmentGap = (a: Point, b: Point, p: Point): number => distance(nearestOnSegment(a, b, p), p)

/** Where parallel segments lie on each other: the shared point nearest to `a`. */
const sharedOfParallel = (a: Point, b: Point, c: Point, d: Point): Point | undefined => {
  const shared = [a, c, d, b].filter(
    (p) => segmentGap(a, b, p) <= TOUCH_MM && segmentGap(c, d, p) <= TOUCH_MM,
  )
  return shared.sort((p, q) => distance(a, p) - distance(a, q))[0]
}

/**
 * The point where the segments a-b and c-d meet, touching ends included. Segments that lie on each other
 * meet first at the shared point nearest to `a`, because a pipe laid along a buried line is a crossing too.
 */
export const segmentsCross = (a: Point, b: Point, c: Point, d: Point): Point | undefined => {
  const abMm = distance(a, b)
  const cdMm = distance(c, d)
  const cross = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x)
  if (Math.abs(cross) <= PARALLEL_SINE * abMm * cdMm) return sharedOfParallel(a, b, c, d)
  const t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / cross
  const at = between(a, b, clampShare(t))
  return segmentGap(a, b, at) <= TOUCH_MM && segmentGap(c, d, at) <= TOUCH_MM ? at : undefined
}
