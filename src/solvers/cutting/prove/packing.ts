/**
 * What is left of a cutting problem once its rules are settled: sizes to be packed into boards. A size is a length with one
 * kerf, a room is a board with one kerf (problem.ts), both in whole steps, of which every size is a multiple.
 */
export interface Packing {
  /** Greatest first, each once. */
  readonly sizes: readonly number[]
  readonly counts: readonly number[]
  readonly stocks: readonly PackingStock[]
}

export interface PackingStock {
  readonly room: number
  /** How many there may be: what is on hand, or as many as there are pieces. */
  readonly most: number
  /** What one adds to each aim of a plan: cost, boards, length bought. Nothing for a board that a rule has started. */
  readonly adds: readonly number[]
}

/** What a plan is judged by, each aim before the next: cost, boards, length bought. */
export const AIMS = [0, 1, 2] as const

/** How a board is filled: like a column of the cutting-stock matrix. */
export interface Pattern {
  readonly stock: number
  /** Index of the size, greatest first, and beside it how many of it. */
  readonly sizes: readonly number[]
  readonly times: readonly number[]
}

/** Boards filled alike. */
export interface Filled {
  readonly pattern: Pattern
  readonly count: number
}

/**
 * Work that may still be spent, in steps of about a nanosecond: counted, not timed, so that the same problem always comes to the
 * same answer on any machine.
 */
export interface Work {
  left: number
}

export const spend = (work: Work, steps: number): void => {
  work.left -= steps
}

/** Runs a part of the work, at most `most` of it; what the part leaves is given back. */
export const within = <T>(work: Work, most: number, run: (part: Work) => T): T => {
  const part = { left: Math.min(most, work.left) }
  const before = part.left
  const result = run(part)
  work.left -= before - part.left
  return result
}

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** Sum of the products of two lists, as far as both go. */
export const dot = (a: readonly number[], b: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0)
  return sum
}

/** What boards of each stock add to one aim. */
export const addedBy = (counts: readonly number[], { stocks }: Packing, aim: number): number =>
  stocks.reduce((sum, { adds }, stock) => sum + (adds[aim] ?? 0) * (counts[stock] ?? 0), 0)

/** What the pieces of a pattern are worth at these prices. */
export const worthOf = ({ sizes, times }: Pattern, prices: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < sizes.length; i += 1) sum += (prices[sizes[i] ?? 0] ?? 0) * (times[i] ?? 0)
  return sum
}

/** Whether no size is on the pattern more often than it is still wanted. */
export const isWithin = ({ sizes, times }: Pattern, wanted: readonly number[]): boolean => {
  for (let i = 0; i < sizes.length; i += 1) if ((times[i] ?? 0) > (wanted[sizes[i] ?? 0] ?? 0)) return false
  return true
}

/** What is still wanted once a pattern is cut so many times; never less than nothing. */
export const without = (wanted: readonly number[], { sizes, times }: Pattern, count: number): number[] => {
  const left = [...wanted]
  for (const [i, size] of sizes.entries())
    left[size] = Math.max(0, (left[size] ?? 0) - count * (times[i] ?? 0))
  return left
}
