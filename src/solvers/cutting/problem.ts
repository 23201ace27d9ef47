/**
 * A cutting problem. All lengths are whole ticks (1/320 mm), so that sums of kerfs and pieces never drift and two
 * pieces that just fit on a board just fit here.
 */
export interface CuttingProblem {
  readonly pieces: readonly Piece[]
  readonly stocks: readonly Stock[]
  readonly saw: Saw
}

export interface Piece {
  readonly lengthTicks: number
  readonly count: number
  /** How much shorter the crew may cut it. */
  readonly minusTicks: number
  /**
   * How much longer it may be where a whole stick does as it comes: one between the shortest that the crew may cut and this is used
   * with no cut and no end trim. A board is never cut long on purpose. Undefined: the piece is cut, and its ends are square.
   */
  readonly plusTicks?: number
  /** How it may be joined of shorter pieces where no board is as long (`joinRuns` in splices.ts). Undefined: it is one piece. */
  readonly mayJoin?: Splice
  readonly rule: PieceRule
}

/** A joint of a run: a gutter's joiner, a coupling, a bell, a splice plate. */
export interface Splice {
  /** What a joint adds to the run between the ends of its pieces; less than nothing where these go into each other or lap. */
  readonly gapTicks: number
  /** No piece of a run is shorter: a stub holds no joint. At least 1. */
  readonly leastTicks: number
}

export type PieceRule =
  | { readonly kind: 'exact' }
  /** A whole board of this stock in `parts` equal mates. */
  | { readonly kind: 'equal-parts'; readonly parts: number; readonly stockTicks: number }
  /** A whole board of this stock as it comes. */
  | { readonly kind: 'uncut'; readonly stockTicks: number }

/** Boards of one length and one price: a length on offer at the yard, or leftovers on hand. */
export interface Stock {
  /** What a tape finds, which may be more than the length that it is sold by. */
  readonly lengthTicks: number
  /**
   * What one costs, a whole number of at least 0 in one unit for all stocks of the problem: cents, or ticks of length
   * where a price is missing. Leftovers cost 0. Undefined: its length in ticks.
   */
  readonly cost?: number
  /** How many there are; undefined for as many as wanted. */
  readonly most?: number
}

/** What one board of a stock adds to the cost of a plan. */
export const costOf = ({ cost, lengthTicks }: Stock): number => cost ?? lengthTicks

export interface Saw {
  /** What each cut turns to dust. */
  readonly kerfTicks: number
  /**
   * What is squared off the first end of each board that is cut; the trim is a cut of its own, so a trimmed board
   * loses `trimTicks` and one kerf. 0: the boards come square.
   */
  readonly trimTicks: number
}

/**
 * How far a mate may be short of its length: n mates share a board whose ticks n need not divide, so the last is
 * marked a tick from the others.
 */
const MATE_TICKS = 1

/** What is left of a board once its end is square; nothing of one that the trim eats. */
const squared = (stockTicks: number, { kerfTicks, trimTicks }: Saw): number =>
  trimTicks > 0 ? Math.max(0, stockTicks - trimTicks - kerfTicks) : stockTicks

/**
 * Length that a board offers, counted so that every piece takes its length and one kerf: n pieces need n - 1 kerfs
 * when the last offcut is nothing, so the board is one kerf longer than it is. A piece that leaves a sliver thinner
 * than the kerf is cut all the same; the saw eats the sliver.
 */
export const roomOf = (stockTicks: number, saw: Saw): number => squared(stockTicks, saw) + saw.kerfTicks

/** The shortest that a piece may be cut. */
export const leastOf = ({ lengthTicks, minusTicks }: Piece): number => Math.max(1, lengthTicks - minusTicks)

/** Length of each of the equal mates of a board, in whole ticks. */
export const mateOf = (stockTicks: number, parts: number, saw: Saw): number =>
  Math.floor((roomOf(stockTicks, saw) - parts * saw.kerfTicks) / parts)

/**
 * Whether a board of the rule's own stock makes the piece. Where it can't (the stock is not on offer, or an end trim
 * leaves the mates too short) the piece is cut like any other.
 */
export const canKeepRule = (piece: Piece, { stocks, saw }: CuttingProblem): boolean => {
  const { rule } = piece
  if (rule.kind === 'exact') return false
  if (!stocks.some(({ lengthTicks, most }) => lengthTicks === rule.stockTicks && most !== 0)) return false
  if (rule.kind === 'uncut') return rule.stockTicks >= leastOf(piece)
  const mate = mateOf(rule.stockTicks, rule.parts, saw)
  return mate > 0 && mate + MATE_TICKS >= leastOf(piece)
}

/** Whether a whole stick is the piece as it comes. */
export const isAsItComes = (stockTicks: number, piece: Piece): boolean =>
  piece.plusTicks !== undefined &&
  stockTicks >= leastOf(piece) &&
  stockTicks <= piece.lengthTicks + piece.plusTicks

const requireTicks = (noun: string, ticks: number, least: number): void => {
  if (!Number.isSafeInteger(ticks) || ticks < least)
    throw new RangeError(`A ${noun} must be a whole number of at least ${least}, not ${ticks}.`)
}

/** Throws a RangeError where a number of the problem is not whole or is negative; nothing inside checks again. */
export const requireWhole = ({ pieces, stocks, saw }: CuttingProblem): void => {
  requireTicks('kerf in ticks', saw.kerfTicks, 0)
  requireTicks('end trim in ticks', saw.trimTicks, 0)
  for (const stock of stocks) {
    requireTicks('stock length in ticks', stock.lengthTicks, 1)
    requireTicks('cost of a stock', costOf(stock), 0)
    requireTicks('number of boards of a stock', stock.most ?? 0, 0)
  }
  for (const piece of pieces) {
    requireTicks('piece length in ticks', piece.lengthTicks, 1)
    requireTicks('piece count', piece.count, 0)
    requireTicks('piece tolerance in ticks', piece.minusTicks, 0)
    requireTicks('piece tolerance in ticks', piece.plusTicks ?? 0, 0)
    if (piece.mayJoin !== undefined) requireTicks('least piece of a run', piece.mayJoin.leastTicks, 1)
    if (piece.rule.kind === 'equal-parts') requireTicks('number of equal parts', piece.rule.parts, 1)
  }
}
