import {
  mirrorHeading,
  mirrorPoint,
  movePoint,
  offset,
  along,
  turnHeading,
  type Heading,
  type Mirror,
  type Motion,
} from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { Handle } from '../model/partKind'
import { onTick } from '../units/length'
import { onFloor } from './floor'

/** Anything that has a place and faces one of the four ways. */
export interface Standing {
  readonly at: Point
  readonly heading: Heading
}

/** A rectangle about its middle: `lengthMm` runs along the heading, `widthMm` across it. */
export interface Footprint extends Standing {
  readonly lengthMm: number
  readonly widthMm: number
}

/** How far an outline reaches from a place, seen along its heading, mm. */
export interface Reach {
  readonly backMm: number
  readonly frontMm: number
  readonly leftMm: number
  readonly rightMm: number
}

/** The least and the greatest that a dragged size may become, mm. */
export interface SizeLimit {
  readonly leastMm: number
  readonly mostMm: number
}

export const moveStanding = <P extends Standing>(part: P, motion: Motion): P => ({
  ...part,
  at: onFloor(movePoint(part.at, motion)),
  heading: turnHeading(part.heading, motion.quarterTurns),
})

export const mirrorStanding = <P extends Standing>(part: P, mirror: Mirror): P => ({
  ...part,
  at: onFloor(mirrorPoint(part.at, mirror)),
  heading: mirrorHeading(part.heading, mirror),
})

/** The rectangle that reaches from a place to each side, anticlockwise. */
export const outlineAround = ({ at, heading }: Standing, reach: Reach): Point[] => [
  offset(at, heading, -reach.backMm, reach.rightMm),
  offset(at, heading, reach.frontMm, reach.rightMm),
  offset(at, heading, reach.frontMm, -reach.leftMm),
  offset(at, heading, -reach.backMm, -reach.leftMm),
]

/** From the middle of a footprint to its sides. */
export const reachOf = ({ lengthMm, widthMm }: Footprint): Reach => ({
  backMm: lengthMm / 2,
  frontMm: lengthMm / 2,
  leftMm: widthMm / 2,
  rightMm: widthMm / 2,
})

export const footprintOutline = (part: Footprint): Point[] => outlineAround(part, reachOf(part))

export const within = (mm: number, { leastMm, mostMm }: SizeLimit): number =>
  onTick(Math.min(Math.max(mm, leastMm), mostMm))

/** How far `to` lies ahead of `from` on a heading, mm; negative behind it. */
export const ahead = (from: Point, heading: Heading, to: Point): number => {
  const { x, y } = along(heading)
  return (to.x - from.x) * x + (to.y - from.y) * y
}

/** Each corner's side of the middle: ahead (1) or behind, right (1) or left; in the order of the outline. */
const corners = [
  { id: 'c0', front: -1, right: 1 },
  { id: 'c1', front: 1, right: 1 },
  { id: 'c2', front: 1, right: -1 },
  { id: 'c3', front: -1, right: -1 },
] as const

export const cornerHandles = (part: Footprint): Handle[] =>
  footprintOutline(part).flatMap((at, index) => {
    const corner = corners[index]
    return corner ? [{ id: corner.id, at, does: 'Change length and width' }] : []
  })

/** The footprint with a corner dragged to a place while the corner across stays; the same one for an unknown handle. */
export const dragCorner = <P extends Footprint>(part: P, handle: string, to: Point, limit: SizeLimit): P => {
  const corner = corners.find(({ id }) => id === handle)
  if (!corner) return part
  const { at, heading } = part
  const { front, right } = corner
  const fixed = offset(at, heading, (-front * part.lengthMm) / 2, (-right * part.widthMm) / 2)
  const lengthMm = within(front * ahead(fixed, heading, to), limit)
  const widthMm = within(right * ahead(fixed, turnHeading(heading, 3), to), limit)
  const middle = offset(fixed, heading, (front * lengthMm) / 2, (right * widthMm) / 2)
  return { ...part, at: onFloor(middle), lengthMm, widthMm }
}
