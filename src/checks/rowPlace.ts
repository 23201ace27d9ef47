import type { Point } from '../geometry/point'
import type { RackFacts } from '../model/rackFacts'

/** The middle of a row, as the place to jump to. */
export const rowPlace = ({ leftFace, rightFace }: RackFacts): Point => ({
  x: (leftFace.from.x + leftFace.to.x + rightFace.from.x + rightFace.to.x) / 4,
  y: (leftFace.from.y + leftFace.to.y + rightFace.from.y + rightFace.to.y) / 4,
})
