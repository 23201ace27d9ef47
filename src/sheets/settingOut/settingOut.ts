import type { Evaluation } from '../../evaluate/evaluation'
import type { Table } from '../../model/table'
import type { Units } from '../../units/length'
import { inTrench } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { feetLineTable, pairTables } from './feetTables'
import { houseDiagonals, houseSquares, houseTable } from './houseTables'
import { clearTable, placeTable } from './placeTables'
import { planFigure } from './planFigure'
import { type RowSquare, rowSquares } from './rowCorners'
import { rowFigure } from './rowFigure'
import { cornerTable, diagonalTable, type Pegging, squareTable } from './rowTables'
import { baselineWords, benchmarkWords, orderOfWork } from './settingWords'

const ticked = (tables: readonly Table[]): readonly Piece[] =>
  tables.filter(({ rows }) => rows.length > 0).map((table) => tableOf(table, true))

const housePieces = (pegging: Pegging): readonly Piece[] => [
  heading('The house'),
  ...ticked([houseTable(pegging), houseDiagonals(pegging), houseSquares(pegging)]),
]

const rowPieces = (rows: readonly RowSquare[], pegging: Pegging): readonly Piece[] => {
  const [first] = rows
  if (!first) return []
  return [
    heading('The rows'),
    rowFigure(first, pegging),
    ...ticked([
      cornerTable(rows, pegging),
      diagonalTable(rows, pegging),
      squareTable(rows, pegging),
      feetLineTable(rows, pegging),
      ...pairTables(rows, pegging),
    ]),
  ]
}

const digPieces = (plan: Evaluation, pegging: Pegging): readonly Piece[] => {
  const table = placeTable(plan, pegging)
  if (table.rows.length === 0) return []
  return [
    heading(table.title),
    ...cautionsFor('setting-out', plan, pegging.units),
    words('Lines are measured along their middles, pits inside of their lining.', 'note'),
    tableOf(table, true),
  ]
}

const clearPieces = (plan: Evaluation, pegging: Pegging): readonly Piece[] => {
  const table = clearTable(plan, pegging)
  return table.rows.length === 0 ? [] : [heading(table.title), tableOf(table, true)]
}

const isDug = ({ bay }: Evaluation): boolean =>
  bay.built.some(({ bodies }) =>
    bodies.some(({ role, fromMm }) => fromMm < 0 && (role === 'pit' || role === 'trench')),
  )

const peggingOf = (plan: Evaluation, units: Units): Pegging => ({
  house: plan.bay.house,
  units,
  write: sheetWords(plan, units, inTrench),
})

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  if (now.layout.parts.length === 0) return []
  const pegging = peggingOf(now, units)
  const rows = rowSquares(now.bay.built)
  return [
    words(benchmarkWords(now.bay.settings, pegging)),
    words(baselineWords()),
    planFigure(now, rows, pegging),
    orderOfWork({ hasRows: rows.length > 0, hasDigs: isDug(now) }, pegging),
    ...housePieces(pegging),
    ...rowPieces(rows, pegging),
    ...digPieces(now, pegging),
    ...clearPieces(now, pegging),
  ]
}

/** Where every row, drain and pit stands on the empty floor, measured from two walls. */
export const settingOut: Sheet = {
  id: 'setting-out',
  code: 'SO',
  title: 'Setting-out sheet',
  reader: 'Setter-out',
  size: 'small',
  pieces: piecesOf,
}
