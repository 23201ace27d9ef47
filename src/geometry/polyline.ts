import { between, distance, type Point } from './point'
import { nearestOnSegment, segmentsCross, TOUCH_MM } from './segment'

/** One straight part of a polyline; `startMm` is the way along the polyline to its first end. */
export interface Segment {
  readonly from: Point
  readonly to: Point
  readonly startMm: number
  readonly lengthMm: number
}

/** The straight parts of a polyline in order; none for fewer than two points. */
export const segmentsOf = (points: readonly Point[]): Segment[] => {
  const segments: Segment[] = []
  let startMm = 0
  let from: Point | undefined
  for (const to of points) {
    if (from) {
      const lengthMm = distance(from, to)
      segments.push({ from, to, startMm, lengthMm })
      startMm += lengthMm
    }
    from = to
  }
  return segments
}

/** Length along all parts, mm; 0 for fewer than two points. */
export const polylineLength = (points: readonly Point[]): number =>
  segmentsOf(points).reduce((sum, segment) => sum + segment.lengthMm, 0)

const firstOf = (points: readonly Point[]): Point => {
  const [first] = points
  if (!first) throw new RangeError('A polyline needs at least 1 point, and this one has 0')
  return first
}

/** The point `alongMm` from the first point; before the start and past the end it stays at the end. */
export const pointAlong = (points: readonly Point[], alongMm: number): Point => {
  let last = firstOf(points)
  if (alongMm <= 0) return last
  for (const { from, to, startMm, lengthMm } of segmentsOf(points)) {
    if (alongMm < startMm + lengthMm) return between(from, to, (alongMm - startMm) / lengthMm)
    last = to
  }
  return last
}

/** The nearest place on a polyline: where, how far along it, and how far from the point asked for, mm. */
export interface NearestOnLine {
  readonly at: Point
  readonly alongMm: number
  readonly gapMm: number
}

/** The place on the polyline nearest to `p`; of equally near places the first along the line. */
export const nearestOn = (points: readonly Point[], p: Point): NearestOnLine => {
  const first = firstOf(points)
  let nearest: NearestOnLine = { at: first, alongMm: 0, gapMm: distance(first, p) }
  for (const { from, to, startMm } of segmentsOf(points)) {
    const at = nearestOnSegment(from, to, p)
    const gapMm = distance(at, p)
    if (gapMm < nearest.gapMm) nearest = { at, alongMm: startMm + distance(from, at), gapMm }
  }
  return nearest
}

/** A place where two polylines meet, and how far along each it is, mm. */
export interface Crossing {
  readonly at: Point
  readonly alongA: number
  readonly alongB: number
}

const isSameCrossing = (a: Crossing, b: Crossing): boolean =>
  Math.abs(a.alongA - b.alongA) <= TOUCH_MM && Math.abs(a.alongB - b.alongB) <= TOUCH_MM

/** Every place where the polylines cross or touch, in order along `lineA`; a meeting at a bend counts once. */
export const crossings = (lineA: readonly Point[], lineB: readonly Point[]): Crossing[] => {
  const found: Crossing[] = []
  const partsOfB = segmentsOf(lineB)
  for (const a of segmentsOf(lineA)) {
    for (const b of partsOfB) {
      const at = segmentsCross(a.from, a.to, b.from, b.to)
      if (!at) continue
      const crossing = {
        at,
        alongA: a.startMm + distance(a.from, at),
        alongB: b.startMm + distance(b.from, at),
      }
      if (!found.some((known) => isSameCrossing(known, crossing))) found.push(crossing)
    }
  }
  return found.sort((p, q) => p.alongA - q.alongA)
}

const stripOf = ({ from, to, lengthMm }: Segment, widthMm: number): Point[] => {
  const acrossX = ((from.y - to.y) / lengthMm) * (widthMm / 2)
  const acrossY = ((to.x - from.x) / lengthMm) * (widthMm / 2)
  return [
    { x: from.x - acrossX, y: from.y - acrossY },
    { x: to.x - acrossX, y: to.y - acrossY },
    { x: to.x + acrossX, y: to.y + acrossY },
    { x: from.x + acrossX, y: from.y + acrossY },
  ]
}

/**
 * The trench along a polyline: one anticlockwise rectangle a straight part, `widthMm` wide with the line in its
 * middle, square at the ends. Parts without length are left out.
 */
export const strip = (points: readonly Point[], widthMm: number): Point[][] =>
  segmentsOf(points)
    .filter(({ lengthMm }) => lengthMm > 0)
    .map((segment) => stripOf(segment, widthMm))
