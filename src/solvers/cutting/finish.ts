import { cutBoard, takenOf } from './plan'
import type { Cut, CutBoard } from './plan'
import { isAsItComes, roomOf } from './problem'
import type { CuttingProblem } from './problem'

/** A stick that one piece has for itself, where the piece may be as long as the stick. */
const asItComes = (board: CutBoard, { pieces }: CuttingProblem): CutBoard | undefined => {
  const [cut, ...others] = board.cuts
  const piece = cut === undefined ? undefined : pieces[cut.piece]
  if (cut?.count !== 1 || others.length > 0 || piece === undefined) return undefined
  if (!isAsItComes(board.stockTicks, piece)) return undefined
  return { ...board, cuts: [{ ...cut, lengthTicks: board.stockTicks }], offcutTicks: 0 }
}

/** What a board has to spare goes back to pieces that were planned short, longest first, like pieces alike. */
const shareBack = (board: CutBoard, { pieces, stocks, saw }: CuttingProblem): CutBoard => {
  let spare = roomOf(board.stockTicks, saw) - takenOf(board.cuts, saw)
  const cuts = board.cuts.map((cut): Cut => {
    const short = (pieces[cut.piece]?.lengthTicks ?? 0) - cut.lengthTicks
    const growth = Math.max(0, Math.min(short, Math.floor(spare / cut.count)))
    spare -= growth * cut.count
    return { ...cut, lengthTicks: cut.lengthTicks + growth }
  })
  return cutBoard(board.stock, board.count, cuts, { stocks, saw })
}

/**
 * A board as it goes to the saw: a stick that needs no cut is used as it comes, and pieces that were planned shorter than drawn get
 * what the board has to spare.
 */
export const finishBoard = (board: CutBoard, problem: CuttingProblem): CutBoard =>
  asItComes(board, problem) ?? shareBack(board, problem)
