import { cutBoard, takenOf } from './plan'
import type { Cut, CutBoard } from './plan'
import { roomOf } from './problem'
import type { CuttingProblem } from './problem'

type OneCut = Omit<Cut, 'count'>

/** Cuts with one more, longest first. */
const withCut = (cuts: readonly Cut[], { piece, lengthTicks }: OneCut): Cut[] => {
  const at = cuts.findIndex((cut) => cut.piece === piece && cut.lengthTicks === lengthTicks)
  const cut = cuts[at]
  if (cut !== undefined) return cuts.with(at, { ...cut, count: cut.count + 1 })
  return [...cuts, { piece, lengthTicks, count: 1 }].sort((a, b) => b.lengthTicks - a.lengthTicks)
}

/** Boards with one more cut on the one that it fills best; undefined where none has room for it. */
const laidOn = (
  boards: readonly CutBoard[],
  cut: OneCut,
  problem: CuttingProblem,
): CutBoard[] | undefined => {
  const { saw } = problem
  const leftBy = (board: CutBoard): number =>
    roomOf(board.stockTicks, saw) - takenOf(board.cuts, saw) - cut.lengthTicks - saw.kerfTicks
  let at = -1
  let least = Infinity
  for (const [index, board] of boards.entries()) {
    const left = leftBy(board)
    if (left < 0 || left >= least) continue
    at = index
    least = left
  }
  const host = boards[at]
  if (host === undefined) return undefined
  const fuller = cutBoard(host.stock, 1, withCut(host.cuts, cut), problem)
  const others =
    host.count > 1 ? boards.with(at, { ...host, count: host.count - 1 }) : boards.toSpliced(at, 1)
  return [...others, fuller]
}

/** Boards without this single one, whose pieces go on the others; undefined where they don't. */
const without = (
  boards: readonly CutBoard[],
  board: CutBoard,
  problem: CuttingProblem,
): CutBoard[] | undefined => {
  let others: CutBoard[] | undefined = boards.filter((each) => each !== board)
  for (const cut of board.cuts)
    for (let i = 0; i < cut.count && others !== undefined; i += 1) others = laidOn(others, cut, problem)
  return others
}

const single = (board: CutBoard): CutBoard[] =>
  Array.from({ length: board.count }, () => ({ ...board, count: 1 }))

/**
 * Boards with as few as may be of those that can be spared: one after another is emptied onto what the others have to spare, the one
 * with the least on it first. So leftovers that save nothing stay where they are.
 */
export const emptied = (
  boards: readonly CutBoard[],
  canBeSpared: (board: CutBoard) => boolean,
  problem: CuttingProblem,
): readonly CutBoard[] => {
  const spared = boards
    .filter(canBeSpared)
    .sort((a, b) => takenOf(a.cuts, problem.saw) - takenOf(b.cuts, problem.saw))
    .flatMap(single)
  let kept: readonly CutBoard[] = [...boards.filter((board) => !canBeSpared(board)), ...spared]
  // One that can't be emptied now never can: the others only get fuller. One that took a piece meanwhile is another board.
  for (const board of spared) if (kept.includes(board)) kept = without(kept, board, problem) ?? kept
  return kept
}
