import type { Highs, HighsSolution } from 'highs'
import type { IntegerProgram, IntegerSolver } from '../../solvers/cutting/proof'
import { isHopeless, programText } from './integerProgram'

/** Branches of a search before it gives up: a count, not a time, so that a list is proved or not alike on every machine. */
const MOST_NODES = 20_000

/** Costs are whole, so a plan less than one of them over the bound is the cheapest; half of one leaves room for rounding. */
const SAME_COST = 0.5

const OPTIONS = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: SAME_COST,
  mip_max_nodes: MOST_NODES,
  random_seed: 0,
} as const

const countsOf = ({ columns }: IntegerProgram, solution: HighsSolution): number[] =>
  columns.map((_, index) => {
    const column = solution.Columns[`c${index}`]
    return column !== undefined && 'Primal' in column ? Math.round(column.Primal) : 0
  })

/** Whether whole counts keep to every row and to what there is: a float that was rounded may not. */
const isKept = ({ columns, needs }: IntegerProgram, counts: readonly number[]): boolean => {
  const given = needs.map(() => 0)
  for (const [index, { gives }] of columns.entries())
    for (const [row, amount] of gives) given[row] = (given[row] ?? 0) + amount * (counts[index] ?? 0)
  return (
    given.every((amount, row) => amount >= (needs[row] ?? 0)) &&
    columns.every(({ most }, index) => (counts[index] ?? 0) <= most)
  )
}

/** An integer solver over the loaded package; it gives up, with undefined, where it finds no whole counts within its limit. */
export const solverOver =
  (loading: Promise<Highs>): IntegerSolver =>
  async (program) => {
    if (isHopeless(program)) return undefined
    const highs = await loading
    const solution = highs.solve(programText(program), OPTIONS)
    const counts = countsOf(program, solution)
    if (!isKept(program, counts)) return undefined
    return { counts, isOptimal: solution.Status === 'Optimal' }
  }
