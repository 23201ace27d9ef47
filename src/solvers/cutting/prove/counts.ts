import { leastBound } from './countsBound'
import type { Row } from './countsBound'
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
  /** Numbers of boards that won't do, and so none do that have no more of any. */
  readonly excluded: readonly (readonly number[])[]
}

/** The numbers of boards, 'none' where no numbers keep all, or 'stopped' where the work was used up first. */
export type Counts = readonly number[] | 'none' | 'stopped'

interface Search {
  readonly question: CountsQuestion
  /** Stocks to be chosen, in the order of the search. */
  readonly order: readonly number[]
  readonly numbers: number[]
  readonly work: Work
  /** The most that the first measure may come to: one less than the best found. */
  limit: number
  best: readonly number[] | undefined
}

/** Stocks that add nothing to any measure are all used: more boards never do less. */
const isFree = (stock: number, { measures }: CountsQuestion): boolean =>
  measures.every(({ adds }) => (adds[stock] ?? 0) === 0)

const pick = (values: readonly number[], order: readonly number[], depth: number): number[] =>
  order.slice(depth).map((stock) => values[stock] ?? 0)

/** What the rest must bring, or may come to, once numbers are chosen as far as `depth`. */
const restOf = (of: readonly number[], value: number, { order, numbers }: Search, depth: number): Row => ({
  of: pick(of, order, depth),
  value: value - dot(of, numbers),
})

/** What the stocks from `depth` on must bring to each cut, and may come to in each measure. */
const rowsFrom = (search: Search, depth: number): { readonly least: Row[]; readonly most: Row[] } => {
  const { question, limit } = search
  return {
    least: question.cuts.map(({ worths, total }) => restOf(worths, total, search, depth)),
    most: question.measures
      .map(({ adds, most: top }, i) => restOf(adds, i === 0 ? limit : top, search, depth))
      .filter(({ value }) => Number.isFinite(value)),
  }
}

const spendOn = ({ least, most }: ReturnType<typeof rowsFrom>, stocks: number, work: Work): void =>
  spend(work, 2_000 + 40 * stocks * (least.length + most.length + stocks))

/** The least that `aim` of the stocks from `depth` on can be, all cuts and measures kept. */
const boundFrom = (aim: readonly number[], search: Search, depth: number): number => {
  const { question, order, work } = search
  const { least, most } = rowsFrom(search, depth)
  const lacking = least.filter(({ value }) => value > 0)
  spendOn({ least: lacking, most }, order.length - depth, work)
  return leastBound(pick(aim, order, depth), lacking, most, pick(question.most, order, depth))
}

/**
 * The most that the stock at `depth` can be, all cuts and measures kept: all there are, less the least that can be left of them. That
 * its numbers can be only up to here is shown by a bound, and not taken from one number that can't be.
 */
const endFrom = (stock: number, search: Search, depth: number): number => {
  const { question, order, numbers, work } = search
  const all = question.most[stock] ?? 0
  numbers[stock] = 0
  const { least, most } = rowsFrom(search, depth)
  const left = ({ of: [own = 0, ...others], value }: Row): Row => ({
    of: [-own, ...others],
    value: value - own * all,
  })
  const aim = order.slice(depth).map((_, at) => (at === 0 ? 1 : 0))
  spendOn({ least, most }, order.length - depth, work)
  const unused = leastBound(aim, least.map(left), most.map(left), pick(question.most, order, depth))
  return all - Math.max(0, Math.ceil(unused))
}

const unit = (length: number, at: number): number[] => Array.from({ length }, (_, i) => (i === at ? 1 : 0))

const isExcluded = ({ numbers, question }: Search): boolean =>
  question.excluded.some((each) => numbers.every((number, stock) => number <= (each[stock] ?? 0)))

const spentOf = ({ adds }: Measure, { numbers }: Search): number => dot(adds, numbers)

/** Whether the numbers so far go beyond a measure. */
const isOver = (search: Search): boolean =>
  search.question.measures.some(
    (measure, i) => spentOf(measure, search) > (i === 0 ? search.limit : measure.most),
  )

/** How many of the last stock the cuts want. */
const lastNeed = (stock: number, { question, numbers }: Search): number => {
  let need = 0
  for (const { worths, total } of question.cuts) {
    const lacks = total - dot(worths, numbers)
    if (lacks > 0) need = Math.max(need, Math.ceil(lacks / (worths[stock] ?? 0)))
  }
  return need
}

/** The last stock follows from the others: as few as the cuts want, or more where those are excluded. */
const visitLast = (search: Search, stock: number): void => {
  const { numbers, question, work } = search
  spend(work, 60 + 16 * numbers.length * question.cuts.length)
  for (let number = lastNeed(stock, search); number <= (question.most[stock] ?? 0); number += 1) {
    numbers[stock] = number
    if (isOver(search)) break
    if (isExcluded(search)) continue
    search.best = [...numbers]
    search.limit = spentOf(question.measures[0], search) - 1
    break
  }
  numbers[stock] = 0
}

/** Of more than two stocks left, whether they can keep all; of two it is as quick to try. */
const isHopeless = (search: Search, depth: number): boolean => {
  if (search.order.length - depth < 2) return false
  const [aim] = search.question.measures
  return boundFrom(aim.adds, search, depth) > search.limit - spentOf(aim, search)
}

/** Numbers of the stock at `depth`, from the least that is possible until no more are. */
const visit = (search: Search, depth: number, enough: number): void => {
  const { order, numbers, question, work } = search
  const stock = order[depth]
  if (stock === undefined) return
  if (depth === order.length - 1) return visitLast(search, stock)
  const isPlain = order.length - depth <= 2
  const start = isPlain ? 0 : Math.max(0, Math.ceil(boundFrom(unit(numbers.length, stock), search, depth)))
  let end = question.most[stock] ?? 0
  for (let number = start; number <= end && search.limit >= enough && work.left > 0; number += 1) {
    numbers[stock] = number
    if (isOver(search)) break
    if (!isHopeless(search, depth + 1)) visit(search, depth + 1, enough)
    else if (number > start) end = Math.min(end, endFrom(stock, search, depth))
  }
  numbers[stock] = 0
}

/**
 * The least numbers of boards, by the first measure, that keep every cut and condition. The least that a bound leaves possible
 * is looked for first, then ever wider ranges over it, so that a range is searched only when all below it is empty.
 */
export const leastCounts = (question: CountsQuestion, work: Work): Counts => {
  const [aim] = question.measures
  const free = [...question.most.keys()].filter(
    (stock) => isFree(stock, question) || (question.measures.length === 1 && aim.adds[stock] === 0),
  )
  const order = [...question.most.keys()].filter((stock) => !free.includes(stock))
  const numbers = question.most.map((each, stock) => (free.includes(stock) ? each : 0))
  // All boards that there are come to no more.
  const top = Math.min(aim.most, dot(aim.adds, question.most))
  const search: Search = { question, order, numbers, work, limit: top, best: undefined }
  if (order.length === 0)
    return isExcluded(search) ||
      isOver(search) ||
      question.cuts.some(({ worths, total }) => dot(worths, numbers) < total)
      ? 'none'
      : numbers
  const from = Math.max(0, Math.ceil(boundFrom(aim.adds, search, 0)))
  for (let width = 0, low = from; low <= top; width = width * 2 + 1, low = search.limit + 1) {
    search.limit = Math.min(top, low + width)
    visit(search, 0, low)
    if (work.left <= 0) return 'stopped'
    if (search.best !== undefined) return search.best
  }
  return 'none'
}
