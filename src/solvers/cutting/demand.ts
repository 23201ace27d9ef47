import { cutBoard, takenOf } from './plan'
import type { Cut, CutBoard, TooLong } from './plan'
import { canKeepRule, leastOf, mateOf, offered, roomOf } from './problem'
import type { CuttingProblem, Piece } from './problem'

/** Like pieces that may go on any board with room for them. */
export interface Need {
  readonly piece: number
  readonly lengthTicks: number
  /** Length and one kerf. */
  readonly sizeTicks: number
  readonly count: number
}

/** A board that a rule already asks for and that has room left. */
export interface StartedBoard {
  readonly stockTicks: number
  readonly cuts: readonly Cut[]
  readonly roomTicks: number
}

/**
 * What the rules settle before anyone chooses, and what is left to choose. Every plan has the whole boards and the
 * started ones; plans differ only in where the needs go.
 */
export interface Demand {
  readonly whole: readonly CutBoard[]
  readonly started: readonly StartedBoard[]
  /** Longest first. */
  readonly needs: readonly Need[]
  readonly tooLong: readonly TooLong[]
}

/** Lengths to plan with: as drawn, or as short as the crew may cut. */
export type Reading = 'drawn' | 'least'

type Settled = Pick<Demand, 'whole' | 'started'>

/** Whole boards of mates; mates over start one more board, whose rest is an offcut that others may use. */
const settleMates = (
  index: number,
  { count }: Piece,
  parts: number,
  stockTicks: number,
  { saw }: CuttingProblem,
): Settled => {
  const mates = (n: number): Cut[] => [
    { piece: index, lengthTicks: mateOf(stockTicks, parts, saw), count: n },
  ]
  const over = count % parts
  const boards = (count - over) / parts
  const roomTicks = roomOf(stockTicks, saw) - takenOf(mates(over), saw)
  return {
    whole: boards > 0 ? [cutBoard(stockTicks, boards, mates(parts), saw)] : [],
    started: over > 0 ? [{ stockTicks, cuts: mates(over), roomTicks }] : [],
  }
}

const settle = (index: number, piece: Piece, problem: CuttingProblem): Settled | undefined => {
  const { rule, count } = piece
  if (rule.kind === 'exact' || !canKeepRule(piece, problem)) return undefined
  if (rule.kind === 'equal-parts') return settleMates(index, piece, rule.parts, rule.stockTicks, problem)
  const cuts = [{ piece: index, lengthTicks: rule.stockTicks, count: 1 }]
  return { whole: [cutBoard(rule.stockTicks, count, cuts, problem.saw)], started: [] }
}

/** Splits a problem in what its rules settle, what is free to plan and what no board makes. */
export const demandOf = (problem: CuttingProblem, reading: Reading): Demand => {
  const whole: CutBoard[] = []
  const started: StartedBoard[] = []
  const needs: Need[] = []
  const tooLong: TooLong[] = []
  const { kerfTicks } = problem.saw
  const longest = roomOf(offered(problem).at(-1) ?? 0, problem.saw) - kerfTicks
  for (const [index, piece] of problem.pieces.entries()) {
    if (piece.count === 0) continue
    const settled = settle(index, piece, problem)
    if (settled !== undefined) {
      whole.push(...settled.whole)
      started.push(...settled.started)
    } else if (leastOf(piece) > longest) {
      tooLong.push({ piece: index, count: piece.count })
    } else {
      // A piece that only its tolerance lets on the longest board takes the whole of that board, also as drawn.
      const lengthTicks = reading === 'least' ? leastOf(piece) : Math.min(piece.lengthTicks, longest)
      needs.push({ piece: index, lengthTicks, sizeTicks: lengthTicks + kerfTicks, count: piece.count })
    }
  }
  needs.sort((a, b) => b.sizeTicks - a.sizeTicks)
  return { whole, started, needs, tooLong }
}
