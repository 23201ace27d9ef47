import { along, offset, right, turnHeading, type Heading } from '../../geometry/motion'
import type { Place, Point } from '../../geometry/point'
import type { RackRow } from './schema'

/**
 * The row's own axes on the floor: u runs along the row from the high end of its gutters, v across it, to the right
 * looking downhill, with 0 on the centreline. Everything in this folder is reckoned in u and v.
 */
export interface Frame {
  /** Where u and v are 0. */
  readonly origin: Point
  readonly downhill: Heading
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
    along: along(downhill),
    right: right(downhill),
  }
}

export const placeAt = ({ origin, along: a, right: r }: Frame, u: number, v: number, z: number): Place => ({
  x: origin.x + a.x * u + r.x * v,
  y: origin.y + a.y * u + r.y * v,
  z,
})

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
