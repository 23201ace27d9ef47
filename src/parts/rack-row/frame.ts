import { along, offset, right, turnHeading, type Heading } from '../../geometry/motion'
import type { Place, Point } from '../../geometry/point'
import type { RackRow } from './schema'

/**
 * The row's own axes on the floor: u runs along the row from the high end of its gutters, v across it, to the right
 * looking downhill, with 0 on the centreline. Everything in this folder is reckoned in u and v. But racks, stations
 * and lines are numbered from the start of the row and from its left looking along its heading, so that they keep their
 * numbers when the gutters are laid to fall the other way.
 */
export interface Frame {
  /** Where u and v are 0. */
  readonly origin: Point
  readonly downhill: Heading
  readonly racks: number
  /** u and the row's heading point the same way: what is first from the high end is first from the start. */
  readonly isFromStart: boolean
  /** Unit vectors of u and v. */
  readonly along: Point
  readonly right: Point
}

/** Rack line to rack line, mm: what the row is said to be long. */
export const rowLengthMm = ({ racks, rackLengthMm }: RackRow): number => racks * rackLengthMm

/** The far end of the centreline. */
export const rowEnd = (part: RackRow): Point => offset(part.at, part.heading, rowLengthMm(part), 0)

export const frameOf = (part: RackRow): Frame => {
  const fallsToEnd = part.fallsTo === 'end'
  const downhill = fallsToEnd ? part.heading : turnHeading(part.heading, 2)
  return {
    origin: fallsToEnd ? part.at : rowEnd(part),
    downhill,
    racks: part.racks,
    isFromStart: fallsToEnd,
    along: along(downhill),
    right: right(downhill),
  }
}

export const placeAt = ({ origin, along: a, right: r }: Frame, u: number, v: number, z: number): Place => ({
  x: origin.x + a.x * u + r.x * v,
  y: origin.y + a.y * u + r.y * v,
  z,
})

/** Which of `count` things in a row, from 0 at the start or left, is the one that is `index` from the high end or from v's low side. */
export const numberOf = (isFromStart: boolean, index: number, count: number): number =>
  isFromStart ? index : count - 1 - index

/** An upright rectangle in u and v. */
export interface Extent {
  readonly fromU: number
  readonly toU: number
  readonly fromV: number
  readonly toV: number
}

/** Its corners on the floor, anticlockwise. */
export const outlineOf = (frame: Frame, { fromU, toU, fromV, toV }: Extent): Point[] =>
  [
    { u: fromU, v: toV },
    { u: toU, v: toV },
    { u: toU, v: fromV },
    { u: fromU, v: fromV },
  ].map(({ u, v }) => offset(frame.origin, frame.downhill, u, v))
