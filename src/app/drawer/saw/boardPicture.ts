import type { Board } from '../../../model/cutList'
import type { Saw } from '../../../solvers/cutting/problem'
import { fromTicks } from '../../../units/length'
import { cutsOf } from '../../../sheets/saw/boardCuts'

/** A stretch of a board from its first end, mm. */
interface Stretch {
  readonly fromMm: number
  readonly toMm: number
}

export interface PieceOnBoard extends Stretch {
  readonly lengthMm: number
  readonly marks: readonly string[]
}

/** A board to scale: what is squared off, the pieces in cutting order, what the saw eats between them, what is left. */
export interface BoardPicture {
  readonly lengthMm: number
  readonly trim: Stretch | undefined
  readonly kerfs: readonly Stretch[]
  readonly pieces: readonly PieceOnBoard[]
  readonly offcut: Stretch | undefined
}

/** The pieces of a board one by one. A board's lengths stand in the order of its stops. */
const onePerCut = (pieces: Board['pieces']) =>
  pieces.flatMap(({ lengthMm, marks, count }) => Array.from({ length: count }, () => ({ lengthMm, marks })))

export const boardPicture = (board: Board, saw: Saw): BoardPicture => {
  const [kerfMm, lengthMm] = [fromTicks(saw.kerfTicks), board.measuredMm]
  const isCut = cutsOf(board, saw) > 0
  const trimMm = isCut ? fromTicks(saw.trimTicks) : 0
  const kerfs: Stretch[] = []
  const pieces: PieceOnBoard[] = []
  let at = trimMm
  const cut = () => {
    const toMm = Math.min(lengthMm, at + kerfMm)
    if (toMm > at) kerfs.push({ fromMm: at, toMm })
    at = toMm
  }
  if (trimMm > 0) cut()
  for (const piece of onePerCut(board.pieces)) {
    pieces.push({ ...piece, fromMm: at, toMm: at + piece.lengthMm })
    at += piece.lengthMm
    cut()
  }
  return {
    lengthMm,
    trim: trimMm > 0 ? { fromMm: 0, toMm: trimMm } : undefined,
    kerfs,
    pieces,
    offcut: board.offcutMm > 0 ? { fromMm: lengthMm - board.offcutMm, toMm: lengthMm } : undefined,
  }
}
