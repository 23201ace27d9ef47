import type { Row, Table } from '../model/table'

/** A cell that says something else than it did. */
export interface CellChange {
  readonly column: string
  readonly from: string
  readonly to: string
}

/** What became of a row: `name` is what its column of names says, or its first words. */
export interface RowChange {
  readonly key: string
  readonly name: string
  readonly kind: 'added' | 'gone' | 'changed'
  readonly cells: readonly CellChange[]
}

export interface TableChange {
  readonly id: string
  readonly title: string
  readonly rows: readonly RowChange[]
}

const nameOf = ({ cells, key }: Row, { columns }: Table): string => {
  const named = cells[columns.findIndex(({ isName }) => isName)]
  return [...(named ? [named] : []), ...cells].find(({ text }) => text !== '')?.text ?? key
}

const cellChanges = (before: Row, after: Row, { columns }: Table): readonly CellChange[] =>
  columns.flatMap(({ title }, index) => {
    const from = before.cells[index]?.text ?? ''
    const to = after.cells[index]?.text ?? ''
    return from === to ? [] : [{ column: title, from, to }]
  })

const rowChanges = (before: Table | undefined, after: Table | undefined): readonly RowChange[] => {
  const was = new Map(before?.rows.map((row) => [row.key, row]))
  const is = new Map(after?.rows.map((row) => [row.key, row]))
  const stays = (after?.rows ?? []).flatMap((row): RowChange[] => {
    const { key } = row
    const old = was.get(key)
    if (!after) return []
    if (!old) return [{ key, name: nameOf(row, after), kind: 'added', cells: [] }]
    const cells = cellChanges(old, row, after)
    return cells.length === 0 ? [] : [{ key, name: nameOf(row, after), kind: 'changed', cells }]
  })
  const gone = (before?.rows ?? []).flatMap((row): RowChange[] =>
    !before || is.has(row.key) ? [] : [{ key: row.key, name: nameOf(row, before), kind: 'gone', cells: [] }],
  )
  return [...stays, ...gone]
}

/** What differs between two states of the same tables, by their ids, rows by their keys; nothing of what is alike. In the order of `after`. */
export const tableChanges = (before: readonly Table[], after: readonly Table[]): readonly TableChange[] => {
  const was = new Map(before.map((table) => [table.id, table]))
  const known = new Set(after.map(({ id }) => id))
  const pairs = [
    ...after.map((table) => [was.get(table.id), table] as const),
    ...before.filter(({ id }) => !known.has(id)).map((table) => [table, undefined] as const),
  ]
  return pairs.flatMap(([old, table]) => {
    const rows = rowChanges(old, table)
    const { id, title } = table ?? old ?? { id: '', title: '' }
    return rows.length === 0 ? [] : [{ id, title, rows }]
  })
}
