import type { CuttingProblem, Piece, PieceRule } from '../../../src/solvers/cutting/problem'

/** Ticks of an inch by the definition of the inch: 25.4 mm of 320 ticks. */
export const inch = (inches: number): number => Math.round(inches * 25.4 * 320)

export const exact: PieceRule = { kind: 'exact' }
export const equalParts = (parts: number, stockIn: number): PieceRule => ({
  kind: 'equal-parts',
  parts,
  stockTicks: inch(stockIn),
})
export const uncut = (stockIn: number): PieceRule => ({ kind: 'uncut', stockTicks: inch(stockIn) })

/** Pieces as a saw list has them: how many, how long in inches. */
export const pieces = (count: number, lengthIn: number, rule: PieceRule = exact, minusIn = 0): Piece => ({
  lengthTicks: inch(lengthIn),
  count,
  minusTicks: inch(minusIn),
  rule,
})

/** Stock lengths, kerf and end trim in inches; the saw takes 1/8 in unless told otherwise. */
export const cutFrom = (
  stocksIn: readonly number[],
  wanted: readonly Piece[],
  { kerf = 1 / 8, trim = 0 } = {},
): CuttingProblem => ({
  pieces: wanted,
  stocks: stocksIn.map((stockIn) => ({ lengthTicks: inch(stockIn) })),
  saw: { kerfTicks: inch(kerf), trimTicks: inch(trim) },
})

/** Lumber of the sample bay: 480 towers in three rows of 3 + 2 racks (worked example of the trade notes). */
export const risers = (rule: PieceRule, bays = 1) => pieces(132 * bays, 71.9375, rule)
export const crossPieces = (bays = 1) => pieces(177 * bays, 43.5)
export const endRunners = (bays = 1) => pieces(18 * bays, 119.0625)
export const runners = (bays = 1) => pieces(12 * bays, 118.625)
export const splices = (bays = 1) => pieces(18 * bays, 16)
export const bearers = (rule: PieceRule, bays = 1) => pieces(81 * bays, 59.9375, rule)

/** Every piece of the sample bay, `bays` times over, risers and bearers halved. */
export const sampleLumber = (bays = 1): Piece[] => [
  risers(equalParts(2, 144), bays),
  crossPieces(bays),
  endRunners(bays),
  runners(bays),
  splices(bays),
  bearers(equalParts(2, 120), bays),
]
