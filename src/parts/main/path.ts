import { distance, type Place } from '../../geometry/point'
import type { Site } from '../../model/site'
import type { Main } from './schema'

export type MainPoint = Main['points'][number]

/** Ends that come within a hand's breadth of each other are joined: the last fitting reaches over. Common practice, no source. */
const RING_GAP_MM = 50

/** There and back again on one line is no ring. */
const LEAST_RING_POINTS = 4

/** How high over the floor the pipe's centre is at a point, mm. */
export const heightAt = ({ heightMm }: Main, point: MainPoint): number => point.heightMm ?? heightMm

/** Whether the main comes round to where it begins. */
export const isRing = (part: Main): boolean => {
  const [first, last] = [part.points[0], part.points.at(-1)]
  if (!first || !last || part.points.length < LEAST_RING_POINTS) return false
  const rise = heightAt(part, last) - heightAt(part, first)
  return Math.hypot(distance(first, last), rise) <= RING_GAP_MM
}

/** The pipe's centre at each point, levels from the benchmark; a ring ends in the very place where it begins. */
export const pathOf = (part: Main, site: Site): Place[] => {
  const path = part.points.map((point) => ({
    x: point.x,
    y: point.y,
    z: site.groundAt(point.x, point.y) + heightAt(part, point),
  }))
  const [first] = path
  return first && isRing(part) ? path.with(-1, first) : path
}
