import type { CuttingPlan } from '../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece } from '../../../src/solvers/cutting/problem'

/*
 * A second opinion that shares no code with the solver: it walks a saw down each board, cut by cut, and counts.
 */

/** What a saw leaves of a board after cutting these lengths off one after another; undefined where wood runs out. */
const sawAlong = (board: number, lengths: readonly number[], kerf: number): number | undefined => {
  let rest = board
  for (const length of lengths) {
    if (length > rest) return undefined
    rest -= length
    // A cut at the very end of the wood is none; a cut in a sliver eats the sliver.
    rest = Math.max(0, rest - kerf)
  }
  return rest
}

const wholeBoardOf = (piece: Piece | undefined, stock: number, count: number): boolean =>
  piece?.rule.kind === 'uncut' && piece.rule.stockTicks === stock && count === 1

const boardFaults = (board: CuttingPlan['boards'][number], problem: CuttingProblem): string[] => {
  const { kerfTicks, trimTicks } = problem.saw
  const uncut = wholeBoardOf(problem.pieces[board.cuts[0]?.piece ?? -1], board.stockTicks, board.cuts.length)
  const start = uncut || trimTicks === 0 ? board.stockTicks : board.stockTicks - trimTicks - kerfTicks
  const lengths = board.cuts.flatMap((cut) => Array.from({ length: cut.count }, () => cut.lengthTicks))
  const rest = sawAlong(start, lengths, kerfTicks)
  const faults: string[] = []
  if (rest === undefined) faults.push(`A ${board.stockTicks} board can't give ${lengths.join(' + ')}.`)
  else if (rest !== board.offcutTicks) faults.push(`Offcut is ${rest}, the plan says ${board.offcutTicks}.`)
  if (!problem.stocks.some((stock) => stock.lengthTicks === board.stockTicks))
    faults.push(`${board.stockTicks} is not on offer.`)
  if (board.count < 1 || lengths.length === 0) faults.push('An empty or absent board stands in the plan.')
  return faults
}

const pieceFaults = (piece: Piece, index: number, plan: CuttingPlan): string[] => {
  const cuts = plan.boards.flatMap((board) =>
    board.cuts
      .filter((cut) => cut.piece === index)
      .map((cut) => ({ length: cut.lengthTicks, made: cut.count * board.count })),
  )
  const apart = plan.unmade.filter((each) => each.piece === index).reduce((sum, each) => sum + each.count, 0)
  const made = cuts.reduce((sum, cut) => sum + cut.made, 0)
  const faults: string[] = []
  if (made + apart !== piece.count) faults.push(`Piece ${index}: ${made} made, ${piece.count} wanted.`)
  // A mate may be a tick short, and may be longer than it need be; others may not.
  const mate = piece.rule.kind === 'exact' ? 0 : 1
  const least = piece.lengthTicks - piece.minusTicks - mate
  const most = piece.rule.kind === 'exact' ? piece.lengthTicks : Infinity
  for (const { length } of cuts)
    if (length < least || length > most)
      faults.push(`Piece ${index} is cut ${length}, not ${piece.lengthTicks}.`)
  return faults
}

/** Everything wrong with a plan, in words; nothing where it can be sawn as it stands. */
export const faultsOf = (plan: CuttingPlan, problem: CuttingProblem): string[] => {
  const bought = plan.boards.reduce((sum, board) => sum + board.count * board.stockTicks, 0)
  const listed = plan.bought.reduce((sum, line) => sum + line.count * line.stockTicks, 0)
  return [
    ...plan.boards.flatMap((board) => boardFaults(board, problem)),
    ...problem.pieces.flatMap((piece, index) => pieceFaults(piece, index, plan)),
    ...(bought === plan.boughtTicks && listed === bought
      ? []
      : [`Bought ${plan.boughtTicks}, not ${bought}.`]),
  ]
}
