import { after, fillGreedily } from './dive'
import { dot, spend } from './packing'
import type { Filled, Packing, Pattern, Work } from './packing'
import type { Question } from './relaxation'
import { improve, simplexOf, usedColumns } from './simplex'
import type { Column } from './simplex'

/*
 * Exact search: whether boards of a complete list of patterns hold all that is wanted. Branch and bound on how often a pattern is
 * used. A branch is closed only where prices in whole numbers show that its boards can't do, so that no answer is lost to
 * rounding.
 */

/** A pattern that may be used at most so often. */
interface Choice {
  readonly pattern: Pattern
  readonly most: number
}

interface Branch {
  readonly question: Question
  readonly choices: readonly Choice[]
}

export type Found = readonly Filled[] | 'none' | 'stopped'

const MOST_PIVOTS = 5_000
const GREATEST_SCALE = 2 ** 24
const WHOLE = 1e-6

/** A choice as a column: no size oftener than it is wanted, since more of it covers nothing more. */
const columnOf = (
  { pattern }: Choice,
  { wanted, boards }: Question,
  limitRow: number | undefined,
): Column => {
  const { stock, sizes, times } = pattern
  return {
    cost: 0,
    rows: [
      ...sizes,
      wanted.length + stock,
      ...(limitRow === undefined ? [] : [wanted.length + boards.length + limitRow]),
    ],
    amounts: [
      ...sizes.map((size, i) => Math.min(times[i] ?? 0, wanted[size] ?? 0)),
      1,
      ...(limitRow === undefined ? [] : [1]),
    ],
  }
}

/** What a column covers at these prices. */
const coverOf = ({ rows, amounts }: Column, prices: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < rows.length; i += 1) sum += (amounts[i] ?? 0) * (prices[rows[i] ?? 0] ?? 0)
  return sum
}

/**
 * Whether at these whole prices all boards together cover less than is wanted: a board of a stock covers what its best unlimited
 * pattern does, or `floors`, and each use of a limited one may cover more.
 */
const isShort = (
  { question, choices }: Branch,
  columns: readonly Column[],
  prices: readonly number[],
  floors: readonly number[],
): boolean => {
  const { boards, wanted } = question
  const most = [...floors]
  const covers = columns.map((column) => coverOf(column, prices))
  for (const [i, choice] of choices.entries())
    if (choice.most >= (boards[choice.pattern.stock] ?? 0))
      most[choice.pattern.stock] = Math.max(most[choice.pattern.stock] ?? 0, covers[i] ?? 0)
  let more = 0
  for (const [i, choice] of choices.entries())
    more += choice.most * Math.max(0, (covers[i] ?? 0) - (most[choice.pattern.stock] ?? 0))
  return dot(most, boards) + more < dot(wanted, prices)
}

const usable = ({ question, choices }: Branch): Choice[] =>
  choices.filter(
    ({ pattern, most }) =>
      most > 0 &&
      (question.boards[pattern.stock] ?? 0) > 0 &&
      pattern.sizes.some((size) => (question.wanted[size] ?? 0) > 0),
  )

/** Whether so many of each pattern cover all. */
const covers = (filled: readonly Filled[], question: Question): boolean => {
  const rest = filled.reduce(after, question)
  return rest.wanted.every((each) => each === 0) && rest.boards.every((each) => each >= 0)
}

/** Parts of patterns that cover all in the branch, or that there are none, or neither could be shown. */
const solveBranch = (
  branch: Branch,
  { sizes }: Packing,
  work: Work,
): (readonly [Choice, number])[] | 'none' | 'stopped' => {
  const { question, choices } = branch
  const { wanted, boards } = question
  const limited = choices.filter(({ pattern, most }) => most < (boards[pattern.stock] ?? 0))
  const rowOf = new Map(limited.map((choice, row) => [choice, row]))
  const columns = choices.map((choice) => columnOf(choice, question, rowOf.get(choice)))
  const simplex = simplexOf(wanted, [...boards, ...limited.map(({ most }) => most)], sizes)
  const size = simplex.level.length
  const steps = improve(simplex, columns, sizes[0] ?? 1, MOST_PIVOTS)
  spend(work, (steps + 3) * (2 * size * size + columns.length * 16))
  const scale = Math.min(
    GREATEST_SCALE,
    2 ** Math.floor(Math.log2(2 ** 50 / Math.max(1, dot(wanted, sizes)))),
  )
  const prices = wanted.map((_, at) => Math.max(0, Math.floor((simplex.prices[at] ?? 0) * scale)))
  const floors = boards.map((_, stock) =>
    Math.max(0, Math.ceil(-(simplex.prices[wanted.length + stock] ?? 0) * scale)),
  )
  if (isShort(branch, columns, prices, floors)) return 'none'
  const used = usedColumns(simplex).flatMap(([index, count]) => {
    const choice = choices[index]
    return choice === undefined ? [] : [[choice, count] as const]
  })
  const covered = new Float64Array(wanted.length)
  for (const [{ pattern }, count] of used)
    for (const [i, at] of pattern.sizes.entries())
      covered[at] = (covered[at] ?? 0) + count * (pattern.times[i] ?? 0)
  // Rounding left it open: neither covered nor shown to be short.
  return wanted.some((each, at) => (covered[at] ?? 0) < each - 1e-4) ? 'stopped' : used
}

/** Of the patterns used in part, the one that is nearest to the next whole number. */
const splitting = (used: readonly (readonly [Choice, number])[]): readonly [Choice, number] | undefined => {
  let best: readonly [Choice, number] | undefined
  let part = WHOLE
  for (const each of used) {
    const over = each[1] - Math.floor(each[1] + WHOLE)
    if (over > part) [best, part] = [each, over]
  }
  return best
}

const searchBranch = (branch: Branch, packing: Packing, work: Work): Found => {
  if (branch.question.wanted.every((each) => each === 0)) return []
  const greedy = fillGreedily(branch.question, packing)
  if (greedy !== undefined) return greedy
  if (work.left <= 0) return 'stopped'
  const open = { ...branch, choices: usable(branch) }
  const used = solveBranch(open, packing, work)
  if (used === 'none' || used === 'stopped') return used
  const split = splitting(used)
  if (split === undefined) {
    const filled = used.map(([{ pattern }, count]) => ({ pattern, count: Math.round(count) }))
    return covers(filled, open.question) ? filled : 'stopped'
  }
  const [chosen, count] = split
  const up = { pattern: chosen.pattern, count: Math.ceil(count - WHOLE) }
  const found = searchBranch(
    { question: after(open.question, up), choices: withMost(open.choices, chosen, chosen.most - up.count) },
    packing,
    work,
  )
  if (typeof found !== 'string') return [up, ...found]
  const other = searchBranch(
    { question: open.question, choices: withMost(open.choices, chosen, up.count - 1) },
    packing,
    work,
  )
  return other === 'none' ? found : other
}

const withMost = (choices: readonly Choice[], changed: Choice, most: number): Choice[] =>
  choices.map((choice) => (choice === changed ? { ...choice, most } : choice))

/** Boards of these patterns that hold all that is wanted, 'none' where it is shown that there are none, or 'stopped'. */
export const searchPatterns = (
  question: Question,
  patterns: readonly Pattern[],
  packing: Packing,
  work: Work,
): Found => {
  const choices = patterns.map((pattern) => ({ pattern, most: question.boards[pattern.stock] ?? 0 }))
  return searchBranch({ question, choices }, packing, work)
}
