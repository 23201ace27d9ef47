import type { IntegerProgram } from '../../solvers/cutting/proof'

/** Lines of the text are kept short: readers of the format may refuse long ones. */
const TERMS_A_LINE = 12

const linesOf = (terms: readonly string[]): string => {
  const lines: string[] = []
  for (let at = 0; at < terms.length; at += TERMS_A_LINE)
    lines.push(` ${terms.slice(at, at + TERMS_A_LINE).join(' ')}`)
  return lines.join('\n')
}

const term = (amount: number, name: string): string => `+ ${amount} ${name}`

/** The least sum has to have a term, also where all columns are free. */
const costTerms = ({ columns }: IntegerProgram): string[] =>
  columns.map(({ cost }, index) => term(cost, `c${index}`))

/** For each row, what every column gives of it. */
const rowTerms = ({ columns, needs }: IntegerProgram): string[][] => {
  const rows: string[][] = needs.map(() => [])
  for (const [index, { gives }] of columns.entries())
    for (const [row, amount] of gives) rows[row]?.push(term(amount, `c${index}`))
  return rows
}

/** A need that no column gives anything of can't be met. */
export const isHopeless = (program: IntegerProgram): boolean =>
  rowTerms(program).some((terms, row) => terms.length === 0 && (program.needs[row] ?? 0) > 0)

/** An integer program in the LP text format (CPLEX form), its columns `c0`, `c1` ... */
export const programText = (program: IntegerProgram): string => {
  const rows = rowTerms(program)
  const constraints = rows.flatMap((terms, row) =>
    terms.length > 0 ? [` r${row}:\n${linesOf(terms)} >= ${program.needs[row] ?? 0}`] : [],
  )
  const bounds = program.columns.map(({ most }, index) =>
    Number.isFinite(most) ? ` 0 <= c${index} <= ${most}` : ` c${index} >= 0`,
  )
  const names = program.columns.map((_, index) => `c${index}`)
  return [
    'Minimize',
    ' cost:',
    linesOf(costTerms(program)),
    'Subject To',
    ...constraints,
    'Bounds',
    ...bounds,
    'General',
    linesOf(names),
    'End',
    '',
  ].join('\n')
}
