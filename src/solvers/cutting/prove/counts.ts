import { dot, spend } from './packing'
import type { Work } from './packing'
import type { Cut } from './relaxation'

/** An aim or a condition on the numbers of boards: what one of each stock adds, and the most that all together may come to. */
export interface Measure {
  readonly adds: readonly number[]
  readonly most: number
}

export interface CountsQuestion {
  /** The least of the first is looked for; all are kept. */
  readonly measures: readonly [Measure, ...Measure[]]
  readonly cuts: readonly Pick<Cut, 'worths' | 'total'>[]
  /** How many of each stock there are. */
  readonly most: readonly number[]
  /** Numbers of boards that won't do, and so none won't do that have no more of any. */
  readonly excluded: readonly (readonly number[])[]
}

/** The numbers of boards, 'none' where no numbers keep all, or 'stopped' where the work was used up first. */
export type Counts = readonly number[] | 'none' | 'stopped'

/** At each depth and for each cut, the least that a measure grows by for one of worth from the stocks still to come. */
const ratesOf = ({ adds }: Measure, order: readonly number[], worths: readonly number[]): Float64Array => {
  const rates = new Float64Array(order.length + 1).fill(Infinity)
  for (let depth = order.length - 1; depth >= 0; depth -= 1) {
    const stock = order[depth] ?? 0
    const worth = worths[stock] ?? 0
    rates[depth] = Math.min(rates[depth + 1] ?? Infinity, worth > 0 ? (adds[stock] ?? 0) / worth : Infinity)
  }
  return rates
}

/** Given away so that a quotient of whole numbers, rounded, never claims too much. */
const ROUNDING_SHARE = 1e-12

/**
 * The least numbers of boards, by the first measure, that keep every cut and condition: depth first through all of them, in
 * whole numbers, left out where what is still to come must go beyond a measure. Stocks that add nothing to any measure are all
 * used.
 */
export const leastCounts = ({ measures, cuts, most, excluded }: CountsQuestion, work: Work): Counts => {
  const [aim] = measures
  const isFree = (stock: number): boolean =>
    (aim.adds[stock] ?? 0) === 0 && measures.every(({ adds }) => (adds[stock] ?? 0) === 0)
  const isUnasked = (stock: number): boolean => (aim.adds[stock] ?? 0) === 0
  const numbers = most.map((each, stock) =>
    isFree(stock) || (measures.length === 1 && isUnasked(stock)) ? each : 0,
  )
  const fixed = new Set(
    [...most.keys()].filter((stock) => isFree(stock) || (measures.length === 1 && isUnasked(stock))),
  )
  // Dearest first: few of them can be used, and the cheapest, which fill up, follow from the rest.
  const order = [...most.keys()]
    .filter((stock) => !fixed.has(stock))
    .sort((a, b) => (aim.adds[b] ?? 0) - (aim.adds[a] ?? 0))
  const rates = measures.map((measure) => cuts.map(({ worths }) => ratesOf(measure, order, worths)))
  const limits = measures.map((measure) => measure.most)
  const spent = measures.map(() => 0)
  const short = cuts.map(({ worths, total }) => total - dot(worths, numbers))
  let best: readonly number[] | undefined

  /** Whether what the cuts still lack must take a measure beyond its limit. */
  const isBeyond = (depth: number): boolean => {
    for (let m = 0; m < limits.length; m += 1) {
      const limit = limits[m] ?? 0
      const rate = rates[m]
      let least = 0
      for (let c = 0; c < short.length; c += 1) {
        const lacks = short[c] ?? 0
        if (lacks > 0) least = Math.max(least, lacks * (rate?.[c]?.[depth] ?? Infinity))
      }
      if ((spent[m] ?? 0) + least * (1 - ROUNDING_SHARE) > limit) return true
    }
    return false
  }
  const isExcluded = (): boolean =>
    excluded.some((each) => numbers.every((number, stock) => number <= (each[stock] ?? 0)))
  const add = (stock: number, times: number): void => {
    numbers[stock] = (numbers[stock] ?? 0) + times
    for (let c = 0; c < short.length; c += 1)
      short[c] = (short[c] ?? 0) - times * (cuts[c]?.worths[stock] ?? 0)
    for (let m = 0; m < spent.length; m += 1)
      spent[m] = (spent[m] ?? 0) + times * (measures[m]?.adds[stock] ?? 0)
  }
  /** How many of the last stock the cuts want. */
  const lastNeed = (stock: number): number => {
    let need = 0
    for (let c = 0; c < short.length; c += 1) {
      const lacks = short[c] ?? 0
      if (lacks > 0) need = Math.max(need, Math.ceil(lacks / (cuts[c]?.worths[stock] ?? 0)))
    }
    return need
  }
  const visit = (depth: number): void => {
    spend(work, 10 * (1 + short.length * limits.length))
    if (work.left <= 0 || isBeyond(depth)) return
    const stock = order[depth]
    if (stock === undefined) {
      if (isExcluded()) return
      best = [...numbers]
      // Only less will do from here on.
      limits[0] = (spent[0] ?? 0) - 1
      return
    }
    const before = numbers[stock] ?? 0
    const start = depth === order.length - 1 ? lastNeed(stock) : 0
    if (start > (most[stock] ?? 0)) return
    add(stock, start)
    for (;;) {
      visit(depth + 1)
      if (
        work.left <= 0 ||
        (numbers[stock] ?? 0) >= (most[stock] ?? 0) ||
        spent.some((each, m) => each > (limits[m] ?? 0))
      )
        break
      add(stock, 1)
    }
    add(stock, before - (numbers[stock] ?? 0))
  }
  visit(0)
  if (work.left <= 0) return 'stopped'
  return best ?? 'none'
}
