import type { HolesOf } from '../../../evaluate/sawn/holeHeights'
import type { CanRecut, CutOfStock, LineState } from '../../../evaluate/sawn/whatsCut'
import {
  keepOffcuts,
  piecesToLeftovers,
  recutPieces,
  sawBoards,
  tickPieces,
  unsawBoards,
  untickPieces,
} from '../../../layout/benchEdits'
import type { CutPiece, SawnBoard } from '../../../layout/bench'
import type { Board, CutLine } from '../../../model/cutList'
import { commitEdited } from '../../../sidebar/commitEdited'
import { isCoil, lengthWriter } from '../../../sheets/cutWords'
import { LEAST_KEPT_MM } from '../../../sheets/saw/offcuts'
import type { Planner } from '../../../store/planner'
import { fromTicks, toTicks } from '../../../units/length'
import { writeStock } from '../../../units/writeStock'

/** What the deeds at the saw need to know. */
export interface Sawing {
  readonly planner: Planner
  /** Catalogue key of the material. */
  readonly stock: string
  /** The lines that the pieces of its boards are of. */
  readonly lines: readonly CutLine[]
  readonly holesOf: HolesOf
}

const isAsMarked = (a: readonly string[], b: readonly string[]): boolean => a.join() === b.join()

/** The length that members of these marks are drawn with, next to the length that they are cut to. */
const drawnMm = (
  lines: readonly CutLine[],
  { marks, lengthMm }: Pick<CutPiece, 'marks' | 'lengthMm'>,
): number =>
  lines
    .filter((line) => isAsMarked(line.marks, marks))
    .map((line) => line.lengthMm)
    .reduce((best, each) => (Math.abs(each - lengthMm) < Math.abs(best - lengthMm) ? each : best), Infinity)

/** A piece with the hole heights that its members have now. */
const noted = <P extends Omit<CutPiece, 'stock' | 'holes'>>(
  piece: P,
  heightsMm: number,
  { stock, holesOf }: Sawing,
) => {
  const holes = holesOf(stock, piece.marks, heightsMm)
  return holes.length > 0 ? { ...piece, holes: [...holes] } : piece
}

const stockWords = ({ planner }: Sawing, mm: number): string => writeStock(mm, planner.store.getState().units)

const tapeWords = ({ planner, stock }: Sawing, mm: number): string =>
  lengthWriter(stock, planner.store.getState().units)(mm)

/** Ticks off boards of a pattern; a refusal comes back as its sentence. */
export const tickBoards = (sawing: Sawing, board: Board, count: number): string | undefined => {
  const { planner, stock, lines } = sawing
  const pieces = board.pieces.map(({ lengthMm, count: each, marks }) => {
    const piece = { lengthMm, count: each, marks: [...marks] }
    return noted(piece, drawnMm(lines, piece), sawing)
  })
  const offcutMm = board.offcutMm >= LEAST_KEPT_MM ? board.offcutMm : undefined
  const { stockMm, isLeftover } = board
  const refused = commitEdited(planner, `Saw ${count} x ${stockWords(sawing, stockMm)}`, (layout) =>
    sawBoards(layout, { stock, stockMm, isLeftover, count, pieces, offcutMm }),
  )
  if (refused === undefined) {
    const cut = count * board.pieces.reduce((sum, piece) => sum + piece.count, 0)
    planner.say(
      `${count} ${isCoil(stock) ? 'cut up' : 'sawn'}: ${cut} ${cut === 1 ? 'piece is' : 'pieces are'} cut.`,
    )
  }
  return refused
}

export const untickBoards = (sawing: Sawing, board: SawnBoard, count: number): string | undefined =>
  commitEdited(sawing.planner, `Take back ${count} sawn x ${stockWords(sawing, board.stockMm)}`, (layout) =>
    unsawBoards(layout, board, count),
  )

export const keepOffcutsOf = (sawing: Sawing, board: SawnBoard): string | undefined =>
  commitEdited(
    sawing.planner,
    `Keep ${board.count} x ${tapeWords(sawing, board.offcutMm ?? 0)} offcut`,
    (layout) => keepOffcuts(layout, board),
  )

/** So many of the pieces that do for a line, taken from one entry of the list after the other. */
const firstOf = ({ right }: CutOfStock, line: LineState['line'], count: number): CutPiece[] => {
  let left = count
  return right
    .filter((each) => each.line === line)
    .flatMap(({ piece, count: have }) => {
      const taken = Math.min(left, have)
      left -= taken
      return taken > 0 ? [{ ...piece, count: taken }] : []
    })
}

/** Sets how many pieces of a stop are cut, whatever board they came from. */
export const setCut = (
  sawing: Sawing,
  cut: CutOfStock,
  { line, right }: LineState,
  count: number,
): string | undefined => {
  if (count > line.count) return `The bay wants ${line.count} of these: write 0 to ${line.count}.`
  const lengthMm = fromTicks(line.lengthTicks)
  const label = `${count} x ${tapeWords(sawing, lengthMm)} cut`
  if (count < right)
    return commitEdited(sawing.planner, label, (layout) =>
      untickPieces(layout, firstOf(cut, line, right - count)),
    )
  if (count === right) return undefined
  const piece = { stock: sawing.stock, lengthMm, count: count - right, marks: [...line.marks] }
  return commitEdited(sawing.planner, label, (layout) => tickPieces(layout, noted(piece, lengthMm, sawing)))
}

/** Holes that stand right once so much is off the foot; as they were noted where they stay. */
const holesAfter = ({ piece, offFootMm }: CanRecut): CutPiece['holes'] =>
  piece.holes?.map(({ mark, centreMm }) => ({
    mark,
    centreMm: fromTicks(toTicks(centreMm - (offFootMm ?? 0))),
  }))

/** Takes cut pieces off the list as what they were, and onto it as what is made of them. */
export const acceptRecut = (sawing: Sawing, each: CanRecut): string | undefined => {
  const { piece, count, makes, restMm } = each
  const { stock } = piece
  const holes = holesAfter(each)
  const into = makes.map(({ line, lengthMm }): CutPiece => ({
    stock,
    lengthMm,
    count,
    marks: [...line.marks],
    ...(makes.length === 1 && holes ? { holes } : {}),
  }))
  const rests = restMm >= LEAST_KEPT_MM ? [{ stock, lengthMm: restMm, count }] : []
  const label = `Re-cut ${count} x ${tapeWords(sawing, piece.lengthMm)}`
  return commitEdited(sawing.planner, label, (layout) =>
    recutPieces(layout, { from: { ...piece, count }, into, rests }),
  )
}

export const toLeftovers = (sawing: Sawing, piece: CutPiece): string | undefined =>
  commitEdited(
    sawing.planner,
    `${piece.count} x ${tapeWords(sawing, piece.lengthMm)} to the leftovers`,
    (layout) => piecesToLeftovers(layout, piece),
  )

export const dropPieces = (sawing: Sawing, piece: CutPiece): string | undefined =>
  commitEdited(
    sawing.planner,
    `Take ${piece.count} x ${tapeWords(sawing, piece.lengthMm)} off the cut pieces`,
    (layout) => untickPieces(layout, [piece]),
  )
