import { csvText } from '../model/csv'
import { clean, type Cell, type Column, type Table, type ValueUnit } from '../model/table'

/** How the unit of a bare number stands in the head of its column. */
const unitNames: Readonly<Record<Exclude<ValueUnit, 'text'>, string>> = {
  mm: 'mm',
  'mm/m': 'mm/m',
  L: 'L',
  'L/h': 'L/h',
  'L/min': 'L/min',
  'm/s': 'm/s',
  W: 'W',
  min: 'min',
  h: 'h',
  cents: 'cents',
  count: 'number',
  share: 'share of 1',
  kg: 'kg',
  N: 'N',
  MPa: 'MPa',
  'N·mm': 'N·mm',
  ratio: 'ratio',
}

const headsOf = ({ title, unit }: Column): readonly string[] =>
  unit === 'text' ? [title] : [title, `${title} (${unitNames[unit]})`]

const bare = (value: Cell['value'] | undefined): string | number =>
  typeof value === 'number' ? clean(value) : (value ?? '')

/** Numbers as programs are given them, with a full stop as the decimal sign and no thousands apart. */
const fieldsOf = (column: Column, cell: Cell | undefined): readonly (string | number)[] =>
  column.unit === 'text' ? [cell?.text ?? ''] : [cell?.text ?? '', bare(cell?.value)]

/**
 * A table as a file for spreadsheets: its heads as the crew reads them, every row and sum in its order. A column of numbers stands
 * twice, as the crew reads it and as the bare number, whose unit is in its head; nothing stands where nothing is known.
 */
export const tableCsv = ({ columns, rows }: Table): string =>
  csvText([
    columns.flatMap(headsOf),
    ...rows.map(({ cells }) => columns.flatMap((column, index) => fieldsOf(column, cells[index]))),
  ])
