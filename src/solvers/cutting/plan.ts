import { roomOf } from './problem'
import type { Saw } from './problem'

/** Like pieces on one board. */
export interface Cut {
  /** Index of the piece in the problem. */
  readonly piece: number
  /** As it is to be cut: at most the piece's tolerance under its length. */
  readonly lengthTicks: number
  /** On each board. */
  readonly count: number
}

/** Boards cut alike. */
export interface CutBoard {
  readonly stockTicks: number
  readonly count: number
  /** In the order of cutting, longest first. */
  readonly cuts: readonly Cut[]
  /** What is left after the last cut; a sliver that the saw eats is nothing. */
  readonly offcutTicks: number
}

/** Pieces that no board on offer makes. */
export interface TooLong {
  readonly piece: number
  readonly count: number
}

export interface CuttingPlan {
  /** Longest stock first, then by their pieces, longest first. */
  readonly boards: readonly CutBoard[]
  /** Longest first. */
  readonly bought: readonly { readonly stockTicks: number; readonly count: number }[]
  readonly boughtTicks: number
  readonly boardCount: number
  readonly tooLong: readonly TooLong[]
}

const total = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((sum, thing) => sum + of(thing), 0)

/** Ticks that a board's pieces take with a kerf each, to hold against `roomOf`. */
export const takenOf = (cuts: readonly Cut[], { kerfTicks }: Saw): number =>
  total(cuts, (cut) => cut.count * (cut.lengthTicks + kerfTicks))

export const cutBoard = (stockTicks: number, count: number, cuts: readonly Cut[], saw: Saw): CutBoard => ({
  stockTicks,
  count,
  cuts,
  offcutTicks: Math.max(0, roomOf(stockTicks, saw) - takenOf(cuts, saw) - saw.kerfTicks),
})

export const boughtTicksOf = (boards: readonly CutBoard[]): number =>
  total(boards, (board) => board.count * board.stockTicks)

export const boardCountOf = (boards: readonly CutBoard[]): number => total(boards, (board) => board.count)

/** Less length bought; of the same length, fewer boards to carry and to set up. */
export const isCheaper = (these: readonly CutBoard[], those: readonly CutBoard[]): boolean => {
  const saved = boughtTicksOf(those) - boughtTicksOf(these)
  return saved > 0 || (saved === 0 && boardCountOf(these) < boardCountOf(those))
}

const patternOf = ({ stockTicks, cuts }: CutBoard): string =>
  `${stockTicks}:${cuts.map((cut) => `${cut.piece}*${cut.count}@${cut.lengthTicks}`).join(',')}`

const mergeLike = (boards: readonly CutBoard[]): CutBoard[] => {
  const merged = new Map<string, CutBoard>()
  for (const board of boards) {
    const pattern = patternOf(board)
    merged.set(pattern, { ...board, count: board.count + (merged.get(pattern)?.count ?? 0) })
  }
  return [...merged.values()]
}

/** Which comes first at the saw: the longer stock, then the board whose pieces are longer. */
const bySaw = (a: CutBoard, b: CutBoard): number => {
  if (a.stockTicks !== b.stockTicks) return b.stockTicks - a.stockTicks
  const differs = a.cuts.findIndex((cut, i) => cut.lengthTicks !== b.cuts[i]?.lengthTicks)
  return (b.cuts[differs]?.lengthTicks ?? 0) - (a.cuts[differs]?.lengthTicks ?? 0)
}

const boughtOf = (boards: readonly CutBoard[]): CuttingPlan['bought'] => {
  const counts = new Map<number, number>()
  for (const { stockTicks, count } of boards) counts.set(stockTicks, count + (counts.get(stockTicks) ?? 0))
  return [...counts].map(([stockTicks, count]) => ({ stockTicks, count }))
}

/** Boards gathered into a plan: like boards merged, in the order of the saw, with what has to be bought. */
export const planOf = (boards: readonly CutBoard[], tooLong: readonly TooLong[]): CuttingPlan => {
  const sorted = mergeLike(boards).sort(bySaw)
  return {
    boards: sorted,
    bought: boughtOf(sorted),
    boughtTicks: boughtTicksOf(sorted),
    boardCount: boardCountOf(sorted),
    tooLong,
  }
}
