import { pathLength } from '../../geometry/path'
import { offset } from '../../geometry/motion'
import type { Place, Point } from '../../geometry/point'
import type { Fitting, Tube } from '../../model/built'
import { inches } from '../../units/length'
import { onPipe, times } from '../onPipe'
import type { Sump } from './schema'
import { bottomOf } from './shape'

/** Middle to middle of two pumps side by side. Common practice, no source. */
const PUMP_SPACING_MM = inches(12)

/** Poly pipe grows and creeps, and is never cut to the last inch. Common practice, no source. */
const SLACK = 1.01

/** The pumps stand at the end that the heading points to, on the bottom, as far from that wall as from the two beside it. */
export const dischargePlace = (part: Sump): Point => {
  const { at, heading, lengthMm, widthMm } = bottomOf(part)
  return offset(at, heading, Math.max(0, (lengthMm - widthMm) / 2), 0)
}

/** Each pump, side by side across the pit, drawn together where it is too narrow. */
const pumpPlaces = (part: Sump): Place[] => {
  const middle = dischargePlace(part)
  const spacingMm = Math.min(PUMP_SPACING_MM, bottomOf(part).widthMm / (part.pumps + 1))
  return Array.from({ length: part.pumps }, (_, k) => ({
    ...offset(middle, part.heading, 0, (k - (part.pumps - 1) / 2) * spacingMm),
    z: part.pumpOffMm,
  }))
}

/** Between pump and filter two clamps hold each barb. */
const inPit = (noun: string, part: Sump, at: Place): Fitting[] => onPipe(noun, part.discharge, at, true)

/** A threaded thing in the size of the discharge pipe. */
const threaded = (count: number, noun: string, { discharge }: Sump, at: Place): Fitting[] =>
  times(count, `${noun}-${discharge}`, at)

/**
 * Each pump with what it has of its own: a union on either side of its check valve, so that both come out. All have
 * threads inside alone: a nipple joins each to the next.
 */
const pumpFittings = (part: Sump, pump: Place): Fitting[] => [
  { item: `pump-${part.pump}`, at: pump },
  ...times(part.strainer ? 1 : 0, 'foot-strainer', pump),
  ...threaded(part.checkValve ? 1 : 0, 'check-valve', part, pump),
  ...threaded(part.checkValve ? 2 : 1, 'union', part, pump),
  ...threaded(part.checkValve ? 3 : 1, 'nipple', part, pump),
  ...inPit('adapter', part, pump),
]

const FILTERS: Readonly<Record<Sump['filter'], number>> = { none: 0, one: 1, 'two-in-parallel': 2 }

/** A filter between two unions, with a sight tube on either side that shows when it wants cleaning. */
const filterFittings = (part: Sump, at: Place): Fitting[] => [
  ...threaded(1, 'filter', part, at),
  ...threaded(2, 'union', part, at),
  ...threaded(2, 'nipple', part, at),
  ...times(2, 'sight-tube', at),
  ...['adapter', 'adapter', 'sight-tube-tee', 'sight-tube-tee'].flatMap((noun) => inPit(noun, part, at)),
]

/** Two filters have a tee at either end, and each two valves so that it can be cleaned alone. */
const filtersFittings = (part: Sump, at: Place): Fitting[] => {
  const filters = FILTERS[part.filter]
  const isPair = filters === 2
  return [
    ...Array.from({ length: filters }, () => filterFittings(part, at)).flat(),
    ...['ball-valve', 'nipple'].flatMap((noun) => threaded(isPair ? 4 : 0, noun, part, at)),
    ...(isPair ? ['tee', 'tee'].flatMap((noun) => inPit(noun, part, at)) : []),
  ]
}

const bypassFittings = (part: Sump, at: Place): Fitting[] =>
  part.bypassShare > 0
    ? [...inPit('tee', part, at), ...inPit('adapter', part, at), ...threaded(1, 'bypass-valve', part, at)]
    : []

/** Where several pumps come together: a tee for each but the last, which turns into the pipe. */
const headerFittings = (part: Sump, at: Place): Fitting[] =>
  part.pumps > 1
    ? [
        ...Array.from({ length: part.pumps - 1 }, () => inPit('tee', part, at)).flat(),
        ...inPit('elbow', part, at),
      ]
    : []

/** Strainer, pump, union, check valve, union, tee to the bypass, filter; from the pumps to where the discharge leaves the pit. */
export const pumpSetFittings = (part: Sump, at: Place): Fitting[] => {
  const pumps = pumpPlaces(part)
  if (pumps.length === 0) return []
  return [
    ...pumps.flatMap((pump) => pumpFittings(part, pump)),
    ...headerFittings(part, at),
    ...bypassFittings(part, at),
    ...filtersFittings(part, at),
  ]
}

/** From each pump up, and across to where the discharge leaves the pit. */
export const pumpSetTubes = (part: Sump, at: Place): Tube[] =>
  pumpPlaces(part).map((pump): Tube => {
    const path = [pump, { ...pump, z: at.z }, at]
    return { role: 'pump-pipe', stock: part.discharge, path, lengthMm: pathLength(path) * SLACK }
  })
