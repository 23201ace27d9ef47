import type { Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import { type Piece, tableOf, words } from '../piece'
import type { IssuedPlan, PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { buyTable } from './countTables'
import { cutPieces } from './cutPieces'
import { flowTable, levelTable } from './figureTables'
import { findingTable } from './findingTable'
import { partTable } from './partTable'
import { differingPieces, supersededPieces } from './superseded'
import { sumTable } from './sumTable'
import { toldOf } from './told'

const filled = (tables: readonly Table[]): readonly Piece[] =>
  tables.filter(({ rows }) => rows.length > 0).map((table) => tableOf(table))

/** What is to be done at once comes first, what is good to know after it. */
const notePieces = (
  { now, states = [] }: PlanOnPaper,
  since: IssuedPlan,
  { units }: SheetOptions,
): readonly Piece[] => {
  const told = toldOf(since.was, now, units, atSaw)
  return [
    ...supersededPieces(states, since.number),
    ...cutPieces(now, units),
    ...filled([partTable(told), levelTable(told), buyTable(told)]),
    ...filled([flowTable(told), findingTable(told), sumTable(told)]),
    ...differingPieces(states),
  ]
}

const whyWords = ({ now: { layout } }: PlanOnPaper, since: IssuedPlan): readonly Piece[] => {
  const last = layout.papers.issues.at(-1)
  return last && last.number > since.number && last.note !== '' ? [words(`Why: ${last.note}`)] : []
}

const piecesOf = (plan: PlanOnPaper, options: SheetOptions): readonly Piece[] => {
  const { since = plan.issued } = plan
  if (since === undefined) return []
  const pieces = notePieces(plan, since, options)
  if (pieces.length === 0) return []
  return [
    words(`What has changed since issue ${since.number} of ${since.dateText}.`),
    ...whyWords(plan, since),
    ...pieces,
    { as: 'blanks', labels: ['Told to', 'Date'] },
  ]
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
