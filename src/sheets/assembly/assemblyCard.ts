import type { Words } from '../../checks/context'
import { counted, said, type Table } from '../../model/table'
import { atSaw } from '../../units/precision'
import { cautionInBrief, cautionText, hazardsOf } from '../hazards'
import type { Hazard } from '../hazard'
import { heading, type Piece, tableOf, words } from '../piece'
import { massWords } from '../massWords'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { endView } from './endView'
import { baseKinds, rackKinds } from './kinds'
import { jointTable } from './jointTable'
import { loadTest } from './loadTest'
import { massOf } from './masses'
import { memberTable } from './memberTable'
import { lettered, type NamedKind, placeWords, whereWords } from './naming'
import { orderOfWork } from './orderOfWork'
import type { Mind } from './railSteps'
import { basePieces } from './basePieces'
import { sideView } from './sideView'

/** Which rack goes where: rows that are alike in one line, their racks from the high end down. */
const rowsTable = (kinds: readonly NamedKind[], { name }: Words): Table => {
  const racksOf = new Map<string, { fromHigh: string[] }>()
  const letters = kinds.flatMap(({ kind, letter }) => kind.all.map((rack) => ({ rack, letter })))
  const placed = letters.toSorted(
    (a, b) =>
      (a.rack.isHighEnd ? 0 : 1) - (b.rack.isHighEnd ? 0 : 1) ||
      (a.rack.isLowEnd ? 1 : 0) - (b.rack.isLowEnd ? 1 : 0),
  )
  for (const { rack, letter } of placed) {
    const row = racksOf.get(rack.part) ?? { fromHigh: [] }
    racksOf.set(rack.part, row)
    row.fromHigh.push(letter)
  }
  const alike = new Map<string, string[]>()
  for (const [part, { fromHigh }] of racksOf) {
    const order = fromHigh.join(' ')
    alike.set(order, [...(alike.get(order) ?? []), part])
  }
  return {
    id: 'racks',
    title: 'Which rack goes where',
    columns: [
      { key: 'racks', title: 'Racks, high end first', unit: 'text', isMain: true },
      { key: 'rowCount', title: 'Rows', unit: 'count' },
      { key: 'rows', title: 'Which rows', unit: 'text' },
    ],
    rows: [...alike].map(([order, parts]) => ({
      key: parts[0] ?? order,
      cells: [said(order), counted(parts.length), said(parts.map(name).join(', '))],
    })),
  }
}

const rackPieces = (
  { kind, letter }: NamedKind,
  write: Words,
  { units }: SheetOptions,
  mind: Mind,
): readonly Piece[] => {
  const { first, all, key } = kind
  const kg = massOf(first.members)
  return [
    { as: 'page' },
    heading(`Rack ${letter}: ${all.length} to build, ${placeWords(first)}`),
    words(
      `${whereWords(kind, write)}. Racks are numbered from the start of a row. About ${massWords(kg, units)} of dry lumber and conduit each (assumed; wet or treated boards weigh up to half as much again).`,
    ),
    sideView(first, `Rack ${letter}`, write, units),
    tableOf(memberTable(`members-${key}`, `Members of one rack ${letter}`, first, write, units), true),
    endView(first, `Rack ${letter}`, write, units),
    tableOf(jointTable(`joints-${key}`, `Joints of one rack ${letter}`, first)),
    heading(`Order of work, rack ${letter}`, 2),
    { as: 'steps', steps: orderOfWork(first, write, units, mind) },
  ]
}

/** These stand beside their steps; others at the head of the card. */
const AT_STEPS: ReadonlySet<string> = new Set(['conduit', 'ladders', 'bar-ends', 'overhead-loads'])

const piecesOf = ({ now }: PlanOnPaper, options: SheetOptions): readonly Piece[] => {
  const kinds = lettered(rackKinds(now))
  if (kinds.length === 0) return []
  const { units } = options
  const write = sheetWords(now, units, atSaw)
  const hazards = hazardsOf(now, units).filter(({ sheets }) => sheets.includes('assembly'))
  const mind =
    (say: (hazard: Hazard) => string): Mind =>
    (key) =>
      hazards.filter((hazard) => hazard.key === key).map(say)[0]
  return [
    ...hazards.filter(({ key }) => !AT_STEPS.has(key)).map((hazard) => words(cautionText(hazard), 'caution')),
    tableOf(rowsTable(kinds, write)),
    ...basePieces(baseKinds(now), write, units),
    ...kinds.flatMap((kind, index) =>
      // The first card says where; who has read it needs only the reminder.
      rackPieces(kind, write, options, mind(index === 0 ? cautionText : cautionInBrief)),
    ),
    ...loadTest(kinds, now, write, units, mind(cautionText)('overhead-loads')),
  ]
}

export const assemblyCard: Sheet = {
  id: 'assembly',
  code: 'AC',
  title: 'Assembly card',
  reader: 'Carpenters',
  size: 'small',
  pieces: piecesOf,
}
