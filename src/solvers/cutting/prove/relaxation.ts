import { bestPattern, knapsackOf, worthLedBy } from './knapsack'
import type { Knapsack } from './knapsack'
import { dot, isWithin, spend } from './packing'
import type { Packing, Pattern, Work } from './packing'
import { improve, missingOf, simplexOf, usedColumns } from './simplex'
import type { Column, Simplex } from './simplex'

/**
 * Prices of the sizes, and for each stock the most that one of its boards can hold at these prices. All are whole numbers, found
 * by a knapsack in whole numbers, so it is a fact and no estimate that boards which hold all that is wanted have
 *
 *     sum over the stocks of boards x worth >= total = sum over the sizes of wanted x price
 */
export interface Cut {
  readonly prices: readonly number[]
  readonly worths: readonly number[]
  readonly total: number
}

/** Whether so many boards of each stock can't hold what the cut was made of, not even in parts. */
export const isTooFew = ({ worths, total }: Cut, boards: readonly number[]): boolean =>
  dot(worths, boards) < total

/** Patterns met so far; any question about the same packing may use them again. */
export interface Pool {
  readonly patterns: Pattern[]
  readonly known: Set<string>
}

export const emptyPool = (): Pool => ({ patterns: [], known: new Set() })

/** Adds a pattern unless it is known; says whether it was new. */
export const addPattern = ({ patterns, known }: Pool, pattern: Pattern): boolean => {
  const name = `${pattern.stock}:${pattern.sizes.join()}:${pattern.times.join()}`
  if (known.has(name)) return false
  known.add(name)
  patterns.push(pattern)
  return true
}

/** A question: what is wanted of each size, from at most so many boards of each stock, at what cost a board. */
export interface Question {
  readonly wanted: readonly number[]
  readonly boards: readonly number[]
  readonly costs: readonly number[]
  /** What a piece costs that is not made. */
  readonly missing: readonly number[]
}

export interface Relaxed {
  readonly cut: Cut
  /** By how much prices in whole numbers are more than what they were rounded from. */
  readonly scale: number
  /** Patterns with how often each is used, in parts. */
  readonly used: readonly (readonly [pattern: Pattern, count: number])[]
  /** Pieces that are not made, in parts. */
  readonly missing: number
}

const MOST_SUM = 2 ** 51
const GREATEST_SCALE = 2 ** 30

/** The greatest power of two that keeps all sums of prices exact. */
const scaleFor = ({ wanted, boards, costs, missing }: Question): number => {
  const sums = Math.max(1, dot(wanted, missing), dot(boards, costs), ...costs, ...missing)
  return Math.min(GREATEST_SCALE, 2 ** Math.floor(Math.log2(MOST_SUM / (sums * 8))))
}

const columnOf = ({ stock, sizes, times }: Pattern, needs: number, costs: readonly number[]): Column => ({
  cost: costs[stock] ?? 0,
  rows: [...sizes, needs + stock],
  amounts: [...times, 1],
})

const cutOf = (question: Question, packing: Packing, prices: readonly number[], knapsack: Knapsack): Cut => ({
  prices,
  worths: packing.stocks.map(({ room }) => knapsack.best(0, room)),
  total: dot(question.wanted, prices),
})

/** Pivots that one question may take; the cut is valid wherever it stops. */
const MOST_PIVOTS = 20_000
/** A pattern must gain this share of the greatest cost to be worth another round. */
const LEAST_GAIN = 1e-8
/** Beyond so many sizes a round looks for more than one pattern of a stock: the best that begins with each size. */
const MANY_SIZES = 40
/** Of these, those that gain this share of what the best gains. */
const GAIN_SHARE = 0.5

/**
 * The least cost of boards that hold all that is wanted, where boards may be used in parts: column generation. Patterns are
 * priced by one knapsack for all stocks. What is missing is a part of the answer; a packing that can't be has some.
 */
export const relax = (question: Question, packing: Packing, pool: Pool, work: Work): Relaxed => {
  const { wanted, boards, costs, missing } = question
  const needs = wanted.length
  const scale = scaleFor(question)
  const greatest = Math.max(1e-30, ...costs, ...missing)
  const usable = pool.patterns.filter(
    (pattern) => (boards[pattern.stock] ?? 0) > 0 && isWithin(pattern, wanted),
  )
  const columns = usable.map((pattern) => columnOf(pattern, needs, costs))
  const simplex = simplexOf(wanted, boards, missing)
  const size = needs + boards.length
  for (;;) {
    const steps = improve(simplex, columns, greatest, MOST_PIVOTS)
    spend(work, (steps + 3) * (2 * size * size + columns.length * 16))
    const prices = wanted.map((_, at) => Math.max(0, Math.floor((simplex.prices[at] ?? 0) * scale)))
    const knapsack = knapsackOf(packing, wanted, prices)
    spend(work, knapsack.cells)
    const cut = cutOf(question, packing, prices, knapsack)
    const take = (pattern: Pattern): void => {
      addPattern(pool, pattern)
      usable.push(pattern)
      columns.push(columnOf(pattern, needs, costs))
    }
    const takeLed = (stock: number, cost: number): void => {
      const best = cut.worths[stock] ?? 0
      for (const lead of needs > MANY_SIZES ? wanted.keys() : []) {
        const worth = worthLedBy(knapsack, lead, stock, packing, wanted, prices)
        if (worth < best && worth - cost > GAIN_SHARE * (best - cost))
          take(bestPattern(knapsack, stock, packing, wanted, prices, lead))
      }
    }
    const isNew = (stock: number): boolean => {
      const cost = ((costs[stock] ?? 0) - (simplex.prices[needs + stock] ?? 0)) * scale
      if ((boards[stock] ?? 0) <= 0) return false
      if ((cut.worths[stock] ?? 0) <= cost + LEAST_GAIN * greatest * scale) return false
      take(bestPattern(knapsack, stock, packing, wanted, prices))
      takeLed(stock, cost)
      return true
    }
    const found = boards.map((_, stock) => isNew(stock)).includes(true)
    if (!found || work.left <= 0 || simplex.pivots > MOST_PIVOTS)
      return relaxedOf(cut, scale, simplex, usable)
  }
}

const relaxedOf = (cut: Cut, scale: number, simplex: Simplex, usable: readonly Pattern[]): Relaxed => ({
  cut,
  scale,
  used: usedColumns(simplex).flatMap(([index, count]) => {
    const pattern = usable[index]
    return pattern === undefined ? [] : [[pattern, count] as const]
  }),
  missing: missingOf(simplex),
})

/** What makes sums of missing pieces outweigh any boards. */
export const heavyMissing = (packing: Packing, costs: readonly number[]): number[] =>
  packing.sizes.map(() => 4 * Math.max(1, ...costs))

/** The same question, asked only whether the boards will do: boards are free, missing pieces cost their size. */
export const justFit = ({ wanted, boards }: Question, { sizes }: Packing): Question => ({
  wanted,
  boards,
  costs: boards.map(() => 0),
  missing: sizes,
})
