import type { Board, CutLine } from '../../model/cutList'
import { leastOf, roomOf, type CuttingProblem, type Saw } from '../../solvers/cutting/problem'
import { fromTicks, toTicks } from '../../units/length'

/** How a board is cut: not at all, on marks that part it equally, or piece by piece against the stop. */
export type BoardCut =
  | { readonly kind: 'whole' }
  | { readonly kind: 'equal-parts'; readonly parts: number; readonly leastMm: number }
  | { readonly kind: 'stops'; readonly stopsMm: readonly number[] }

/** A tick here or there is the rounding of mates. */
const isSame = (aMm: number, bMm: number): boolean => Math.abs(toTicks(aMm) - toTicks(bMm)) <= 1

/** Pieces and their rules as a list has them, index by index. */
export interface RuledPieces {
  readonly pieces: readonly CutLine[]
  readonly problem: CuttingProblem
}

/** The equal parts that a board is cut in, where it is a whole board of one rule that is kept to. */
const matesOf = (board: Board, { pieces, problem }: RuledPieces): BoardCut | undefined => {
  const [piece, ...others] = board.pieces
  if (!piece || others.length > 0 || board.isLeftover || board.offcutMm > 0) return undefined
  const index = pieces.findIndex(
    ({ cut }, i) =>
      cut.kind === 'equal-parts' &&
      cut.parts === piece.count &&
      isSame(cut.stockMm, board.stockMm) &&
      toTicks(piece.lengthMm) + 1 >=
        leastOf(problem.pieces[i] ?? { lengthTicks: 0, minusTicks: 0, count: 0, rule: { kind: 'exact' } }),
  )
  const asked = problem.pieces[index]
  return asked && { kind: 'equal-parts', parts: piece.count, leastMm: fromTicks(leastOf(asked)) }
}

const isWhole = ({ pieces, measuredMm }: Board): boolean =>
  pieces.length === 1 && pieces[0]?.count === 1 && isSame(pieces[0].lengthMm, measuredMm)

export const boardCut = (board: Board, list: RuledPieces): BoardCut => {
  if (isWhole(board)) return { kind: 'whole' }
  const stopsMm = [...new Set(board.pieces.map(({ lengthMm }) => lengthMm))]
  return matesOf(board, list) ?? { kind: 'stops', stopsMm }
}

/** How many cuts a board takes: one a piece and one to square its end, but none after a last piece that ends with the board. */
export const cutsOf = (board: Board, saw: Saw): number => {
  if (isWhole(board)) return 0
  const count = board.pieces.reduce((sum, piece) => sum + piece.count, 0)
  const takenTicks = board.pieces.reduce(
    (sum, piece) => sum + piece.count * (toTicks(piece.lengthMm) + saw.kerfTicks),
    0,
  )
  // The room is counted a kerf longer than the board, so what is left of it beside a kerf is still to be parted from.
  const endsWithBoard = roomOf(toTicks(board.measuredMm), saw) - takenTicks <= 1
  return count - (endsWithBoard ? 1 : 0) + (saw.trimTicks > 0 ? 1 : 0)
}
