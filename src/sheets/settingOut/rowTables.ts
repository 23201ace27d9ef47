import type { Words } from '../../checks/context'
import type { House } from '../../layout/house'
import { type Cell, type Column, counted, type Row, said, type Table } from '../../model/table'
import type { Units } from '../../units/length'
import { fromWalls } from '../baseline'
import { cornersOf, type RowSquare } from './rowCorners'
import { squareOn } from './squares'

/** What the tables of the rows are made from. */
export interface Pegging {
  readonly house: House
  readonly units: Units
  readonly write: Words
}

export const fromWestSouth: readonly Column[] = [
  { key: 'westMm', title: 'From west wall', unit: 'mm', isMain: true },
  { key: 'southMm', title: 'From south wall', unit: 'mm', isMain: true },
]

export const lengthCell = (mm: number, { length }: Words): Cell => counted(mm, length(mm))

/** Corners of every row: outer faces of its corner posts. */
export const cornerTable = (rows: readonly RowSquare[], { house, write }: Pegging): Table => ({
  id: 'row-corners',
  title: 'Corners of the rows: outside of the corner posts',
  columns: [
    { key: 'row', title: 'Row', unit: 'text' },
    { key: 'corner', title: 'Corner', unit: 'text' },
    ...fromWestSouth,
  ],
  rows: rows.flatMap(({ part, box }) =>
    cornersOf(box).map(({ corner, at }): Row => {
      const { westMm, southMm } = fromWalls(house, at)
      return {
        key: `${part} ${corner}`,
        cells: [said(write.name(part)), said(corner), lengthCell(westMm, write), lengthCell(southMm, write)],
      }
    }),
  ),
})

/** Sides of a row's rectangle and both its diagonals, mm. */
export const sidesOf = ({ box: { x0, y0, x1, y1 } }: Pick<RowSquare, 'box'>) => {
  const [abMm, adMm] = [x1 - x0, y1 - y0]
  const diagonalMm = Math.hypot(abMm, adMm)
  return { abMm, adMm, acMm: diagonalMm, bdMm: diagonalMm }
}

/** Sides and both diagonals of every row. */
export const diagonalTable = (rows: readonly RowSquare[], { write }: Pegging): Table => ({
  id: 'row-diagonals',
  title: 'Diagonals of the rows: both read the same where a row is square',
  columns: [
    { key: 'row', title: 'Row', unit: 'text' },
    { key: 'abMm', title: 'A to B', unit: 'mm' },
    { key: 'adMm', title: 'A to D', unit: 'mm' },
    { key: 'acMm', title: 'Diagonal A to C', unit: 'mm', isMain: true },
    { key: 'bdMm', title: 'Diagonal B to D', unit: 'mm', isMain: true },
  ],
  rows: rows.map((row): Row => {
    const { abMm, adMm, acMm, bdMm } = sidesOf(row)
    return {
      key: row.part,
      cells: [said(write.name(row.part)), ...[abMm, adMm, acMm, bdMm].map((mm) => lengthCell(mm, write))],
    }
  }),
})

export const squareColumns = (what: string): readonly Column[] => [
  { key: 'what', title: what, unit: 'text' },
  { key: 'corner', title: 'Square at', unit: 'text' },
  { key: 'firstMm', title: 'Mark on the string west to east', unit: 'mm' },
  { key: 'secondMm', title: 'Mark on the string south to north', unit: 'mm' },
  { key: 'betweenMm', title: 'From mark to mark', unit: 'mm', isMain: true },
]

/** The largest 3-4-5 on corner A of every row. */
export const squareTable = (rows: readonly RowSquare[], { units, write }: Pegging): Table => ({
  id: 'row-squares',
  title: '3-4-5 at corner A of the rows',
  columns: squareColumns('Row'),
  rows: rows.flatMap((row): Row[] => {
    const { abMm, adMm } = sidesOf(row)
    const square = squareOn(adMm, abMm, units)
    if (!square) return []
    const marks = [square.acrossMm, square.alongMm, square.betweenMm]
    return [
      {
        key: row.part,
        cells: [said(write.name(row.part)), said('A'), ...marks.map((mm) => lengthCell(mm, write))],
      },
    ]
  }),
})
