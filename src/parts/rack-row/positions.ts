import { inches } from '../../units/length'
import { rowLengthMm } from './frame'
import { endInset, sharesPairs } from './joints'
import type { Materials } from './materials'
import { pairPlaces, rackSpans, type PairPlace, type RackSpan } from './pairPlaces'
import type { RackRow } from './schema'

/** Where things stand along and across the row; u and v in mm. */
export interface Positions {
  readonly lengthMm: number
  readonly pitchMm: number
  /** Hanger bars, station by station. */
  readonly barU: readonly number[]
  readonly lineV: readonly number[]
  /** How far the ends of the row stand in from its first and last rack line, so that end rails stay whole. */
  readonly insetMm: number
  readonly pairs: readonly PairPlace[]
  readonly pairU: readonly number[]
  readonly gutterFromU: number
  readonly gutterToU: number
  readonly outletU: number
  /** Where gutters rest. */
  readonly bearerU: readonly number[]
}

/** Plastic gutter is borne this often, before bearers make way for riser pairs. Common practice, no source. */
const BEARER_SPACING_MM = inches(24)

/** A bearer's middle keeps so far from a riser pair's: half a flat 2x4, half a riser, and a finger. Common practice, no source. */
const BEARER_TO_PAIR_MM = inches(2.75)

/** And so far from an outlet's: half a flat 2x4 and half an outlet's flange. Common practice, no source. */
const BEARER_TO_OUTLET_MM = inches(3.5)

/** The high end of a gutter stands so far uphill of the first station: half a tower and the splash. Common practice, no source. */
const GUTTER_BEFORE_BAR_MM = inches(4)

/** A length that is whole bays but for the rounding of the machine asks for no further bearer. */
const ROUNDING = 1e-9

const steps = (count: number, at: (index: number) => number): number[] =>
  Array.from({ length: count }, (_, index) => at(index))

/** Downhill of all pairs that are in the way; uphill of them where that would be past the last one, where no runner goes. */
const clearOf = (u: number, pairU: readonly number[]): number => {
  const isNear = (pair: number, at: number) => Math.abs(pair - at) < BEARER_TO_PAIR_MM
  const down = pairU.reduce((at, pair) => (isNear(pair, at) ? pair + BEARER_TO_PAIR_MM : at), u)
  return down <= (pairU.at(-1) ?? down)
    ? down
    : pairU.reduceRight((at, pair) => (isNear(pair, at) ? pair - BEARER_TO_PAIR_MM : at), u)
}

const clearOfOutlet = (u: number, outletU: number): number =>
  Math.abs(u - outletU) < BEARER_TO_OUTLET_MM ? outletU - BEARER_TO_OUTLET_MM : u

/** Two bearers nearer than this, mm, are one. */
const APART_MM = 1

/** Evenly along a stretch as far as its runners reach, and off what is shunned. */
const bearersIn = (fromU: number, toU: number, shunnedU: readonly number[], outletU: number): number[] => {
  const bays = Math.ceil((toU - fromU) / BEARER_SPACING_MM - ROUNDING)
  const [firstU = fromU, lastU = toU] = [shunnedU[0], shunnedU.at(-1)]
  const bearers = steps(bays + 1, (index) => {
    const u = Math.min(Math.max(fromU + (index * (toU - fromU)) / bays, firstU), lastU)
    return clearOf(clearOfOutlet(u, outletU), shunnedU)
  })
  return bearers.filter((u, index) => index === 0 || u - (bearers[index - 1] ?? 0) > APART_MM)
}

/** Along the whole row; racks that come apart bear their own stretch of the gutters to both their ends. */
const bearersAlong = (part: RackRow, shunnedU: readonly number[], outletU: number): number[] => {
  if (sharesPairs(part)) return bearersIn(0, rowLengthMm(part), shunnedU, outletU)
  return steps(part.racks, (rack) => rack * part.rackLengthMm).flatMap((fromU) => {
    const toU = fromU + part.rackLengthMm
    const within = shunnedU.filter((u) => u >= fromU && u <= toU)
    return bearersIn(fromU, toU, within, outletU)
  })
}

/**
 * What bearers keep off: riser pairs, the ends of the runners where pairs are moved in from them, and the joints of the
 * runners between racks that come apart. From the high end down.
 */
const shunnedAlong = (part: RackRow, insetMm: number, pairU: readonly number[]): number[] => {
  const lengthMm = rowLengthMm(part)
  const lines = sharesPairs(part) ? [] : steps(part.racks - 1, (rack) => (rack + 1) * part.rackLengthMm)
  return [insetMm, lengthMm - insetMm, ...pairU, ...lines].toSorted((a, b) => a - b)
}

/** From an outlet's middle to a riser pair's: half a trench, half a foot plate and a hand. Common practice, no source. */
const OUTLET_TO_PAIR_MM = inches(12)

/**
 * The outlet stands in the middle of the last riser bay, so that the drain's trench passes between foot plates; with an even
 * number of bars a bay that is also midway between two stations. Where the last pair is moved in far enough it stands past
 * it, so that little water stays behind.
 */
const outletAlong = (part: RackRow, { fromU, toU }: RackSpan): number => {
  const pastMm = rowLengthMm(part) - toU
  return pastMm >= 2 * OUTLET_TO_PAIR_MM ? toU + pastMm / 2 : toU - (toU - fromU) / (part.midPairs + 1) / 2
}

/** What carries the gutters: bearers on long runners, or whatever stands or hangs at each pair. */
const hasBearersAlong = ({ base, carriedBy }: RackRow): boolean =>
  base === 'long-runners' && carriedBy === 'floor'

/** Stations run unbroken through every rack joint, whatever lies between the risers there: hooks, tubes and gutters are then alike all over the row. */
export const positionsOf = (part: RackRow, materials: Materials): Positions => {
  const { rackLengthMm, barsPerRack, lines, lineSpacingMm } = part
  const lengthMm = rowLengthMm(part)
  const pitchMm = rackLengthMm / barsPerRack
  const insetMm = endInset(part, materials)
  const spans = rackSpans(part, materials)
  const pairs = pairPlaces(part, spans, insetMm)
  const pairU = pairs.map(({ u }) => u)
  const gutterFromU = pitchMm / 2 - GUTTER_BEFORE_BAR_MM
  const outletU = outletAlong(part, spans.at(-1) ?? { fromU: 0, toU: lengthMm })
  return {
    lengthMm,
    pitchMm,
    barU: steps(part.racks * barsPerRack, (index) => (index + 0.5) * pitchMm),
    lineV: steps(lines, (index) => (index + 1 - (lines + 1) / 2) * lineSpacingMm),
    insetMm,
    pairs,
    pairU,
    gutterFromU,
    gutterToU: gutterFromU + lengthMm,
    outletU,
    bearerU: hasBearersAlong(part) ? bearersAlong(part, shunnedAlong(part, insetMm, pairU), outletU) : pairU,
  }
}
