import { leastCounts } from './counts'
import type { Measure } from './counts'
import { decide } from './decide'
import { dive, nothingLeft } from './dive'
import { AIMS, addedBy, within } from './packing'
import type { Filled, Packing, Pattern, Work } from './packing'
import { emptyPool, heavyMissing, relax } from './relaxation'
import type { Cut, Pool, Question } from './relaxation'

/*
 * What a plan costs, how many boards it has and what length it buys depends on nothing but how many boards of each stock it
 * has. So the search goes over numbers of boards. Prices of the sizes give cuts: what boards are worth, put together, must reach
 * what all pieces are worth. The least numbers that keep all cuts known so far are tried: either they break a new cut, or a
 * filling is found, or a search of all patterns that can matter shows that there is none; until the least that is left is no
 * better than the best filling known. Then the next aim, among the numbers that reach those before it.
 */

/** Fillings found so far are as good as this, aim by aim. */
export type Values = readonly number[]

/** Numbers of boards that could not be decided, with the patterns that might make them do. */
export interface Undecided {
  readonly boards: readonly number[]
  readonly patterns: readonly Pattern[] | undefined
}

export interface Solved {
  /** Undefined where nothing better than the start was found. */
  readonly filled: readonly Filled[] | undefined
  readonly values: Values
  /** No filling has less of the first aim. */
  readonly bound: number
  /** Which aims are shown to be reached, each among the fillings that reach the ones before it. */
  readonly proven: readonly boolean[]
  /** The first cut: the best that prices alone can show of the first aim. */
  readonly cut: Cut
  readonly scale: number
  readonly undecided: readonly Undecided[]
}

/** How far a search has come; changed in place as it goes on. */
interface Hunt {
  readonly packing: Packing
  readonly pool: Pool
  readonly work: Work
  readonly budget: number
  readonly most: readonly number[]
  readonly cuts: Cut[]
  readonly excluded: (readonly number[])[]
  readonly undecided: Undecided[]
  readonly onBetter: (filled: readonly Filled[], values: Values, bound: number) => void
  filled: readonly Filled[] | undefined
  values: Values
  bound: number
}

/** Part of the work that the first dive may take: a long list needs much of it, a short one hardly any. */
const DIVE_SHARE = 1 / 3
/** Undecided numbers of boards beyond which the search gives up. */
const MOST_UNDECIDED = 12
/** Part of the work that one decision may take. */
const DECISION_SHARE = 1 / 6

export const isLess = (these: Values, those: Values): boolean => {
  for (const [aim, value] of these.entries()) {
    const other = those[aim] ?? Infinity
    if (value !== other) return value < other
  }
  return false
}

const boardsOf = (filled: readonly Filled[], { stocks }: Packing): number[] => {
  const boards = stocks.map(() => 0)
  for (const { pattern, count } of filled) boards[pattern.stock] = (boards[pattern.stock] ?? 0) + count
  return boards
}

export const valuesOf = (filled: readonly Filled[], packing: Packing): number[] => {
  const boards = boardsOf(filled, packing)
  return AIMS.map((aim) => addedBy(boards, packing, aim))
}

const offer = (hunt: Hunt, filled: readonly Filled[] | undefined): void => {
  if (filled === undefined) return
  const values = valuesOf(filled, hunt.packing)
  if (!isLess(values, hunt.values)) return
  hunt.filled = filled
  hunt.values = values
  hunt.onBetter(filled, values, hunt.bound)
}

/** The aim and those before it, which must not get worse than they are known to be. */
const measuresOf = ({ packing, values }: Hunt, aim: number): [Measure, ...Measure[]] => {
  const measure = (each: number, most: number): Measure => ({
    adds: packing.stocks.map(({ adds }) => adds[each] ?? 0),
    most,
  })
  return [
    measure(aim, (values[aim] ?? Infinity) - 1),
    ...AIMS.slice(0, aim).map((each) => measure(each, values[each] ?? Infinity)),
  ]
}

/** Whether numbers of boards that cost no more than the best filling known could not be decided. */
const isInDoubt = ({ undecided, packing, values }: Hunt): boolean =>
  undecided.some(({ boards }) => addedBy(boards, packing, 0) <= (values[0] ?? Infinity))

/**
 * Tries the least numbers of boards that are left, over and over, until none is better than the best known. Returns the least that
 * the aim can be, as far as it is shown.
 */
const reach = (hunt: Hunt, aim: number): number => {
  const { packing, pool, work, budget, most, cuts, excluded, undecided } = hunt
  let least = aim > 0 && isInDoubt(hunt) ? 0 : Infinity
  const lower = (value: number): void => {
    least = Math.min(least, value)
    if (aim === 0) hunt.bound = Math.min(least, hunt.values[0] ?? Infinity)
  }
  let reached = 0
  for (;;) {
    const numbers = leastCounts({ measures: measuresOf(hunt, aim), cuts, most, excluded }, work)
    if (numbers === 'none') return Math.min(least, hunt.values[aim] ?? Infinity)
    if (numbers === 'stopped') return Math.min(least, reached)
    reached = addedBy(numbers, packing, aim)
    if (aim === 0) hunt.bound = Math.min(least, reached)
    if (undecided.length >= MOST_UNDECIDED || work.left <= 0) return Math.min(least, reached)
    const decision = decide(numbers, packing, pool, work, budget * DECISION_SHARE)
    if (decision.kind === 'filled') offer(hunt, decision.filled)
    if (decision.kind === 'cut') cuts.push(decision.cut)
    if (decision.kind === 'none' || decision.kind === 'open') excluded.push(numbers)
    if (decision.kind === 'open') {
      undecided.push({ boards: numbers, patterns: decision.patterns })
      lower(reached)
    }
  }
}

/** The first question: any boards that there are, at their cost. */
const firstQuestion = (packing: Packing): Question => {
  const costs = packing.stocks.map(({ adds }) => adds[0] ?? 0)
  return {
    wanted: packing.counts,
    boards: packing.stocks.map(({ most }) => most),
    costs,
    missing: heavyMissing(packing, costs),
  }
}

/** The best filling of a packing, as far as the work goes, with what is shown of it; `start` is how good a known plan is. */
export const solvePacking = (
  packing: Packing,
  start: Values,
  work: Work,
  onBetter: Hunt['onBetter'],
): Solved => {
  const pool = emptyPool()
  const question = firstQuestion(packing)
  const relaxed = relax(question, packing, pool, work)
  const hunt: Hunt = {
    packing,
    pool,
    work,
    budget: work.left,
    most: question.boards,
    cuts: [relaxed.cut],
    excluded: [],
    undecided: [],
    onBetter,
    filled: undefined,
    values: start,
    bound: 0,
  }
  const dived = within(work, work.left * DIVE_SHARE, (part) =>
    dive(question, packing, pool, part, 0, nothingLeft, relaxed),
  )
  offer(hunt, dived)
  const proven = AIMS.map(() => false)
  for (const aim of AIMS) {
    const least = reach(hunt, aim)
    if (aim === 0) hunt.bound = least
    proven[aim] = least >= (hunt.values[aim] ?? Infinity)
    if (proven[aim] !== true) break
  }
  const { filled, values, bound, undecided } = hunt
  return { filled, values, bound, proven, cut: relaxed.cut, scale: relaxed.scale, undecided }
}
