import { leastCounts } from './counts'
import type { Measure } from './counts'
import { decide } from './decide'
import type { Allowance } from './decide'
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
}

/** Fills numbers of boards that the own search left open, or gives up. */
export type Filler = (undecided: Undecided) => Promise<readonly Filled[] | undefined>

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
  /** Undecided ones that the filler has not been asked about. */
  unasked: readonly Undecided[]
  readonly filler: Filler | undefined
  readonly onBetter: (filled: readonly Filled[], values: Values, bound: number) => void
  filled: readonly Filled[] | undefined
  values: Values
  bound: number
}

/** Part of the work that the first dive may take: a long list needs much of it, a short one hardly any. */
const DIVE_SHARE = 1 / 3
/** Undecided numbers of boards beyond which the search gives up: alone, and where a filler looks at them as well. */
const MOST_UNDECIDED = 12
const MOST_ASKED = 60
/** Part of the work that one decision may take. */
const DECISION_SHARE = 1 / 6
/** Part of the work, about a second's, after which a filler is asked and decisions of the own search are given less. */
const OWN_SHARE = 2 / 5
const SHORT_SHARE = 1 / 60

const isLess = (these: Values, those: Values): boolean => {
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

const valuesOf = (filled: readonly Filled[], packing: Packing): number[] => {
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

/** Whether it is time to ask someone else as well. */
const isLate = ({ filler, work, budget }: Hunt): boolean =>
  filler !== undefined && work.left < budget * (1 - OWN_SHARE)

/** A dive may take half of what is left: of a long list no less comes to an end. */
const allowanceOf = (hunt: Hunt): Allowance => {
  const { work, budget } = hunt
  if (isLate(hunt)) return { dive: budget * SHORT_SHARE, search: budget * SHORT_SHARE }
  return { dive: Math.max((budget * DECISION_SHARE) / 2, work.left / 2), search: budget * DECISION_SHARE }
}

/** Asks the filler about what was left open and may still be better than the best known, least cost first. */
const askFiller = async (hunt: Hunt): Promise<void> => {
  const { filler, packing, undecided, excluded } = hunt
  const open = hunt.unasked.toSorted((a, b) => addedBy(a.boards, packing, 0) - addedBy(b.boards, packing, 0))
  hunt.unasked = []
  for (const each of open) {
    const values = AIMS.map((aim) => addedBy(each.boards, packing, aim))
    const filled = isLess(values, hunt.values) ? await filler?.(each) : undefined
    if (filled === undefined) continue
    undecided.splice(undecided.indexOf(each), 1)
    // Fewer boards may do as well at the same cost, where some cost nothing: that is open again.
    excluded.splice(excluded.indexOf(each.boards), 1)
    offer(hunt, filled)
  }
}

/**
 * Tries the least numbers of boards that are left, over and over, until none is better than the best known. Returns the least that
 * the aim can be, as far as it is shown.
 */
const reach = async (hunt: Hunt, aim: number): Promise<number> => {
  const { packing, pool, work, most, cuts, excluded, undecided, filler } = hunt
  let least = aim > 0 && isInDoubt(hunt) ? 0 : Infinity
  const lower = (value: number): void => {
    least = Math.min(least, value)
    if (aim === 0) hunt.bound = Math.min(least, hunt.values[0] ?? Infinity)
  }
  let reached = 0
  for (;;) {
    if (isLate(hunt)) await askFiller(hunt)
    const numbers = leastCounts({ measures: measuresOf(hunt, aim), cuts, most, excluded }, work)
    if (numbers === 'none' && filler !== undefined && hunt.unasked.length > 0) {
      await askFiller(hunt)
      continue
    }
    if (numbers === 'none') return Math.min(least, hunt.values[aim] ?? Infinity)
    if (numbers === 'stopped') return Math.min(least, reached)
    reached = addedBy(numbers, packing, aim)
    if (aim === 0) hunt.bound = Math.min(least, reached)
    if (undecided.length >= (isLate(hunt) ? MOST_ASKED : MOST_UNDECIDED) || work.left <= 0)
      return Math.min(least, reached)
    const decision = decide(numbers, packing, pool, work, allowanceOf(hunt))
    if (decision.kind === 'filled') offer(hunt, decision.filled)
    if (decision.kind === 'cut') cuts.push(decision.cut)
    if (decision.kind === 'none' || decision.kind === 'open') excluded.push(numbers)
    if (decision.kind === 'open') {
      const open = { boards: numbers, patterns: decision.patterns }
      undecided.push(open)
      hunt.unasked = [...hunt.unasked, open]
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
export const solvePacking = async (
  packing: Packing,
  start: Values,
  work: Work,
  onBetter: Hunt['onBetter'],
  filler?: Filler,
): Promise<Solved> => {
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
    unasked: [],
    filler,
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
    const least = await reach(hunt, aim)
    if (aim === 0) hunt.bound = least
    proven[aim] = least >= (hunt.values[aim] ?? Infinity)
    if (proven[aim] !== true) break
  }
  const { filled, values, bound } = hunt
  return { filled, values, bound, proven, cut: relaxed.cut, scale: relaxed.scale }
}
