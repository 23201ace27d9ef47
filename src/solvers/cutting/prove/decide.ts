import { dive, fillGreedily } from './dive'
import { sumOf, within } from './packing'
import type { Filled, Packing, Pattern, Work } from './packing'
import { patternsThatMatter } from './patternList'
import { heavyMissing, isTooFew, justFit, relax } from './relaxation'
import type { Cut, Pool, Question } from './relaxation'
import { searchPatterns } from './search'

/** Numbers of boards of which it could not be decided in time whether they do. */
export interface Open {
  readonly kind: 'open'
  /** All patterns that could make them do, where these are few enough to list. */
  readonly patterns: readonly Pattern[] | undefined
}

/** Whether numbers of boards do: how they are filled; or a cut that they break; or that no filling exists; or not known. */
export type Decision =
  | { readonly kind: 'filled'; readonly filled: readonly Filled[] }
  | { readonly kind: 'cut'; readonly cut: Cut }
  | { readonly kind: 'none' }
  | Open

/** How often a dive may pass over its first choice. */
const SLIPS = 2

/** The most work that may go into a dive, and into a search of all patterns. */
export interface Allowance {
  readonly dive: number
  readonly search: number
}

const questionOf = (boards: readonly number[], { stocks, counts, ...rest }: Packing): Question => {
  const byCost = stocks.map(({ adds }) => adds[0] ?? 0)
  const isFree = sumOf(byCost.map((cost, stock) => cost * (boards[stock] ?? 0))) === 0
  const costs = isFree ? stocks.map(({ room }) => room) : byCost
  return { wanted: counts, boards, costs, missing: heavyMissing({ stocks, counts, ...rest }, costs) }
}

/** Shows whether the boards do in parts; a broken cut where they don't. */
const partsOf = (question: Question, packing: Packing, pool: Pool, work: Work) => {
  const relaxed = relax(question, packing, pool, work)
  if (isTooFew(relaxed.cut, question.boards)) return { relaxed, broken: relaxed.cut }
  if (relaxed.missing < 1e-6) return { relaxed, broken: undefined }
  const { cut } = relax(justFit(question, packing), packing, pool, work)
  return { relaxed, broken: isTooFew(cut, question.boards) ? cut : undefined }
}

/** Decides whether these numbers of boards of each stock hold all pieces of the packing. No more of the work goes into it than is allowed. */
export const decide = (
  boards: readonly number[],
  packing: Packing,
  pool: Pool,
  work: Work,
  most: Allowance,
): Decision => {
  const question = questionOf(boards, packing)
  const { relaxed, broken } = partsOf(question, packing, pool, work)
  if (broken !== undefined) return { kind: 'cut', cut: broken }
  const dived = within(work, most.dive, (part) =>
    dive(question, packing, pool, part, SLIPS, fillGreedily, relaxed),
  )
  if (dived !== undefined) return { kind: 'filled', filled: dived }
  const patterns = within(work, most.search / 2, (part) =>
    patternsThatMatter(question, relaxed.cut, packing, part),
  )
  if (patterns === undefined) return { kind: 'open', patterns }
  const found = within(work, most.search, (part) => searchPatterns(question, patterns, packing, part))
  if (found === 'none') return { kind: 'none' }
  return found === 'stopped' ? { kind: 'open', patterns } : { kind: 'filled', filled: found }
}
