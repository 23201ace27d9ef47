import type { Table } from '../../model/table'
import { inTrench } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { acceptedTable, aisleTable, openTable, rowTable } from './floorTables'
import { stateOf } from './state'

const withRows = (tables: readonly Table[]): readonly Piece[] =>
  tables.flatMap((table) => (table.rows.length === 0 ? [] : [heading(table.title), tableOf(table)]))

/** What the plan shows, in tables and words: rows, aisles, what is open and what is accepted. None of an empty floor. */
export const floorPieces = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  if (now.layout.parts.length === 0) return []
  const write = sheetWords(now, units, inTrench)
  const state = stateOf(now)
  const { mustFix, watch, accepted } = state
  return [
    words(`Must fix: ${mustFix}. Watch: ${watch}. Accepted: ${accepted.length}.`),
    ...withRows([rowTable(now, write), aisleTable(now, write)]),
    ...withRows([openTable(state, write), acceptedTable(state, write)]),
    ...cautionsFor('floor', now, units),
  ]
}
