import { mirrorPoint, movePoint, type Mirror, type Motion } from '../geometry/motion'
import { turnAt } from '../geometry/path'
import { between, distance, length3, type Place, type Point } from '../geometry/point'
import { nearestOn, segmentsOf, type Segment } from '../geometry/polyline'
import { nearestOnSegment } from '../geometry/segment'
import type { Handle } from '../model/partKind'
import { feet, onTick } from '../units/length'
import { onFloor } from './floor'

export { pathLength } from '../geometry/path'

/** A point of a run; it may have a height over the floor of its own, mm, where its kind has heights. */
export interface RunPoint extends Point {
  readonly heightMm?: number | undefined
}

/** A part that runs through points, two at least. */
export interface Run {
  readonly points: readonly RunPoint[]
  /** Over the floor at every point that has no height of its own, mm; only where the kind has heights. */
  readonly heightMm?: number
}

/** Fewer points make no run; more than `most` make no file. */
const LEAST_POINTS = 2
export const MOST_POINTS = 200

/** Half the length of a run just dropped on the floor: it arrives one 10 ft stick long. */
const HALF_NEW_RUN_MM = feet(5)

/** Where pipe turns less than 5 degrees the joints take it up and no fitting is bought. Common practice, no source. */
export const TURN_RADIANS = Math.PI / 36

const keptPoint = (p: RunPoint): RunPoint =>
  p.heightMm === undefined ? onFloor(p) : { ...onFloor(p), heightMm: p.heightMm }

const withPoints = <P extends Run>(part: P, points: readonly RunPoint[]): P => ({
  ...part,
  points: points.map(keptPoint),
})

/** The two ends of a new run, west to east, with its middle at a place. */
export const newRun = ({ x, y }: Point): Point[] =>
  [x - HALF_NEW_RUN_MM, x + HALF_NEW_RUN_MM].map((end) => onFloor({ x: end, y }))

export const moveRun = <P extends Run>(part: P, motion: Motion): P =>
  withPoints(
    part,
    part.points.map((p) => ({ ...p, ...movePoint(p, motion) })),
  )

export const mirrorRun = <P extends Run>(part: P, mirror: Mirror): P =>
  withPoints(
    part,
    part.points.map((p) => ({ ...p, ...mirrorPoint(p, mirror) })),
  )

export const runHandles = ({ points }: Run): Handle[] =>
  points.map((at, index) => ({ id: `p${index}`, at, does: 'Move this point' }))

/** Index of the point that a handle such as `p2` stands for; -1 where there is none. */
const pointOf = ({ points }: Run, handle: string): number =>
  points.findIndex((_, index) => handle === `p${index}`)

/** The run with one point elsewhere; the same run for an unknown handle. */
export const dragRun = <P extends Run>(part: P, handle: string, to: Point): P => {
  const index = pointOf(part, handle)
  const held = part.points[index]
  return held ? withPoints(part, part.points.with(index, { ...held, x: to.x, y: to.y })) : part
}

/** The legs that have a length: two points on one place make none. */
export const legsOf = (points: readonly Point[]): Segment[] =>
  segmentsOf(points).filter(({ lengthMm }) => lengthMm > 0)

/** Index of the leg nearest to a place, counted from the first; 0 for a run without legs. */
const nearestLeg = (points: readonly Point[], at: Point): number => {
  const gaps = segmentsOf(points).map(({ from, to }) => distance(nearestOnSegment(from, to, at), at))
  return Math.max(0, gaps.indexOf(Math.min(...gaps)))
}

/** A place on a leg as a point of the run: as high as the pipe is there, where an end of the leg has a height of its own. */
const pointOn = ({ points, heightMm = 0 }: Run, leg: number, at: Point): RunPoint => {
  const [from, to] = [points[leg], points[leg + 1]]
  if (!from || !to || (from.heightMm === undefined && to.heightMm === undefined)) return at
  const [low, high] = [from.heightMm ?? heightMm, to.heightMm ?? heightMm]
  const wholeMm = distance(from, to)
  const share = wholeMm > 0 ? distance(from, at) / wholeMm : 0
  return { ...at, heightMm: onTick(low + (high - low) * share) }
}

/**
 * The run with one more point on it, where it is nearest to a place; the same run where it is full. Nothing moves by
 * it, however surely the finger came down: that is for the drag that follows.
 */
export const addRunPoint = <P extends Run>(part: P, at: Point): P => {
  const { points } = part
  if (points.length >= MOST_POINTS) return part
  const leg = nearestLeg(points, at)
  return withPoints(part, points.toSpliced(leg + 1, 0, pointOn(part, leg, nearestOn(points, at).at)))
}

/** The run without one point; the same run where only two are left or the handle is unknown. */
export const removeRunPoint = <P extends Run>(part: P, handle: string): P => {
  const index = pointOf(part, handle)
  if (index < 0 || part.points.length <= LEAST_POINTS) return part
  return withPoints(part, part.points.toSpliced(index, 1))
}

/** How far the way turns from one leg to the next, 0 (straight on) to pi (back). */
const turnRadians = (a: Segment, b: Segment): number => {
  const ax = a.to.x - a.from.x
  const ay = a.to.y - a.from.y
  const bx = b.to.x - b.from.x
  const by = b.to.y - b.from.y
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by))
}

/** The points of a path where it turns sharply enough to need a fitting. */
export const bendsOf = <P extends Point>(path: readonly P[]): P[] => {
  const legs = legsOf(path)
  return legs.slice(1).flatMap((leg, index) => {
    const before = legs[index]
    // The path's own point, which may have a level.
    const at = path.find((p) => p === leg.from)
    return before && at && turnRadians(before, leg) >= TURN_RADIANS ? [at] : []
  })
}

/** The places of a path where it turns in space, up and down as well as aside, sharply enough to need an elbow. */
export const elbowsOf = (path: readonly Place[]): Place[] => {
  const places = path.filter((at, index) => index === 0 || length3(at, path[index - 1] ?? at) > 0)
  return places.filter((at, index) => {
    const [before, after] = [places[index - 1], places[index + 1]]
    return before !== undefined && after !== undefined && turnAt(before, at, after) >= TURN_RADIANS
  })
}

/** Where the words of a run stand: left of the middle of its longest leg, and upright where that leg runs north-south. */
export const labelPlace = (points: readonly Point[], leftMm: number): { at: Point; upright: boolean } => {
  const [longest] = legsOf(points).toSorted((a, b) => b.lengthMm - a.lengthMm)
  if (!longest) return { at: points[0] ?? { x: 0, y: 0 }, upright: false }
  const { from, to } = longest
  const { x, y } = between(from, to, 0.5)
  const upright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x)
  return { at: upright ? { x: x - leftMm, y } : { x, y: y + leftMm }, upright }
}
