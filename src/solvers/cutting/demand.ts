import { offersOf, supplyOf, takeBoards } from './offers'
import type { Offer, Supply } from './offers'
import { cutBoard, takenOf } from './plan'
import type { Cut, CutBoard, Unmade } from './plan'
import { canKeepRule, isAsItComes, leastOf, mateOf } from './problem'
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
  /** Index of its stock in the problem. */
  readonly stock: number
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
  /** What no board on offer makes, however many there were. */
  readonly tooLong: readonly Unmade[]
  /** What the settled boards leave of each stock of the problem; Infinity for as many as wanted. */
  readonly supply: readonly number[]
}

/** Lengths to plan with: as drawn, or as short as the crew may cut. */
export type Reading = 'drawn' | 'least'

/** What has been settled so far, and what is left to take from; filled as the rules are gone through. */
interface Settling {
  readonly problem: CuttingProblem
  readonly offers: readonly Offer[]
  readonly supply: Supply
  readonly whole: CutBoard[]
  readonly started: StartedBoard[]
}

/** Pieces of one line that a rule is yet to settle. */
interface Ruled {
  readonly index: number
  count: number
}

/** Sticks that are used as they come. Returns how many pieces no stick is left for. */
const settleWhole = (index: number, count: number, offers: readonly Offer[], settling: Settling): number => {
  const taken = takeBoards(offers, count, settling.supply)
  for (const { offer, count: boards } of taken) {
    const cuts = [{ piece: index, lengthTicks: offer.stockTicks, count: 1 }]
    settling.whole.push(cutBoard(offer.stock, boards, cuts, settling.problem))
  }
  return count - taken.reduce((sum, boards) => sum + boards.count, 0)
}

/** What one rule of equal parts makes of a board. */
interface Mates {
  readonly parts: number
  readonly lengthTicks: number
  /** Boards of the rule's length. */
  readonly offers: readonly Offer[]
}

/** The next mates of lines in turn, as many as are in a board or what is left. */
const nextMates = (lines: readonly Ruled[], { parts, lengthTicks }: Mates): Cut[] => {
  const cuts: Cut[] = []
  let room = parts
  for (const line of lines) {
    const count = Math.min(room, line.count)
    if (count === 0) continue
    cuts.push({ piece: line.index, lengthTicks, count })
    line.count -= count
    room -= count
  }
  return cuts
}

/** Boards that each give `parts` mates of one line. Returns how many there were. */
const settleFull = (
  index: number,
  boards: number,
  mates: Mates,
  { problem, supply, whole }: Settling,
): number => {
  const taken = takeBoards(mates.offers, boards, supply)
  const cuts = [{ piece: index, lengthTicks: mates.lengthTicks, count: mates.parts }]
  for (const { offer, count } of taken) whole.push(cutBoard(offer.stock, count, cuts, problem))
  return taken.reduce((sum, { count }) => sum + count, 0)
}

/** One board of the next mates of all lines; what they leave of it is started. Returns whether there was a board. */
const settleMixed = (lines: readonly Ruled[], mates: Mates, settling: Settling): boolean => {
  const { problem, supply, whole, started } = settling
  const [board] = takeBoards(mates.offers, 1, supply)
  if (board === undefined) return false
  const { stock, stockTicks, roomTicks } = board.offer
  const cuts = nextMates(lines, mates)
  if (cuts.reduce((sum, { count }) => sum + count, 0) === mates.parts)
    whole.push(cutBoard(stock, 1, cuts, problem))
  else started.push({ stock, stockTicks, cuts, roomTicks: roomTicks - takenOf(cuts, problem.saw) })
  return true
}

/**
 * Equal mates, the lines of one rule together, so that the odd ones of two lines share a board. Mates over start one more board,
 * whose rest is an offcut that others may use. What no board is left for stays in the lines.
 */
