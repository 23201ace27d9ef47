import type { CutRule } from '../../model/built'
import type { StockLength } from '../../model/measuredStock'
import { fromTicks, inches } from '../../units/length'

/** Two lengths nearer than this are one stop setting: the file can tell them no further apart. */
const SAME_MM = fromTicks(1)

const isSame = (aMm: number, bMm: number): boolean => Math.abs(aMm - bMm) <= SAME_MM

/** What the tape shows at the saw. */
const SIXTEENTH_MM = inches(1 / 16)

/** A length that is whole sixteenths but for the rounding of the machine stays what it is. */
const ROUNDING = 1e-6

export const upToSixteenth = (lengthMm: number): number =>
  Math.ceil(lengthMm / SIXTEENTH_MM - ROUNDING) * SIXTEENTH_MM

export const downToSixteenth = (lengthMm: number): number =>
  Math.floor(lengthMm / SIXTEENTH_MM + ROUNDING) * SIXTEENTH_MM

/** Each of the two mates that come from one stick cut on its middle, mm. */
export const halfOf = (stockMm: number, kerfMm: number): number => (stockMm - kerfMm) / 2

/** How a piece is made from stock of these lengths: whole, as a half, or to the tape. The rule is of a stock by its name. */
export const cutOf = (lengthMm: number, stocks: readonly StockLength[], kerfMm: number): CutRule => {
  for (const { stockMm, measuredMm } of stocks) {
    if (isSame(lengthMm, measuredMm)) return { kind: 'uncut', stockMm }
    if (isSame(lengthMm, halfOf(measuredMm, kerfMm))) return { kind: 'equal-parts', parts: 2, stockMm }
  }
  return { kind: 'exact' }
}

/** Half of the shortest stick whose half reaches; undefined where none does. */
export const shortestHalf = (
  leastMm: number,
  stocks: readonly StockLength[],
  kerfMm: number,
): number | undefined => {
  const halves = stocks
    .map(({ measuredMm }) => halfOf(measuredMm, kerfMm))
    .filter((halfMm) => halfMm >= leastMm)
  return halves.length > 0 ? Math.min(...halves) : undefined
}

/** So much longer than it need be may a halved riser stand above its hole. Common practice, no source. */
const HALVED_OVER_MM = inches(1)

/** A riser of at least a length, mm: a half board where that wastes no more than an inch, else the next sixteenth. */
export const riserLength = (leastMm: number, stocks: readonly StockLength[], kerfMm: number): number => {
  const halfMm = shortestHalf(leastMm, stocks, kerfMm)
  return halfMm !== undefined && halfMm <= leastMm + HALVED_OVER_MM ? halfMm : upToSixteenth(leastMm)
}

export interface EqualPieces {
  readonly count: number
  readonly lengthMm: number
}

/**
 * A run of lumber in as few equal pieces as the longest board allows, each to the sixteenth below: what is
 * missing is a hair of gap at each joint, behind a splice plate.
 */
export const equalPieces = (runMm: number, longestMm: number): EqualPieces => {
  const count = Math.max(1, Math.ceil(runMm / longestMm - ROUNDING))
  return { count, lengthMm: downToSixteenth(runMm / count) }
}
