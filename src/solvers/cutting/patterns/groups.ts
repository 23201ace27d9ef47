import { finishBoard } from '../finish'
import { cutBoard } from '../plan'
import type { CutBoard, CuttingPlan } from '../plan'
import { canKeepRule, roomOf } from '../problem'
import type { CuttingProblem } from '../problem'

/** Boards of one stock that are cut alike: a pattern, and how many boards have it. */
export interface Group {
  /** Index of the stock in the problem. */
  readonly stock: number
  readonly times: number
  /** How many of each piece of the problem are on one board. */
  readonly counts: readonly number[]
}

/** What groups are measured with. */
export interface Measures {
  /** Of each piece of the problem, its length and one kerf; 0 of one that is on no board that may be cut otherwise. */
  readonly sizes: readonly number[]
  /** Of each stock, what a board offers. */
  readonly rooms: readonly number[]
}

/** Work that may still be spent, in steps of some nanoseconds: counted, not timed, so that the same list comes to the same plan. */
export interface Work {
  left: number
}

/** A plan taken apart: boards that stay as they are, and those whose pieces may change places. */
export interface Parted {
  readonly kept: readonly CutBoard[]
  readonly groups: readonly Group[]
  readonly measures: Measures
  /** How short each piece is planned; none is cut shorter for the sake of fewer patterns. */
  readonly lengths: readonly number[]
}

/** Whether a rule asks for the board, or a stick is used on it as it comes. */
const isSettled = ({ cuts }: CutBoard, problem: CuttingProblem): boolean =>
  cuts.some(({ piece: index, lengthTicks }) => {
    const piece = problem.pieces[index]
    return piece === undefined || lengthTicks > piece.lengthTicks || canKeepRule(piece, problem)
  })

const countsOf = ({ cuts }: CutBoard, pieces: number): number[] => {
  const counts = Array.from({ length: pieces }, () => 0)
  for (const { piece, count } of cuts) counts[piece] = (counts[piece] ?? 0) + count
  return counts
}

/** The shortest that each piece is on these boards; 0 where it is on none. */
const lengthsOn = (boards: readonly CutBoard[], pieces: number): number[] => {
  const lengths = Array.from({ length: pieces }, () => Infinity)
  for (const { cuts } of boards)
    for (const { piece, lengthTicks } of cuts) lengths[piece] = Math.min(lengths[piece] ?? 0, lengthTicks)
  return lengths.map((length) => (length < Infinity ? length : 0))
}

export const partedOf = ({ boards }: CuttingPlan, problem: CuttingProblem): Parted => {
  const { pieces, stocks, saw } = problem
  const kept = boards.filter((board) => isSettled(board, problem))
  const free = boards.filter((board) => !kept.includes(board))
  const lengths = lengthsOn(free, pieces.length)
  return {
    kept,
    groups: free.map((board) => ({
      stock: board.stock,
      times: board.count,
      counts: countsOf(board, pieces.length),
    })),
    measures: {
      sizes: lengths.map((length) => (length > 0 ? length + saw.kerfTicks : 0)),
      rooms: stocks.map(({ lengthTicks }) => roomOf(lengthTicks, saw)),
    },
    lengths,
  }
}

/** A group as it goes to the saw, longest piece first. */
export const boardOf = (
  { stock, times, counts }: Group,
  lengths: readonly number[],
  problem: CuttingProblem,
): CutBoard => {
  const cuts = counts
    .map((count, piece) => ({ piece, lengthTicks: lengths[piece] ?? 0, count }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.lengthTicks - a.lengthTicks)
  return finishBoard(cutBoard(stock, times, cuts, problem), problem)
}

/** Pieces of each kind that groups make. */
export const madeBy = (groups: readonly Group[], pieces: number): number[] => {
  const made = Array.from({ length: pieces }, () => 0)
  for (const { counts, times } of groups)
    for (const [piece, count] of counts.entries()) made[piece] = (made[piece] ?? 0) + times * count
  return made
}