const settleMates = (lines: readonly Ruled[], mates: Mates, settling: Settling): void => {
  for (;;) {
    const line = lines.find(({ count }) => count > 0)
    if (line === undefined) return
    const full = Math.floor(line.count / mates.parts)
    const boards = full > 0 ? settleFull(line.index, full, mates, settling) : 0
    line.count -= boards * mates.parts
    if (boards < full || (full === 0 && !settleMixed(lines, mates, settling))) return
  }
}

/** Lines whose rule can be kept, by the board that it asks for and the parts that the board is cut in; a whole stick is one part. */
const ruledLines = (problem: CuttingProblem): Map<string, Ruled[]> => {
  const groups = new Map<string, Ruled[]>()
  for (const [index, piece] of problem.pieces.entries()) {
    const { rule, count } = piece
    if (rule.kind === 'exact' || count === 0 || !canKeepRule(piece, problem)) continue
    const key = `${rule.stockTicks}/${rule.kind === 'uncut' ? 'uncut' : rule.parts}`
    groups.set(key, [...(groups.get(key) ?? []), { index, count }])
  }
  return groups
}

/** Settles all that rules ask for. Returns how many of each line are still to be made. */
const settleRules = (settling: Settling): number[] => {
  const { problem, offers } = settling
  const left = problem.pieces.map(({ count }) => count)
  for (const lines of ruledLines(problem).values()) {
    const rule = problem.pieces[lines[0]?.index ?? 0]?.rule
    if (rule === undefined || rule.kind === 'exact') continue
    const own = offers.filter(({ stockTicks }) => stockTicks === rule.stockTicks)
    if (rule.kind === 'uncut')
      for (const line of lines) line.count = settleWhole(line.index, line.count, own, settling)
    else {
      const lengthTicks = mateOf(rule.stockTicks, rule.parts, problem.saw)
      settleMates(lines, { parts: rule.parts, lengthTicks, offers: own }, settling)
    }
    for (const { index, count } of lines) left[index] = count
  }
  return left
}

/**
 * Sticks that make a piece as they come and have no room for it once their end is squared: what is cheapest at the saw as well as
 * at the yard, unless a board that the piece can be cut from costs less.
 */
const sticksFor = (piece: Piece, offers: readonly Offer[], kerfTicks: number): Offer[] => {
  const least = leastOf(piece)
  const holding = offers.find(({ roomTicks }) => roomTicks >= least + kerfTicks)
  return offers.filter(
    ({ stockTicks, roomTicks, cost }) =>
      isAsItComes(stockTicks, piece) &&
      roomTicks < least + kerfTicks &&
      (holding === undefined || cost <= holding.cost),
  )
}

/** Splits a problem in what its rules settle, what is free to plan and what no board makes. */
export const demandOf = (problem: CuttingProblem, reading: Reading): Demand => {
  const offers = offersOf(problem)
  const settling: Settling = { problem, offers, supply: supplyOf(problem), whole: [], started: [] }
  const needs: Need[] = []
  const tooLong: Unmade[] = []
  const { kerfTicks } = problem.saw
  const longest = Math.max(0, ...offers.map(({ roomTicks }) => roomTicks)) - kerfTicks
  const left = settleRules(settling)
  for (const [index, piece] of problem.pieces.entries()) {
    const sticks = problem.saw.trimTicks > 0 ? sticksFor(piece, offers, kerfTicks) : []
    const count = settleWhole(index, left[index] ?? 0, sticks, settling)
    if (count === 0) continue
    if (leastOf(piece) > longest) {
      tooLong.push({ piece: index, count, why: sticks.length > 0 ? 'no-stock-left' : 'too-long' })
    } else {
      // A piece that only its tolerance lets on the longest board takes the whole of that board, also as drawn.
      const lengthTicks = reading === 'least' ? leastOf(piece) : Math.min(piece.lengthTicks, longest)
      needs.push({ piece: index, lengthTicks, sizeTicks: lengthTicks + kerfTicks, count })
    }
  }
  needs.sort((a, b) => b.sizeTicks - a.sizeTicks)
  return { whole: settling.whole, started: settling.started, needs, tooLong, supply: settling.supply }
}
