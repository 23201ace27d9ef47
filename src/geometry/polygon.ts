import { boxOf, overlaps, type Box } from './box'
import { between, distance, type Point } from './point'
import { nearestOnSegment, segmentsCross, TOUCH_MM, turnOf } from './segment'

/** Polygons here are simple outlines in either direction; the last point joins the first. */
export type Polygon = readonly Point[]

const forEachEdge = (polygon: Polygon, visit: (from: Point, to: Point, edge: number) => void): void => {
  polygon.forEach((from, edge) => {
    const to = polygon[edge + 1] ?? polygon[0]
    if (to) visit(from, to, edge)
  })
}

/** Area, mm²: positive for an anticlockwise outline, negative for a clockwise one. */
export const signedArea = (polygon: Polygon): number => {
  let twice = 0
  const [origin] = polygon
  // Measured from a corner, not from the house's zero, so that a small shape far out keeps its digits.
  if (!origin) return 0
  forEachEdge(polygon, (from, to) => {
    twice += turnOf(origin, from, to)
  })
  return twice / 2
}

/** The nearest place on an outline; `edge` counts from the edge that leaves the first point. */
export interface NearestEdge {
  readonly gapMm: number
  readonly edge: number
  readonly at: Point
}

/** Distance from `p` to the outline itself, inside or out, never negative. */
export const outlineDistance = (polygon: Polygon, p: Point): NearestEdge => {
  let nearest: NearestEdge = { gapMm: Infinity, edge: -1, at: p }
  forEachEdge(polygon, (from, to, edge) => {
    const at = nearestOnSegment(from, to, p)
    const gapMm = distance(at, p)
    if (gapMm < nearest.gapMm) nearest = { gapMm, edge, at }
  })
  return nearest
}

