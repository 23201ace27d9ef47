import { between, distance, type Point } from '../geometry/point'
import type { RackFacts } from '../model/rackFacts'
import type { RowSpot } from '../model/strength'

/** The middle of a row, as the place to jump to. */
export const rowPlace = ({ leftFace, rightFace }: RackFacts): Point => ({
  x: (leftFace.from.x + leftFace.to.x + rightFace.from.x + rightFace.to.x) / 4,
  y: (leftFace.from.y + leftFace.to.y + rightFace.from.y + rightFace.to.y) / 4,
})

/** A unit vector of the floor. */
const towards = (from: Point, to: Point): Point => {
  const mm = distance(from, to)
  return { x: (to.x - from.x) / mm, y: (to.y - from.y) / mm }
}

/** The place on the floor of a spot in a row's own axes: u along it from its start, v to its right, mm. */
export const placeOfSpot = (
  { leftFace, rightFace }: RackFacts,
  { u, v }: Pick<RowSpot, 'u' | 'v'>,
): Point => {
  const start = between(leftFace.from, rightFace.from, 0.5)
  const along = towards(leftFace.from, leftFace.to)
  // To the right of it, even where a row of one bare line is no wider than a line.
  return { x: start.x + u * along.x + v * along.y, y: start.y + u * along.y - v * along.x }
}
