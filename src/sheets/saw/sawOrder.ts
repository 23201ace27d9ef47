import type { Board } from '../../model/cutList'
import { boardCut, cutsOf, type RuledPieces } from './boardCuts'

/** Boards in the order of the saw, and the work that they are. */
export interface SawOrder {
  /** Each with its lengths in the order of cutting. */
  readonly boards: readonly Board[]
  /** Cuts of all boards. */
  readonly cuts: number
  /** How often the stop is set: at the start, and whenever the next length is another. */
  readonly stopSettings: number
}

/** Boards by what they ask of the stop. */
interface Asking {
  readonly board: Board
  readonly stopsMm: readonly number[]
}

const has = (at: number | undefined, { stopsMm }: Asking): boolean => at !== undefined && stopsMm.includes(at)

/** Longest stop first; of boards that begin alike those that ask for the fewest stops. */
const byStop = (a: Asking, b: Asking): number =>
  Math.max(...b.stopsMm) - Math.max(...a.stopsMm) || a.stopsMm.length - b.stopsMm.length

/** The length to cut last: one that other boards still ask for, the longest of them, so that the stop can stay. */
const lastStop = (stopsMm: readonly number[], first: number | undefined, others: readonly Asking[]) =>
  stopsMm.find((stop) => stop !== first && others.some((other) => has(stop, other)))

/** Lengths of one board: what the stop stands at first, what others ask for last, the rest longest first between. */
const inOrder = (
  { stopsMm }: Asking,
  at: number | undefined,
  others: readonly Asking[],
): readonly number[] => {
  const first = stopsMm.find((stop) => stop === at)
  const last = lastStop(stopsMm, first, others)
  const between = stopsMm.filter((stop) => stop !== first && stop !== last)
  return [...(first === undefined ? [] : [first]), ...between, ...(last === undefined ? [] : [last])]
}

const withPieces = (board: Board, stopsMm: readonly number[]): Board => ({
  ...board,
  pieces: [...board.pieces].sort((a, b) => stopsMm.indexOf(a.lengthMm) - stopsMm.indexOf(b.lengthMm)),
})

/** Which board comes next: one that asks for the stop as it stands and for the fewest others, else the first of those left. */
const nextBoard = (at: number | undefined, left: readonly Asking[]): Asking | undefined =>
  left
    .filter((each) => has(at, each))
    .reduce<Asking | undefined>(
      (best, each) => (best && best.stopsMm.length <= each.stopsMm.length ? best : each),
      undefined,
    ) ?? left[0]

/**
 * The order of boards in which the stop moves little: like boards together, every length of a board for all boards alike before the
 * stop moves, and the next board begins where the last one ended, if one can, else with the longest stop that is left. Greedy.
 * Whole boards and boards that are parted on marks need no stop and come first.
 */
export const sawOrder = (list: RuledPieces & { readonly boards: readonly Board[] }): SawOrder => {
  const all = list.boards.map((board): Asking => {
    const cut = boardCut(board, list)
    return { board, stopsMm: cut.kind === 'stops' ? cut.stopsMm : [] }
  })
  const boards = all.filter(({ stopsMm }) => stopsMm.length === 0).map(({ board }) => board)
  let left: readonly Asking[] = all.filter(({ stopsMm }) => stopsMm.length > 0).sort(byStop)
  let at: number | undefined
  let stopSettings = 0
  for (let next = nextBoard(at, left); next; next = nextBoard(at, left)) {
    const taken = next
    left = left.filter((each) => each !== taken)
    const stopsMm = inOrder(taken, at, left)
    stopSettings += stopsMm.length - (stopsMm[0] === at ? 1 : 0)
    at = stopsMm.at(-1)
    boards.push(withPieces(taken.board, stopsMm))
  }
  const cuts = boards.reduce((sum, board) => sum + board.count * cutsOf(board, list.problem.saw), 0)
  return { boards, cuts, stopSettings }
}
