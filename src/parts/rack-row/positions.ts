import { inches } from '../../units/length'
import { rowLengthMm } from './frame'
import { endInset } from './joints'
import type { Materials } from './materials'
import type { RackRow } from './schema'

/** Where things stand along and across the row; u and v in mm. */
export interface Positions {
  readonly lengthMm: number
  readonly pitchMm: number
  /** Hanger bars, station by station. */
  readonly barU: readonly number[]
  readonly lineV: readonly number[]
  readonly insetMm: number
  readonly pairU: readonly number[]
  /** Riser pairs from one rack line to the next. */
  readonly pairsARack: number
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

const pairsAlong = (part: RackRow, insetMm: number): number[] => {
  const lengthMm = rowLengthMm(part)
  const baysARack = part.midPairs + 1
  const bays = part.racks * baysARack
  return steps(bays + 1, (index) =>
    Math.min(Math.max((index * part.rackLengthMm) / baysARack, insetMm), lengthMm - insetMm),
  )
}

/** Downhill of a pair that is in the way; uphill of the last one, past which no runner goes. */
const clearOfPairs = (u: number, pairU: readonly number[]): number => {
  const index = pairU.findIndex((pair) => Math.abs(pair - u) < BEARER_TO_PAIR_MM)
  const pair = pairU[index]
  if (pair === undefined) return u
  return index === pairU.length - 1 ? pair - BEARER_TO_PAIR_MM : pair + BEARER_TO_PAIR_MM
}

const clearOfOutlet = (u: number, outletU: number): number =>
  Math.abs(u - outletU) < BEARER_TO_OUTLET_MM ? outletU - BEARER_TO_OUTLET_MM : u

const bearersAlong = (lengthMm: number, pairU: readonly number[], outletU: number): number[] => {
  const bays = Math.ceil(lengthMm / BEARER_SPACING_MM - ROUNDING)
  return steps(bays + 1, (index) => clearOfPairs(clearOfOutlet((index * lengthMm) / bays, outletU), pairU))
}

/**
 * Stations run unbroken through every rack joint. The outlet stands in the middle of the last riser bay, so that the
 * drain's trench passes between foot plates; with an even number of bars a bay that is also midway between two stations.
 */
export const positionsOf = (part: RackRow, materials: Materials): Positions => {
  const { rackLengthMm, barsPerRack, lines, lineSpacingMm, midPairs } = part
  const lengthMm = rowLengthMm(part)
  const pitchMm = rackLengthMm / barsPerRack
  const insetMm = endInset(part, materials)
  const pairU = pairsAlong(part, insetMm)
  const gutterFromU = pitchMm / 2 - GUTTER_BEFORE_BAR_MM
  const outletU = lengthMm - rackLengthMm / (midPairs + 1) / 2
  return {
    lengthMm,
    pitchMm,
    barU: steps(part.racks * barsPerRack, (index) => (index + 0.5) * pitchMm),
    lineV: steps(lines, (index) => (index + 1 - (lines + 1) / 2) * lineSpacingMm),
    insetMm,
    pairU,
    pairsARack: midPairs + 1,
    gutterFromU,
    gutterToU: gutterFromU + lengthMm,
    outletU,
    bearerU: part.base === 'short-runners' ? pairU : bearersAlong(lengthMm, pairU, outletU),
  }
}
