import { balance } from '../../evaluate/water/balance'
import type { Table } from '../../model/table'
import { inTrench } from '../../units/precision'
import { cautionInBrief, hazardsOf } from '../hazards'
import { heading, type Piece, type StepsPiece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { MOST_ZONES, pitTable, pumpTable, zoneTable } from './limits'
import { AT_STEPS, daily, leastTower, monthly, type Round, seldom, weekly } from './roundSteps'

const shown = (table: Table): readonly Piece[] => (table.rows.length === 0 ? [] : [tableOf(table)])

const zonePieces = (table: Table): readonly Piece[] =>
  table.rows.length > MOST_ZONES
    ? [words('Sight tubes at the valves: as on the tag of each valve.')]
    : shown(table)

const stepPieces = (title: string, steps: StepsPiece['steps']): readonly Piece[] =>
  steps.length === 0 ? [] : [heading(title, 2), { as: 'steps', steps }]

/** What runs out how soon when the pump stands still, as far as the plan tells. */
const powerCut = ({ now, write }: Round): readonly Piece[] => {
  const { towerDripMin, waterC } = now.layout.settings
  return now.bay.water.rows.size === 0
    ? []
    : [
        words(
          `Power cut: towers have dripped out after some ${write.minutes(towerDripMin)}. Planned for water at ${write.temperature(waterC)}.`,
        ),
      ]
}

const restOfCautions = ({ hazards }: Round): readonly Piece[] => {
  const rest = hazards.filter(({ key, sheets }) => sheets.includes('round') && !AT_STEPS.has(key))
  return rest.length === 0 ? [] : [words(rest.map(cautionInBrief).join(' '), 'caution')]
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const write = sheetWords(now, units, inTrench)
  const card = balance(now.bay, 'target')
  const round: Round = { now, units, write, hazards: hazardsOf(now, units), least: leastTower(now, card) }
  const steps = [daily(round), weekly(round), monthly(round), seldom(round)]
  if (steps.every(({ length }) => length === 0)) return []
  const [everyDay = [], everyWeek = [], everyMonth = [], seldomer = []] = steps
  return [
    ...shown(pitTable(now, write)),
    ...shown(pumpTable(now, write)),
    ...zonePieces(zoneTable(card, write)),
    ...powerCut(round),
    { as: 'blanks', labels: ['Water temperature from, to'] },
    ...stepPieces('Every day', everyDay),
    ...stepPieces('Every week', everyWeek),
    ...stepPieces('Every month', everyMonth),
    ...stepPieces('After the start, and with the seasons', seldomer),
    ...restOfCautions(round),
  ]
}

/** What the grower looks at on the round, with this bay's own limits. */
export const roundCard: Sheet = {
  id: 'round',
  code: 'RC',
  title: 'Round card',
  reader: 'Grower',
  size: 'half',
  pieces: piecesOf,
}
