import { stockOf } from '../../catalogue/stock'
import type { CutList } from '../../model/cutList'
import { firstPlan } from '../../solvers/cutting/firstPlan'
import type { CuttingPlan } from '../../solvers/cutting/plan'
import type { Piece } from '../../solvers/cutting/problem'

/** Pieces that a plan cuts shorter than drawn, as they may be, because that buys less. */
export interface ToleranceSave {
  readonly stock: string
  readonly marks: readonly string[]
  /** As drawn. */
  readonly lengthTicks: number
  /** How much shorter the shortest of them is cut. */
  readonly offTicks: number
  /** Boards that it would take more to cut them as drawn. */
  readonly boards: number
}

const boardsOf = ({ boards }: CuttingPlan): number => boards.reduce((sum, { count }) => sum + count, 0)

/** How much shorter than drawn a plan cuts the shortest of a piece, ticks. */
const shortBy = (index: number, { lengthTicks }: Piece, { boards }: CuttingPlan): number =>
  Math.max(
    0,
    ...boards.flatMap(({ cuts }) =>
      cuts.filter((cut) => cut.piece === index).map((cut) => lengthTicks - cut.lengthTicks),
    ),
  )

/** What the tolerances of a list's pieces save it, piece by piece: nothing where its plan cuts all as drawn. */
export const toleranceSaves = ({ problem, stock, pieces }: CutList): readonly ToleranceSave[] => {
  if (stockOf(stock).form !== 'stick') return []
  const plan = firstPlan(problem)
  return problem.pieces.flatMap((piece, index) => {
    const offTicks = shortBy(index, piece, plan)
    if (piece.rule.kind !== 'exact' || offTicks === 0) return []
    const asDrawn = problem.pieces.map((each, i) => (i === index ? { ...each, minusTicks: 0 } : each))
    const boards = boardsOf(firstPlan({ ...problem, pieces: asDrawn })) - boardsOf(plan)
    const { lengthTicks } = piece
    return boards > 0 ? [{ stock, marks: pieces[index]?.marks ?? [], lengthTicks, offTicks, boards }] : []
  })
}
