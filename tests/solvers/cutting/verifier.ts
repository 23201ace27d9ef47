import type { CuttingPlan } from '../../../src/solvers/cutting/plan'
import type { CuttingProblem, Piece } from '../../../src/solvers/cutting/problem'

/*
 * A second opinion that shares no code with the solver: it walks a saw down each board, cut by cut, and counts boards, money and
 * pieces by itself.
 */

type Board = CuttingPlan['boards'][number]

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)

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

/** A stick that one piece is made of with no cut: because its rule says so, or because it may be as long or short as the stick. */
const isUncut = (board: Board, problem: CuttingProblem): boolean => {
  const [cut, ...others] = board.cuts
  const piece = problem.pieces[cut?.piece ?? -1]
  if (cut?.count !== 1 || others.length > 0 || piece === undefined) return false
  if (piece.rule.kind === 'uncut' && piece.rule.stockTicks === board.stockTicks) return true
  return (
    piece.plusTicks !== undefined &&
    cut.lengthTicks === board.stockTicks &&
    board.stockTicks >= piece.lengthTicks - piece.minusTicks &&
    board.stockTicks <= piece.lengthTicks + piece.plusTicks
  )
}

/** What a board has between its squared end and its other end. */
const squaredEnd = (stockTicks: number, { saw: { kerfTicks, trimTicks } }: CuttingProblem): number =>
  trimTicks === 0 ? stockTicks : stockTicks - trimTicks - kerfTicks

const boardFaults = (board: Board, problem: CuttingProblem): string[] => {
  const start = isUncut(board, problem) ? board.stockTicks : squaredEnd(board.stockTicks, problem)
  const lengths = board.cuts.flatMap((cut) => Array.from({ length: cut.count }, () => cut.lengthTicks))
  const rest = sawAlong(start, lengths, problem.saw.kerfTicks)
  const faults: string[] = []
  if (rest === undefined) faults.push(`A ${board.stockTicks} board can't give ${lengths.join(' + ')}.`)
  else if (rest !== board.offcutTicks) faults.push(`Offcut is ${rest}, the plan says ${board.offcutTicks}.`)
  if (problem.stocks[board.stock]?.lengthTicks !== board.stockTicks)
    faults.push(`${board.stockTicks} is not on offer as stock ${board.stock}.`)
  if (board.count < 1 || lengths.length === 0) faults.push('An empty or absent board stands in the plan.')
  return faults
}

const madeOf = (index: number, { boards }: CuttingPlan) =>
  boards.flatMap((board) =>
    board.cuts
      .filter((cut) => cut.piece === index)
      .map((cut) => ({ length: cut.lengthTicks, made: cut.count * board.count, board, each: cut.count })),
  )

const lengthFaults = (piece: Piece, index: number, plan: CuttingPlan, problem: CuttingProblem): string[] => {
  // A mate may be a tick short, and may be longer than it need be; others may not.
  const mate = piece.rule.kind === 'exact' ? 0 : 1
  const least = Math.max(1, piece.lengthTicks - piece.minusTicks - mate)
  const most = piece.rule.kind === 'exact' ? piece.lengthTicks : Infinity
  return madeOf(index, plan)
    .filter(({ length, board }) => length < least || (length > most && !isUncut(board, problem)))
    .map(({ length }) => `Piece ${index} is cut ${length}, not ${piece.lengthTicks}.`)
}

const countFaults = (piece: Piece, index: number, plan: CuttingPlan): string[] => {
  const made = sum(madeOf(index, plan).map((cut) => cut.made))
  const told = plan.unmade.filter((each) => each.piece === index)
  const apart = sum(told.map(({ count }) => count))
  const faults = told.some(({ count }) => count < 1) ? [`Piece ${index} is told unmade for nothing.`] : []
  if (made + apart !== piece.count)
    faults.push(`Piece ${index}: ${made} made, ${apart} told, of ${piece.count}.`)
  return faults
}

/** Boards that a whole stick is, or that this piece alone is cut from. */
const makes = (piece: Piece, stockTicks: number, problem: CuttingProblem): boolean => {
  const least = Math.max(1, piece.lengthTicks - piece.minusTicks)
  const asItComes =
    piece.plusTicks !== undefined && stockTicks >= least && stockTicks <= piece.lengthTicks + piece.plusTicks
  return asItComes || squaredEnd(stockTicks, problem) >= least
}

const usedOf = (stock: number, plan: CuttingPlan): number =>
  sum(plan.boards.filter((board) => board.stock === stock).map(({ count }) => count))

