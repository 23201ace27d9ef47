import type { Place } from './point'

/** The level of a floor at any place, mm. */
export type Surface = (x: number, y: number) => number

/** Spots whose spread across their line is less than this share of their spread along it say nothing about the fall across. */
const LINE_RATIO = 1e-3

/** Two readings closer together than this are readings of one spot, mm. */
const SAME_SPOT_MM = 1e-6

/** Spots around their common middle, with the sums of squares and products that a least-squares plane needs. */
interface Moments {
  readonly x: number
  readonly y: number
  readonly z: number
  readonly xx: number
  readonly xy: number
  readonly yy: number
  readonly xz: number
  readonly yz: number
}

const momentsOf = (spots: readonly Place[]): Moments => {
  const mean = (pick: (spot: Place) => number) =>
    spots.reduce((sum, spot) => sum + pick(spot), 0) / spots.length
  const x = mean((spot) => spot.x)
  const y = mean((spot) => spot.y)
  const z = mean((spot) => spot.z)
  return {
    x,
    y,
    z,
    xx: mean((spot) => (spot.x - x) ** 2),
    xy: mean((spot) => (spot.x - x) * (spot.y - y)),
    yy: mean((spot) => (spot.y - y) ** 2),
    xz: mean((spot) => (spot.x - x) * (spot.z - z)),
    yz: mean((spot) => (spot.y - y) * (spot.z - z)),
  }
}

/** Fall of the least-squares plane, mm per mm; spots laid out on the x axis say nothing about the fall north. */
const slopeOf = ({ xx, xy, yy, xz, yz }: Moments): { east: number; north: number } => {
  if (yy === 0) return { east: xx > 0 ? xz / xx : 0, north: 0 }
  const determinant = xx * yy - xy * xy
  return { east: (xz * yy - yz * xy) / determinant, north: (yz * xx - xz * xy) / determinant }
}

/** What each spot stands above the plane, spread over the floor by inverse squares of distance (flat: x, y, mm a spot). */
const restAt = (rest: Float64Array, x: number, y: number): number => {
  let weights = 0
  let weighted = 0
  let atSpot = 0
  let spotsHere = 0
  // `?? 0` satisfies the compiler alone: `rest` holds three numbers a spot.
  for (let i = 0; i < rest.length; i += 3) {
    const dx = x - (rest[i] ?? 0)
    const dy = y - (rest[i + 1] ?? 0)
    const square = dx * dx + dy * dy
    const mm = rest[i + 2] ?? 0
    if (square <= SAME_SPOT_MM ** 2) {
      atSpot += mm
      spotsHere += 1
    } else {
      weights += 1 / square
      weighted += mm / square
    }
  }
  if (spotsHere > 0) return atSpot / spotsHere
  return weights > 0 ? weighted / weights : 0
}

/** Plane and rest through spots that spread over the floor, or that all lie on the x axis. */
const through = (spots: readonly Place[]): Surface => {
  const moments = momentsOf(spots)
  const { east, north } = slopeOf(moments)
  const plane: Surface = (x, y) => moments.z + east * (x - moments.x) + north * (y - moments.y)
  const rest = new Float64Array(spots.flatMap(({ x, y, z }) => [x, y, z - plane(x, y)]))
  return (x, y) => plane(x, y) + restAt(rest, x, y)
}

/**
 * How far along the spots' line a place is, mm, if they all stand on one. The spread along and across that line are the
 * two principal values of the spots' spread.
 */
const alongLine = ({ x, y, xx, xy, yy }: Moments): ((px: number, py: number) => number) | undefined => {
  const middle = (xx + yy) / 2
  const half = Math.hypot((xx - yy) / 2, xy)
  if (middle - half > LINE_RATIO ** 2 * (middle + half)) return undefined
  const angle = Math.atan2(2 * xy, xx - yy) / 2
  const east = Math.cos(angle)
  const north = Math.sin(angle)
  return (px, py) => (px - x) * east + (py - y) * north
}

/**
 * A floor through spot levels: the least-squares plane of all spots, plus what each spot stands above or below
 * that plane, weighted by the inverse square of its distance (D. Shepard, "A two-dimensional interpolation function for
 * irregularly-spaced data", Proc. 23rd ACM National Conference, 1968, pp. 517-524; from memory).
 *
 * So a plane floor comes out as that plane, the surface passes through every spot, and between and beyond the spots it never
 * strays from the plane by more than the worst spot does, even where two readings a hand apart disagree.
 * Several readings of one place count as their mean. No spot gives level 0, one a level floor; two, or more on one line,
 * set the fall along that line and leave the floor level across it. `x`, `y`, `z` in mm.
 */
export const surfaceOf = (spots: readonly Place[]): Surface => {
  if (spots.length === 0) return () => 0
  const along = alongLine(momentsOf(spots))
  if (!along) return through(spots)
  const profile = through(spots.map(({ x, y, z }) => ({ x: along(x, y), y: 0, z })))
  return (x, y) => profile(along(x, y), 0)
}
