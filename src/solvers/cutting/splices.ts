import { offersOf } from './offers'
import type { CuttingProblem, Piece, Splice } from './problem'

/** The pieces of one run, longest first, and the joints between them. */
export interface JoinedRun {
  readonly pieces: readonly { readonly lengthTicks: number; readonly count: number }[]
  readonly joints: number
}

/**
 * So many pieces that add up to a sum, each from `least` to `longest`: as many of the longest as go, one that takes what is left, and
 * others as short as they may be.
 */
const shares = (sum: number, count: number, least: number, longest: number): JoinedRun['pieces'] => {
  const spare = sum - count * least
  const span = Math.max(1, longest - least)
  const whole = Math.min(count, Math.floor(spare / span))
  const rest = spare - whole * span
  return [
    { lengthTicks: longest, count: whole },
    { lengthTicks: least + rest, count: whole < count ? 1 : 0 },
    { lengthTicks: least, count: Math.max(0, count - whole - 1) },
  ].filter((each) => each.count > 0)
}

/**
 * A run in pieces of at most `longestTicks`, with the fewest joints that there can be, and of these with the most whole lengths. The
 * lengths of the pieces and the gaps of the joints add up to the run exactly. Undefined where no pieces do: each would be shorter than
 * a joint holds, or a joint takes as much as a piece gives.
 */
export const joinRun = (
  runTicks: number,
  longestTicks: number,
  { gapTicks, leastTicks }: Splice,
): JoinedRun | undefined => {
  if (runTicks <= longestTicks) return { pieces: [{ lengthTicks: runTicks, count: 1 }], joints: 0 }
  const reach = longestTicks + gapTicks
  if (reach <= 0 || leastTicks > longestTicks) return undefined
  // n pieces and n - 1 joints reach at most n (longest + gap) - gap.
  const count = Math.ceil((runTicks + gapTicks) / reach)
  const sum = runTicks - (count - 1) * gapTicks
  if (sum < count * leastTicks) return undefined
  return { pieces: shares(sum, count, leastTicks, longestTicks), joints: count - 1 }
}

export interface JoinedProblem {
  readonly problem: CuttingProblem
  /** For each piece of this problem, the piece of the one asked that it is of. */
  readonly of: readonly number[]
  /** Joints of all runs of each piece of the problem asked, by its index. */
  readonly joints: readonly number[]
}

/** The longest piece that boards give of which there is no end; where all are few, that any gives. */
const longestPiece = (problem: CuttingProblem): number => {
  const offers = offersOf(problem)
  const endless = offers.filter(({ most }) => most === Infinity)
  const rooms = (endless.length > 0 ? endless : offers).map(({ roomTicks }) => roomTicks)
  return Math.max(0, ...rooms) - problem.saw.kerfTicks
}

const piecesOf = (piece: Piece, run: JoinedRun, longest: number): Piece[] =>
  run.pieces.map(({ lengthTicks, count }) => ({
    lengthTicks,
    count: count * piece.count,
    // Only what is cut to fit may be cut short; whole lengths are as they come.
    minusTicks: lengthTicks < longest ? Math.min(piece.minusTicks, lengthTicks - 1) : 0,
    rule: { kind: 'exact' },
  }))

/**
 * The problem with every run that may be joined, and that is longer than any board, as its pieces, which are then cut like others.
 * All other pieces stay as they are, so what may not be joined is told too long by its plan.
 */
export const joinRuns = (problem: CuttingProblem): JoinedProblem => {
  const longest = longestPiece(problem)
  const pieces: Piece[] = []
  const of: number[] = []
  const joints: number[] = []
  for (const [index, piece] of problem.pieces.entries()) {
    const { mayJoin, lengthTicks, minusTicks, count } = piece
    const isLong = mayJoin !== undefined && longest > 0 && lengthTicks - minusTicks > longest
    const run = isLong ? joinRun(lengthTicks, longest, mayJoin) : undefined
    const made = run === undefined ? [piece] : piecesOf(piece, run, longest)
    pieces.push(...made)
    of.push(...made.map(() => index))
    joints.push((run?.joints ?? 0) * count)
  }
  return { problem: { ...problem, pieces }, of, joints }
}