/** A piece is not made only where no board makes it, or where the boards that do are all used. */
const reasonFaults = (plan: CuttingPlan, problem: CuttingProblem): string[] =>
  plan.unmade.flatMap(({ piece: index, why }) => {
    const piece = problem.pieces[index]!
    const making = problem.stocks.flatMap((stock, at) =>
      stock.most !== 0 && makes(piece, stock.lengthTicks, problem)
        ? [{ left: (stock.most ?? Infinity) - usedOf(at, plan) }]
        : [],
    )
    if (why === 'too-long')
      return making.length === 0 ? [] : [`Piece ${index} is told too long, and a board makes it.`]
    if (making.length === 0) return [`Piece ${index} is told to want boards, and no board makes it.`]
    return making.some(({ left }) => left > 0) ? [`A board is left that makes piece ${index}.`] : []
  })

const limitFaults = (plan: CuttingPlan, problem: CuttingProblem): string[] =>
  problem.stocks.flatMap(({ most = Infinity }, stock) =>
    usedOf(stock, plan) > most ? [`${usedOf(stock, plan)} boards of stock ${stock}, of ${most}.`] : [],
  )

/** Each total of the plan, added up board by board. */
const sumFaults = (plan: CuttingPlan, problem: CuttingProblem): string[] => {
  let cost = 0
  let count = 0
  let bought = 0
  for (const board of plan.boards) {
    const stock = problem.stocks[board.stock]!
    const each = stock.cost ?? stock.lengthTicks
    cost += board.count * each
    count += board.count
    if (each > 0) bought += board.count * stock.lengthTicks
  }
  const faults: string[] = []
  if (plan.cost !== cost) faults.push(`Cost ${plan.cost}, not ${cost}.`)
  if (plan.boardCount !== count) faults.push(`${plan.boardCount} boards, not ${count}.`)
  if (plan.boughtTicks !== bought) faults.push(`Bought ${plan.boughtTicks}, not ${bought}.`)
  for (const [stock, { lengthTicks }] of problem.stocks.entries()) {
    const lines = plan.bought.filter((line) => line.stock === stock)
    if (sum(lines.map((line) => line.count)) !== usedOf(stock, plan) || lines.length > 1)
      faults.push(`Boards of stock ${stock} are listed ${lines.map((line) => line.count).join(' + ')}.`)
    if (lines.some((line) => line.stockTicks !== lengthTicks))
      faults.push(`Stock ${stock} has another length.`)
  }
  return faults
}

/**
 * A rule is kept while there are boards of its own: all whole sticks, or full boards of mates and at most one board that is not full
 * for all lines of the same rule.
 */
const ruleFaults = (plan: CuttingPlan, problem: CuttingProblem): string[] => {
  const isEndless = (ticks: number) =>
    problem.stocks.some(({ lengthTicks, most }) => lengthTicks === ticks && most === undefined)
  const partly = new Map<string, number>()
  const faults: string[] = []
  for (const [index, piece] of problem.pieces.entries()) {
    const { rule } = piece
    const least = Math.max(1, piece.lengthTicks - piece.minusTicks)
    if (rule.kind === 'exact' || !isEndless(rule.stockTicks)) continue
    if (rule.kind === 'uncut') {
      if (rule.stockTicks >= least && madeOf(index, plan).some(({ board }) => !isUncut(board, problem)))
        faults.push(`Piece ${index} is no whole stick.`)
      continue
    }
    const wood = squaredEnd(rule.stockTicks, problem) - (rule.parts - 1) * problem.saw.kerfTicks
    const mate = Math.floor(wood / rule.parts)
    if (mate < 1 || mate + 1 < least) continue
    for (const { board } of madeOf(index, plan)) {
      const isSame = (at: number) => {
        const other = problem.pieces[at]!.rule
        return (
          other.kind === 'equal-parts' && other.parts === rule.parts && other.stockTicks === rule.stockTicks
        )
      }
      const mates = sum(board.cuts.filter((cut) => isSame(cut.piece)).map((cut) => cut.count))
      if (board.stockTicks !== rule.stockTicks) faults.push(`Piece ${index} is not cut from its own board.`)
      if (mates < rule.parts) {
        const name = `${rule.stockTicks}/${rule.parts}`
        partly.set(name, Math.max(partly.get(name) ?? 0, board.count))
      }
    }
  }
  for (const [name, count] of partly) if (count > 1) faults.push(`${count} boards of ${name} are not full.`)
  return faults
}

/** Everything wrong with a plan, in words; nothing where it can be sawn as it stands. */
export const faultsOf = (plan: CuttingPlan, problem: CuttingProblem): string[] => [
  ...plan.boards.flatMap((board) => boardFaults(board, problem)),
  ...problem.pieces.flatMap((piece, index) => [
    ...countFaults(piece, index, plan),
    ...lengthFaults(piece, index, plan, problem),
  ]),
  ...reasonFaults(plan, problem),
  ...limitFaults(plan, problem),
  ...sumFaults(plan, problem),
  ...ruleFaults(plan, problem),
]
