import { pathLength } from '../../geometry/path'
import { offset } from '../../geometry/motion'
import type { Place, Point } from '../../geometry/point'
import type { Fitting, Tube } from '../../model/built'
import { inches } from '../../units/length'
import type { Sump } from './schema'

/** Middle to middle of two pumps side by side. Common practice, no source. */
const PUMP_SPACING_MM = inches(12)

/** Poly pipe grows and creeps, and is never cut to the last inch. Common practice, no source. */
const SLACK = 1.01

/** The pumps stand at the end that the heading points to, as far from that wall as from the two beside it. */
export const dischargePlace = ({ at, heading, lengthMm, widthMm }: Sump): Point =>
  offset(at, heading, Math.max(0, (lengthMm - widthMm) / 2), 0)

/** Each pump, side by side across the pit, drawn together where it is too narrow. */
export const pumpPlaces = (part: Sump): Place[] => {
  const middle = dischargePlace(part)
  const spacingMm = Math.min(PUMP_SPACING_MM, part.widthMm / (part.pumps + 1))
  return Array.from({ length: part.pumps }, (_, k) => ({
    ...offset(middle, part.heading, 0, (k - (part.pumps - 1) / 2) * spacingMm),
    z: part.pumpOffMm,
  }))
}

const times = (count: number, item: string, at: Place): Fitting[] =>
  Array.from({ length: count }, () => ({ item, at }))

/** Each pump with what it has of its own: a union on either side of its check valve, so that both come out. */
const pumpFittings = (part: Sump, pump: Place): Fitting[] => [
  { item: 'pump', at: pump },
  ...times(part.strainer ? 1 : 0, 'foot-strainer', pump),
  ...times(part.checkValve ? 1 : 0, 'check-valve', pump),
  ...times(part.checkValve ? 2 : 1, 'union', pump),
]

/** A union and a sight tube on either side of each filter; two have a tee at either end, and valves to clean one alone. */
const filterFittings = ({ filter }: Sump, at: Place): Fitting[] => {
  const filters = filter === 'none' ? 0 : filter === 'one' ? 1 : 2
  return [
    ...times(filters, 'filter', at),
    ...times(2 * filters, 'union', at),
    ...times(2 * filters, 'sight-tube', at),
    ...times(filters === 2 ? 2 : 0, 'tee', at),
    ...times(filters === 2 ? 4 : 0, 'ball-valve', at),
  ]
}

/** Strainer, pump, union, check valve, union, tee to the bypass, filter; from the pumps to where the discharge leaves the pit. */
export const pumpSetFittings = (part: Sump, at: Place): Fitting[] => {
  const pumps = pumpPlaces(part)
  if (pumps.length === 0) return []
  return [
    ...pumps.flatMap((pump) => pumpFittings(part, pump)),
    // The last of several pumps turns into the pipe that the others have tees on.
    ...times(pumps.length - 1, 'tee', at),
    ...times(pumps.length > 1 ? 1 : 0, 'elbow', at),
    ...times(part.bypassShare > 0 ? 1 : 0, 'tee', at),
    ...times(part.bypassShare > 0 ? 1 : 0, 'bypass-valve', at),
    ...filterFittings(part, at),
  ]
}

/** From each pump up, and across to where the discharge leaves the pit. */
export const pumpSetTubes = (part: Sump, at: Place): Tube[] =>
  pumpPlaces(part).map((pump): Tube => {
    const path = [pump, { ...pump, z: at.z }, at]
    return { role: 'pump-pipe', stock: part.discharge, path, lengthMm: pathLength(path) * SLACK }
  })
