import { obstacleBoxes, rowBoxes } from '../checks/aisles'
import type { CartReach } from '../checks/context'
import { boxOf, type Box } from '../geometry/box'
import { type Heading, turnHeading } from '../geometry/motion'
import { widestPassage } from '../geometry/passage'
import type { Point } from '../geometry/point'
import type { BodyRole, Built } from '../model/built'
import type { PartId } from '../model/ids'

interface Side {
  readonly from: Point
  readonly to: Point
  readonly facing: Heading
}

/** The side of a box that faces a heading. */
const sideOf = ({ x0, y0, x1, y1 }: Box, facing: Heading): Side => {
  switch (facing) {
    case 0:
      return { from: { x: x1, y: y0 }, to: { x: x1, y: y1 }, facing }
    case 90:
      return { from: { x: x0, y: y1 }, to: { x: x1, y: y1 }, facing }
    case 180:
      return { from: { x: x0, y: y0 }, to: { x: x0, y: y1 }, facing }
    case 270:
      return { from: { x: x0, y: y0 }, to: { x: x1, y: y0 }, facing }
  }
}

const boxesOf = (built: readonly Built[], role: BodyRole): Box[] =>
  built.flatMap((b) => b.bodies.filter((body) => body.role === role).map(({ outline }) => boxOf(outline)))

/** Left, right, start and end of a row, seen along it. */
const sidesOf = (box: Box, leftFacing: Heading): Side[] =>
  [leftFacing, turnHeading(leftFacing, 2), turnHeading(leftFacing, 1), turnHeading(leftFacing, 3)].map(
    (facing) => sideOf(box, facing),
  )

/**
 * The widest cart that can come from a door alongside each side of each row. A pit blocks: its lid bears a person, not a cart.
 */
export const cartReach = (
  built: readonly Built[],
  outline: readonly Point[],
): ReadonlyMap<PartId, CartReach> => {
  const rows = rowBoxes(built)
  const leftOf = new Map(built.map((b) => [b.part, b.rack?.leftFace.facing ?? 180]))
  const blocks = [
    ...rows.map(({ box }) => box),
    ...obstacleBoxes(built).map(({ box }) => box),
    ...boxesOf(built, 'pit'),
  ]
  const sides = rows.flatMap(({ part, box }) => sidesOf(box, leftOf.get(part) ?? 180))
  const widths = widestPassage({ blocks, outline }, boxesOf(built, 'door'), sides)
  const at = (index: number) => widths[index] ?? 0
  return new Map(
    rows.map(({ part }, index) => [
      part,
      {
        leftMm: at(4 * index),
        rightMm: at(4 * index + 1),
        startMm: at(4 * index + 2),
        endMm: at(4 * index + 3),
      },
    ]),
  )
}
