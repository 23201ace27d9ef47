import { offset } from '../../geometry/motion'
import { distance, type Point } from '../../geometry/point'
import type { Handle } from '../../model/partKind'
import { cornerHandles, dragCorner, within } from '../footprint'
import { OBSTACLE_SIDE, type Obstacle } from './schema'

export const obstacleHandles = (part: Obstacle): readonly Handle[] =>
  part.shape === 'box'
    ? cornerHandles(part)
    : [{ id: 'edge', at: offset(part.at, part.heading, part.lengthMm / 2, 0), does: 'Change diameter' }]

/** A corner of a box, or the edge of a round thing about its middle. */
export const dragObstacle = (part: Obstacle, handle: string, to: Point): Obstacle => {
  if (part.shape === 'box') return dragCorner(part, handle, to, OBSTACLE_SIDE)
  return handle === 'edge' ? { ...part, lengthMm: within(2 * distance(part.at, to), OBSTACLE_SIDE) } : part
}