/** Even-odd rule; a point on the outline may fall either way. */
const isWithin = (polygon: Polygon, p: Point): boolean => {
  let within = false
  forEachEdge(polygon, (a, b) => {
    const straddles = a.y > p.y !== b.y > p.y
    if (straddles && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within
  })
  return within
}

const isOnOutline = (polygon: Polygon, p: Point): boolean => outlineDistance(polygon, p).gapMm <= TOUCH_MM

/** True for points inside the polygon and on its outline. */
export const isInside = (polygon: Polygon, p: Point): boolean =>
  isWithin(polygon, p) || isOnOutline(polygon, p)

const isStrictlyInside = (polygon: Polygon, p: Point): boolean =>
  isWithin(polygon, p) && !isOnOutline(polygon, p)

/** Middles of the pieces into which `cutter` cuts the outline: between its cuts a piece never changes side. */
const pieceMiddles = (outline: Polygon, cutter: Polygon): Point[] => {
  const middles: Point[] = []
  forEachEdge(outline, (from, to) => {
    const cuts = [from, to]
    forEachEdge(cutter, (a, b) => {
      // Asked from both ends, so that an edge lying on this one gives both ends of what they share.
      const first = segmentsCross(from, to, a, b)
      const last = first && segmentsCross(to, from, a, b)
      if (first && last) cuts.push(first, last)
    })
    cuts.sort((p, q) => distance(from, p) - distance(from, q))
    cuts.forEach((cut, i) => middles.push(between(cut, cuts[i + 1] ?? cut, 0.5)))
  })
  return middles
}

/** True where no part of `inner` is outside of `outer`; touching from inside is allowed, `outer` may be L-shaped. */
export const contains = (outer: Polygon, inner: Polygon): boolean =>
  inner.every((p) => isInside(outer, p)) && pieceMiddles(inner, outer).every((p) => isInside(outer, p))

/** A box seen as four points with upright and level sides. */
export const isUprightBox = (polygon: Polygon): boolean => {
  const [a, b, c, d] = polygon
  if (polygon.length !== 4 || !a || !b || !c || !d) return false
  const levelFirst = a.y === b.y && b.x === c.x && c.y === d.y && d.x === a.x
  const uprightFirst = a.x === b.x && b.y === c.y && c.x === d.x && d.y === a.y
  return levelFirst || uprightFirst
}

const reachesInto = (a: Polygon, b: Polygon): boolean =>
  pieceMiddles(a, b).some((p) => isStrictlyInside(b, p))

/** True where the polygons share floor; outlines that only touch do not. */
export const polygonsOverlap = (a: Polygon, b: Polygon): boolean => {
  if (!overlaps(boxOf(a), boxOf(b))) return false
  if (isUprightBox(a) && isUprightBox(b)) return true
  // Outlines that do not enter each other bound either separate floors or the very same one.
  return reachesInto(a, b) || reachesInto(b, a) || contains(a, b)
}

/** How far apart two footprints stand, and between which points. */
export interface Gap {
  readonly gapMm: number
  readonly from: Point
  readonly to: Point
}

/** Two spans on one axis: the gap (negative: the least shift that parts them) and which ends it lies between. */
const spanGap = (a0: number, a1: number, b0: number, b1: number) => {
  const isBBeyondA = b0 - a1 >= a0 - b1
  return {
    gapMm: isBBeyondA ? b0 - a1 : a0 - b1,
    from: isBBeyondA ? a1 : a0,
    to: isBBeyondA ? b0 : b1,
    common: (Math.max(a0, b0) + Math.min(a1, b1)) / 2,
  }
}

const boxGap = (a: Box, b: Box): Gap => {
  const x = spanGap(a.x0, a.x1, b.x0, b.x1)
  const y = spanGap(a.y0, a.y1, b.y0, b.y1)
  const isOverlap = x.gapMm < 0 && y.gapMm < 0
  const isAlongX = isOverlap ? x.gapMm >= y.gapMm : x.gapMm >= 0
  const isAlongY = isOverlap ? !isAlongX : y.gapMm >= 0
  return {
    gapMm: isOverlap ? Math.max(x.gapMm, y.gapMm) : Math.hypot(Math.max(0, x.gapMm), Math.max(0, y.gapMm)),
    from: { x: isAlongX ? x.from : x.common, y: isAlongY ? y.from : y.common },
    to: { x: isAlongX ? x.to : x.common, y: isAlongY ? y.to : y.common },
  }
}

/** West and east end of the polygon where the level line through `y` cuts it. */
const sliceAt = (polygon: Polygon, y: number): { west: number; east: number } => {
  let west = Infinity
  let east = -Infinity
  forEachEdge(polygon, (a, b) => {
    if (Math.min(a.y, b.y) > y || Math.max(a.y, b.y) < y) return
    const isLevel = a.y === b.y
    const share = isLevel ? 0 : (y - a.y) / (b.y - a.y)
    const x = a.x + share * (b.x - a.x)
    west = Math.min(west, x, isLevel ? b.x : x)
    east = Math.max(east, x, isLevel ? b.x : x)
  })
  return { west, east }
}

/** Of overlapping polygons: the least shift of `a` west or east that slides it clear past `b`. */
const partAlongX = (a: Polygon, b: Polygon): Gap => {
  const boxA = boxOf(a)
  const boxB = boxOf(b)
  const south = Math.max(boxA.y0, boxB.y0)
  const north = Math.min(boxA.y1, boxB.y1)
  let west: Gap = { gapMm: Infinity, from: { x: 0, y: 0 }, to: { x: 0, y: 0 } }
  let east = west
  for (const { y } of [...a, ...b]) {
    if (y < south || y > north) continue
    const sliceA = sliceAt(a, y)
    const sliceB = sliceAt(b, y)
    const westMm = sliceB.west - sliceA.east
    const eastMm = sliceA.west - sliceB.east
    if (westMm < west.gapMm) west = { gapMm: westMm, from: { x: sliceA.east, y }, to: { x: sliceB.west, y } }
    if (eastMm < east.gapMm) east = { gapMm: eastMm, from: { x: sliceA.west, y }, to: { x: sliceB.east, y } }
  }
  return west.gapMm >= east.gapMm ? west : east
}

const transposed = ({ x, y }: Point): Point => ({ x: y, y: x })

const partOverlap = (a: Polygon, b: Polygon): Gap => {
  const alongX = partAlongX(a, b)
  const alongY = partAlongX(a.map(transposed), b.map(transposed))
  if (alongX.gapMm >= alongY.gapMm) return alongX
  return { gapMm: alongY.gapMm, from: transposed(alongY.from), to: transposed(alongY.to) }
}

/** Outlines that do not cross are nearest to each other at a corner of one of them. */
const cornerGap = (a: Polygon, b: Polygon): Gap => {
  let nearest: Gap = { gapMm: Infinity, from: { x: 0, y: 0 }, to: { x: 0, y: 0 } }
  for (const p of a) {
    const { gapMm, at } = outlineDistance(b, p)
    if (gapMm < nearest.gapMm) nearest = { gapMm, from: p, to: at }
  }
  for (const p of b) {
    const { gapMm, at } = outlineDistance(a, p)
    if (gapMm < nearest.gapMm) nearest = { gapMm, from: at, to: p }
  }
  return nearest
}

/**
 * How far apart two footprints stand, mm.
 * - Apart: the straight distance, from a nearest point `from` of `a` to a nearest point `to` of `b`.
 * - Touching: 0.
 * - Overlapping: negative, minus the length of the least shift of `a` along x or along y that slides it clear of `b`;
 *   `from` is the point of `a` that is deepest in, `to` is where the shift takes it. Exact for convex
 *   outlines; an outline with a notch is slid out past the whole of the other, so the shift may be more than the least.
 */
export const gapBetween = (a: Polygon, b: Polygon): Gap => {
  if (isUprightBox(a) && isUprightBox(b)) return boxGap(boxOf(a), boxOf(b))
  return polygonsOverlap(a, b) ? partOverlap(a, b) : cornerGap(a, b)
}

/**
 * A polygon about a circle: `sides` edges that all touch the circle, the first of them square to the east, so that
 * it never lets through what the circle would stop and, with a multiple of 4 sides, is exactly as wide as the circle
 * to the east, north, west and south. Elsewhere it is too wide by at most radius × (1 / cos(180° / sides) - 1).
 */
export const regular = (center: Point, radiusMm: number, sides: number): Point[] => {
  const step = (2 * Math.PI) / sides
  const cornerMm = radiusMm / Math.cos(step / 2)
  return Array.from({ length: sides }, (_, i) => ({
    x: center.x + cornerMm * Math.cos((i - 0.5) * step),
    y: center.y + cornerMm * Math.sin((i - 0.5) * step),
  }))
}
