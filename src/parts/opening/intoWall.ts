import { offset, turnHeading, type Heading } from '../../geometry/motion'
import { distance, type Point } from '../../geometry/point'
import { outlineDistance } from '../../geometry/polygon'
import { inches } from '../../units/length'
import { onFloor } from '../floor'
import { ahead } from '../footprint'
import type { Opening } from './schema'

/** An opening that is let go this near a wall is meant to be in it. Common practice, no source. */
const WALL_REACH_MM = inches(24)

/** Which way a wall runs; undefined where it runs askew, since openings turn by quarters. */
const headingOf = (from: Point, to: Point): Heading | undefined => {
  if (from.y === to.y) return to.x > from.x ? 0 : 180
  if (from.x === to.x) return to.y > from.y ? 90 : 270
  return undefined
}

/** The middle of the opening along its wall, both jambs in the wall where it is long enough for them. */
const betweenCorners = (alongMm: number, widthMm: number, wallMm: number): number =>
  wallMm < widthMm ? alongMm : Math.min(Math.max(alongMm, widthMm / 2), wallMm - widthMm / 2)

/**
 * The opening in the wall that it is near, leading into the house; the same opening where no straight wall is in reach.
 * `outline` is the inside of the house, anticlockwise: the house lies left of each wall.
 */
export const intoWall = (part: Opening, outline: readonly Point[]): Opening => {
  const { gapMm, edge, at } = outlineDistance(outline, part.at)
  const [from, to] = [outline[edge], outline[edge + 1] ?? outline[0]]
  if (!from || !to || gapMm > WALL_REACH_MM) return part
  const runs = headingOf(from, to)
  if (runs === undefined) return part
  const alongMm = betweenCorners(ahead(from, runs, at), part.widthMm, distance(from, to))
  return { ...part, at: onFloor(offset(from, runs, alongMm, 0)), heading: turnHeading(runs, 1) }
}
