import type { IntegerProgram, IntegerSolver } from '../proof'
import { without } from './packing'
import type { Filled, Packing, Pattern } from './packing'
import type { Undecided } from './solvePacking'

/** Rows: what is wanted of each size, then for each stock that no more boards are used than there are. */
const programOf = (
  patterns: readonly Pattern[],
  boards: readonly number[],
  { counts }: Packing,
): IntegerProgram => ({
  columns: patterns.map(({ stock, sizes, times }) => ({
    cost: 0,
    most: boards[stock] ?? 0,
    gives: [...sizes.map((size, i) => [size, times[i] ?? 0] as const), [counts.length + stock, -1] as const],
  })),
  needs: [...counts, ...boards.map((each) => -each)],
})

/** Whether the fillings hold all pieces and use no more boards than there are, counted in whole numbers. */
const holdsAll = (filled: readonly Filled[], boards: readonly number[], { counts }: Packing): boolean => {
  const rest = filled.reduce<readonly number[]>(
    (wanted, { pattern, count }) => without(wanted, pattern, count),
    counts,
  )
  const used = boards.map((_, stock) =>
    filled.filter(({ pattern }) => pattern.stock === stock).reduce((sum, { count }) => sum + count, 0),
  )
  return rest.every((each) => each === 0) && used.every((each, stock) => each <= (boards[stock] ?? 0))
}

/**
 * A filling of numbers of boards that the own search left open. What the solver finds is counted over; that it finds nothing proves
 * nothing here, since it reckons in floating point.
 */
export const askSolver = async (
  { boards, patterns }: Undecided,
  packing: Packing,
  solver: IntegerSolver,
): Promise<Filled[] | undefined> => {
  if (patterns === undefined) return undefined
  const solution = await solver(programOf(patterns, boards, packing))
  if (solution === undefined) return undefined
  const filled = patterns
    .map((pattern, i) => ({ pattern, count: Math.round(solution.counts[i] ?? 0) }))
    .filter(({ count }) => count > 0)
  return holdsAll(filled, boards, packing) ? filled : undefined
}
