import type { Place, Point } from '../geometry/point'
import type { RackFacts } from '../model/rackFacts'
import type { Built } from '../model/built'
import { gutterEnds } from '../model/gutterEnds'

/** A place as whoever builds the row measures it, mm: along from the high end, right of the centreline looking downhill, up. */
export interface RowPlace {
  readonly u: number
  readonly v: number
  readonly z: number
}

/** A row of racks as it is built, from the high end of its gutters. */
export interface RowAxes {
  readonly racks: number
  readonly rackMm: number
  readonly lengthMm: number
  /** Racks are numbered from the start of the row: whether that is its high end. */
  readonly isFromStart: boolean
  /** Unit vector downhill. */
  readonly along: Point
  readonly placeOf: (at: Place) => RowPlace
}

/** The axes of a row, read from its built things. */
export const rowAxes = (built: Built, rack: RackFacts): RowAxes => {
  const { leftFace, rightFace, runMm, racks } = rack
  const { high, low } = gutterEnds(built, rack)
  const isFromStart = high === leftFace.from
  const other = isFromStart ? rightFace.from : rightFace.to
  const origin = { x: (high.x + other.x) / 2, y: (high.y + other.y) / 2 }
  const along = { x: (low.x - high.x) / runMm, y: (low.y - high.y) / runMm }
  return {
    racks,
    rackMm: runMm / racks,
    lengthMm: runMm,
    isFromStart,
    along,
    placeOf: ({ x, y, z }) => ({
      u: (x - origin.x) * along.x + (y - origin.y) * along.y,
      v: (x - origin.x) * along.y - (y - origin.y) * along.x,
      z,
    }),
  }
}
