import type { Cell, Column, Row, Table } from '../model/table'
import type { Failing } from './failing'

export const REPORT_FORMAT = 'kerf-and-fall/report'
export const REPORT_VERSION = 1

/** Ends in a line break, as files do. */
export const jsonText = (value: object): string => `${JSON.stringify(value, null, 2)}\n`

export const reportHead = (of: 'bay' | 'sheet' | 'difference') => ({
  format: REPORT_FORMAT,
  version: REPORT_VERSION,
  of,
})

/** No words in a column of numbers, not even none. */
const valueOf = ({ unit }: Column, cell: Cell | undefined): Cell['value'] => {
  const value = cell?.value ?? null
  return unit !== 'text' && value === '' ? null : value
}

/** A row by the keys of its columns: the values, in the units that the keys name. */
export const valuesOf = ({ columns }: Pick<Table, 'columns'>, { cells }: Row) =>
  Object.fromEntries(columns.map((column, index) => [column.key, valueOf(column, cells[index])]))

/** What fails the plan, for a script that reads the file instead of the exit code. */
export const failsJson = ({ on, counts, accepted }: Failing) => ({
  on,
  fails: counts.length > 0,
  counts: Object.fromEntries(counts.map(({ state, count }) => [state, count])),
  accepted,
})

/** The whole report: the bay as an object, then every table as a list of its rows. */
export const reportJson = (tables: readonly Table[], failing: Failing): string => {
  const [bay, ...rest] = tables
  const [first] = bay?.rows ?? []
  return jsonText({
    ...reportHead('bay'),
    bay: bay && first ? valuesOf(bay, first) : null,
    failing: failsJson(failing),
    ...Object.fromEntries(rest.map((table) => [table.id, table.rows.map((row) => valuesOf(table, row))])),
  })
}
