import { knapsackOf } from './knapsack'
import { dot, spend } from './packing'
import type { Packing, Pattern, Work } from './packing'
import type { Cut, Question } from './relaxation'

/*
 * Which patterns can still matter. Boards of a question are worth `dot(worths, boards)` at the prices of a cut, all that is wanted
 * is worth `total`, and what lies between is all that the boards of any answer together fall short of their worth. So no board
 * of an answer falls short of its stock's worth by more. A board that has room for one more wanted piece may as well have it, so
 * only full patterns are listed; sums of worths are whole numbers.
 */

/** More patterns than these are not searched. */
const MOST_PATTERNS = 12_000

interface Listing {
  readonly sizes: readonly number[]
  readonly wanted: readonly number[]
  readonly prices: readonly number[]
  readonly best: (from: number, room: number) => number
  readonly work: Work
  readonly patterns: Pattern[]
}

/** Whether no wanted piece goes into the room that is left. */
const isFull = (room: number, times: readonly number[], { sizes, wanted }: Listing): boolean =>
  sizes.every((size, at) => size > room || (times[at] ?? 0) >= (wanted[at] ?? 0))

const listFrom = (stock: number, room: number, least: number, listing: Listing): void => {
  const { sizes, wanted, prices, best, work, patterns } = listing
  const times: number[] = []
  const visit = (at: number, free: number, worth: number): void => {
    spend(work, 20)
    if (patterns.length > MOST_PATTERNS || work.left <= 0 || worth + best(at, free) < least) return
    const size = sizes[at]
    if (size === undefined) {
      if (!isFull(free, times, listing)) return
      const used = [...times.keys()].filter((each) => (times[each] ?? 0) > 0)
      if (used.length > 0) patterns.push({ stock, sizes: used, times: used.map((each) => times[each] ?? 0) })
      return
    }
    for (let count = Math.min(wanted[at] ?? 0, Math.floor(free / size)); count >= 0; count -= 1) {
      times[at] = count
      visit(at + 1, free - count * size, worth + count * (prices[at] ?? 0))
    }
    times[at] = 0
  }
  visit(0, room, 0)
}

/** Every full pattern that can be in an answer to the question; undefined where they are too many to search. */
export const patternsThatMatter = (
  question: Question,
  { prices, worths, total }: Cut,
  packing: Packing,
  work: Work,
): Pattern[] | undefined => {
  const { wanted, boards } = question
  const knapsack = knapsackOf(packing, wanted, prices)
  spend(work, knapsack.cells)
  const gap = dot(worths, boards) - total
  const listing: Listing = { sizes: packing.sizes, wanted, prices, best: knapsack.best, work, patterns: [] }
  for (const [stock, { room }] of packing.stocks.entries())
    if ((boards[stock] ?? 0) > 0) listFrom(stock, room, (worths[stock] ?? 0) - gap, listing)
  return listing.patterns.length > MOST_PATTERNS || work.left <= 0 ? undefined : listing.patterns
}
