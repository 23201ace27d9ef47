import { counted, said, type Table } from '../../model/table'
import { heading, type Piece, tableOf, words } from '../piece'
import type { SheetState } from '../sheetState'
import type { RowChange, TableChange } from '../tableChanges'

/** More changes of one sheet than this are counted, not told: its new paper tells them. */
const MOST_TOLD = 8

const sheetTable = (states: readonly SheetState[], number: number): Table => ({
  id: 'sheets',
  title: 'Papers',
  columns: [
    { key: 'code', title: 'Sheet', unit: 'text', isMain: true },
    { key: 'title', title: 'Title', unit: 'text' },
    { key: 'reader', title: 'Held by', unit: 'text' },
    { key: 'state', title: `Issue ${number} is`, unit: 'text' },
    { key: 'changes', title: 'Lines that differ', unit: 'count' },
  ],
  rows: states.map(({ sheet, state, changes }) => {
    const lines = changes.reduce((sum, { rows }) => sum + rows.length, 0)
    return {
      key: sheet.id,
      cells: [
        said(sheet.code),
        said(sheet.title),
        said(sheet.reader),
        said(state),
        counted(lines, lines > 0 ? String(lines) : ''),
      ],
    }
  }),
})

const rowSaid = ({ name, kind, cells }: RowChange): string =>
  kind === 'changed'
    ? `${name}: ${cells.map(({ column, from, to }) => `${column.toLowerCase()} ${from || 'nothing'} → ${to || 'nothing'}`).join(', ')}`
    : `${name}: ${kind === 'added' ? 'new' : 'no longer there'}`

/** One sentence a table: `Pegs. 7: cut 31-1/4" → 30-7/8".` */
export const changesSaid = (changes: readonly TableChange[]): readonly string[] =>
  changes.map(({ title, rows }) => {
    const told = rows.slice(0, MOST_TOLD).map(rowSaid)
    const more = rows.length - told.length
    return `${title}. ${told.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`
  })

/** Which papers are taken back. Sheets that still hold are in the table too, so that nobody asks. */
export const supersededPieces = (states: readonly SheetState[], number: number): readonly Piece[] => {
  const changed = states.filter(({ state }) => state !== 'Current')
  if (changed.length === 0) return []
  const gone = changed.filter(({ state }) => state !== 'New').map(({ sheet }) => sheet.code)
  return [
    ...(gone.length > 0 ? [words(`Throw away issue ${number} of ${gone.join(', ')}.`, 'big')] : []),
    tableOf(sheetTable(states, number), true),
  ]
}

/** What each superseded sheet says otherwise, row by row. */
export const differingPieces = (states: readonly SheetState[]): readonly Piece[] => {
  const told = states.filter(({ changes }) => changes.length > 0)
  if (told.length === 0) return []
  return [
    heading('What the sheets say otherwise'),
    ...told.flatMap(({ sheet, changes }) => [
      heading(`${sheet.code}, ${sheet.title}`, 2),
      ...changesSaid(changes).map((text) => words(text, 'note')),
    ]),
  ]
}
