import type { Mirror } from '../../geometry/motion'
import type { PartKind } from '../../model/partKind'
import { onFloor } from '../floor'
import { mirrorStanding, moveStanding } from '../footprint'
import { deriveObstacle } from './derive'
import { drawObstacle } from './draw'
import { dragObstacle, obstacleHandles } from './handles'
import { obstaclePresets } from './presets'
import { obstacleSchema, type Obstacle } from './schema'

/** A mirror swaps left and right, whichever way the thing faces. */
const mirrorObstacle = (part: Obstacle, mirror: Mirror): Obstacle => ({
  ...mirrorStanding(part, mirror),
  clearLeftMm: part.clearRightMm,
  clearRightMm: part.clearLeftMm,
})

export const obstacle: PartKind<Obstacle> = {
  kind: 'obstacle',
  title: 'Obstacle',
  schema: obstacleSchema,
  presets: obstaclePresets,
  create: (id, name, at, preset) =>
    obstacleSchema.parse({ ...preset.values, kind: 'obstacle', id, name, at: onFloor(at) }),
  move: moveStanding,
  mirror: mirrorObstacle,
  derive: deriveObstacle,
  draw: drawObstacle,
  handles: obstacleHandles,
  drag: dragObstacle,
}
