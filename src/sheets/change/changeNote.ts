import type { Words } from '../../checks/context'
import type { Judged } from '../../evaluate/evaluation'
import { sawBenchOf } from '../../evaluate/sawn/sawBench'
import { counted, said, type Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import type { Units } from '../../units/length'
import { heading, type Piece, tableOf, words } from '../piece'
import { misfitWords, recutWords } from '../sawnWords'
import type { IssuedPlan, PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import type { SheetState } from '../sheetState'
import { sheetWords } from '../sheetWords'
import type { RowChange, TableChange } from '../tableChanges'
import { buyTable, findingTable, movedTable } from './planTables'

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

const changesSaid = (changes: readonly TableChange[]): readonly string[] =>
  changes.flatMap(({ title, rows }) => {
    const told = rows.slice(0, MOST_TOLD).map(rowSaid)
    const more = rows.length - told.length
    return [`${title}. ${told.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`]
  })

const supersededPieces = (states: readonly SheetState[], number: number): readonly Piece[] => {
  const changed = states.filter(({ state }) => state !== 'Current')
  if (changed.length === 0) return []
  const gone = changed.filter(({ state }) => state !== 'New').map(({ sheet }) => sheet.code)
  return [
    ...(gone.length > 0 ? [words(`Take back issue ${number} of ${gone.join(', ')}.`, 'big')] : []),
    tableOf(sheetTable(states, number), true),
    ...changed
      .filter(({ changes }) => changes.length > 0)
      .flatMap(({ sheet, changes }) => [
        heading(`${sheet.code}, ${sheet.title}`, 2),
        ...changesSaid(changes).map((text) => words(text, 'note')),
      ]),
  ]
}

/** Pieces that are cut and fit no more, and what can be made of them. */
const cutPieces = (now: Judged, units: Units): readonly Piece[] => {
  const misfits = sawBenchOf(now).cut.filter(({ recut, scrap }) => recut.length + scrap.length > 0)
  if (misfits.length === 0) return []
  return [
    heading('Cut already, and wrong now'),
    ...misfits.flatMap((cut) => [
      ...misfitWords(cut, units).map((text) => words(text)),
      ...cut.recut.map((recut) => words(recutWords(recut, units))),
    ]),
  ]
}

const filled = (tables: readonly Table[]): readonly Piece[] =>
  tables.filter(({ rows }) => rows.length > 0).map((table) => tableOf(table))

const notePieces = (
  { now, states = [] }: PlanOnPaper,
  issued: IssuedPlan,
  write: Words,
  units: Units,
): readonly Piece[] => [
  ...supersededPieces(states, issued.number),
  ...cutPieces(now, units),
  ...filled([
    movedTable(issued.was, now, write),
    buyTable(issued.was, now, write),
    findingTable(issued.was, now, write),
  ]),
]

const piecesOf = (plan: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const { issued, now } = plan
  if (issued === undefined) return []
  const pieces = notePieces(plan, issued, sheetWords(now, units, atSaw), units)
  if (pieces.length === 0) return []
  return [words(`What has changed since issue ${issued.number} of ${issued.dateText}.`), ...pieces]
}

/** What moved since the last issue, which papers that makes wrong, and what is cut already and wrong now. */
export const changeNote: Sheet = {
  id: 'change',
  code: 'CN',
  title: 'Change note',
  reader: 'Owner',
  size: 'small',
  pieces: piecesOf,
}
