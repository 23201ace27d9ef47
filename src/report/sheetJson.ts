import type { Row, Table } from '../model/table'
import type { Piece } from '../sheets/piece'
import type { Sheet, SheetOptions } from '../sheets/sheet'
import { jsonText, reportHead, valuesOf } from './reportJson'

const rowJson = (table: Table, row: Row) => ({
  key: row.key,
  ...(row.isSum ? { isSum: true } : {}),
  values: valuesOf(table, row),
  texts: Object.fromEntries(table.columns.map(({ key }, index) => [key, row.cells[index]?.text ?? ''])),
})

const tableJson = (table: Table) => ({
  as: 'table',
  id: table.id,
  title: table.title,
  columns: table.columns.map(({ key, title, unit }) => ({ key, title, unit })),
  rows: table.rows.map((row) => rowJson(table, row)),
})

const pieceJson = (piece: Piece) => {
  switch (piece.as) {
    case 'heading':
      return { as: 'heading', text: piece.text, level: piece.level }
    case 'words':
      return { as: 'words', tone: piece.tone, text: piece.text }
    case 'table':
      return tableJson(piece.table)
    case 'steps':
      return {
        as: 'steps',
        steps: piece.steps.map(({ key, text, caution }) => ({ key, text, caution: caution ?? null })),
      }
    case 'figure':
      return { as: 'figure', caption: piece.caption }
    case 'blanks':
      return { as: 'blanks', labels: piece.labels }
    case 'page':
      return undefined
  }
}

/** A paper in reading order, with each cell as a value for programs and as the words that its reader has. */
export const sheetJson = (
  title: string,
  { id, code, title: name, reader }: Pick<Sheet, 'id' | 'code' | 'title' | 'reader'>,
  pieces: readonly Piece[],
  { units, issue, dateText }: SheetOptions,
): string =>
  jsonText({
    ...reportHead('sheet'),
    title,
    sheet: { id, code, title: name, reader, units, issue, date: dateText },
    pieces: pieces.flatMap((piece) => pieceJson(piece) ?? []),
  })
