import { Plus, X } from 'lucide-react'
import { useState } from 'react'
import type { FieldMeta } from '../model/fields'
import { fieldNumberWords } from '../model/fieldWords'
import { useLevelReading } from '../store/useLevelReading'
import type { Units } from '../units/length'
import { fieldWriter, readField } from './fieldText'
import type { LengthRow } from './houseRows'
import { Said } from './Said'
import { TypedField } from './TypedField'

interface LengthTableProps {
  /** What one row is: `Corner`, `Point`. Rows are numbered after it. */
  readonly rowName: string
  readonly columns: readonly string[]
  /** The column that holds levels above the file's zero; the others hold lengths. */
  readonly levelColumn?: string
  /** Words that stand in an empty cell of a column that may have some, by its name. */
  readonly whenEmpty?: Readonly<Record<string, string>>
  readonly rows: readonly LengthRow[]
  readonly units: Units
  /** Takes the rows as changed; a refusal comes back as its sentence. */
  readonly onRows: (rows: readonly LengthRow[]) => string | undefined
  /** The row that a press adds at the end. */
  readonly newRow: () => LengthRow
  /** The row that a press puts in after another, counted from 0; without it rows come at the end only. */
  readonly rowAfter?: (row: number) => LengthRow
  readonly leastRows: number
  readonly isDisabled?: boolean
}

const withCell = (
  rows: readonly LengthRow[],
  row: number,
  column: number,
  mm: number | undefined,
): LengthRow[] =>
  rows.map((cells, r) => (r === row ? cells.map((old, c) => (c === column ? mm : old)) : cells))

/** A table of typed lengths and levels: corners, points, spots of the floor. */
export function LengthTable(props: LengthTableProps) {
  const { rowName, columns, rows, units, onRows, newRow, rowAfter, leastRows, isDisabled = false } = props
  const { whenEmpty = {}, levelColumn } = props
  const [refusal, setRefusal] = useState<string>()
  const reading = useLevelReading()
  const writer = fieldWriter(units, reading)
  const name = rowName.toLowerCase()
  const unitOf = (column: string | undefined): FieldMeta['unit'] =>
    column !== undefined && column === levelColumn ? 'level' : 'length'
  const cellText = (mm: number | undefined, column: string) => {
    const empty = whenEmpty[column]
    return mm === undefined && empty !== undefined ? empty : fieldNumberWords(mm ?? 0, unitOf(column), writer)
  }
  const take = (row: number, column: number) => (text: string) => {
    const empty = whenEmpty[columns[column] ?? '']
    if (empty !== undefined && (text.trim() === '' || text.trim() === empty))
      return onRows(withCell(rows, row, column, undefined))
    const read = readField(unitOf(columns[column]), text, units, reading)
    return read.ok ? onRows(withCell(rows, row, column, Number(read.value))) : read.sentence
  }
  return (
    <div
      className="length-table"
      style={{ gridTemplateColumns: `auto repeat(${columns.length}, 1fr) auto auto` }}
    >
      <span />
      {columns.map((column) => (
        <span key={column} className="length-table-head" aria-hidden="true">
          {column}
        </span>
      ))}
      <span />
      <span />
      {rows.map((cells, row) => (
        // Rows have no name but their place: a changed order is a changed table.
        <div key={row} role="group" aria-label={`${rowName} ${row + 1}`}>
          <span className="length-table-number">{row + 1}</span>
          {columns.map((column, index) => (
            <TypedField
              key={column}
              label={`${rowName} ${row + 1}, ${column}`}
              isLabelHidden
              isDisabled={isDisabled}
              shown={cellText(cells[index], column)}
              onTyped={take(row, index)}
            />
          ))}
          {rowAfter ? (
            <button
              className="length-table-one"
              aria-label={`Put in a ${name} after ${row + 1}`}
              title={`Put in a ${name} after ${row + 1}`}
              disabled={isDisabled}
              onClick={() => setRefusal(onRows(rows.toSpliced(row + 1, 0, rowAfter(row))))}
            >
              <Plus size={14} aria-hidden="true" />
            </button>
          ) : (
            <span />
          )}
          <button
            className="length-table-one"
            aria-label={`Delete ${name} ${row + 1}`}
            disabled={isDisabled || rows.length <= leastRows}
            onClick={() => setRefusal(onRows(rows.filter((_, r) => r !== row)))}
          >
            <X size={14} aria-hidden="true" />
          </button>
        </div>
      ))}
      <button
        className="length-table-add"
        disabled={isDisabled}
        onClick={() => setRefusal(onRows([...rows, newRow()]))}
      >
        <Plus size={14} aria-hidden="true" /> Add {name}
      </button>
      {refusal && (
        <p role="alert" className="field-refused">
          <Said words={refusal} />
        </p>
      )}
    </div>
  )
}
