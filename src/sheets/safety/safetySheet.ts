import { type Column, type Row, said, type Table } from '../../model/table'
import type { Hazard } from '../hazard'
import { cautionInBrief, hazardsOf } from '../hazards'
import { type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { keyPlan } from './keyPlan'
import { byStand, type StandGroup } from './stands'

const COLUMNS: readonly Column[] = [
  { key: 'stand', title: 'At', unit: 'text' },
  { key: 'what', title: 'What to mind, and what to do', unit: 'text' },
  { key: 'where', title: 'Where, on this plan', unit: 'text' },
]

const rowOf = ({ title }: StandGroup, number: number, hazard: Hazard): Row => ({
  key: hazard.key,
  cells: [said(`${number} ${title}`), said(cautionInBrief(hazard)), said(hazard.places.join('; '))],
})

/** By where one stands; the number is that of the plan. */
const hazardTable = (groups: readonly StandGroup[]): Table => ({
  id: 'hazards',
  title: 'What can hurt here',
  columns: COLUMNS,
  rows: groups.flatMap((group, index) => group.hazards.map((hazard) => rowOf(group, index + 1, hazard))),
})

const WHO_TO_CALL = [
  'Emergency number',
  'Call before you dig: ticket',
  'Electrician',
  'This address, for whoever comes',
  'The breaker that stops the pump',
  'First aid, rescue line at',
]

const CREW = 4

const signOff = ['Shown round by', 'Date', ...Array.from({ length: CREW }, () => 'Seen and understood')]

/** Publications by name, each once; what is common practice is no source. */
const sourcesOf = (hazards: readonly Hazard[]): string => {
  const named = hazards.map(({ source }) => source).filter((source) => !source.startsWith('Common practice'))
  return `After ${[...new Set(named)].sort().join('; ')}. The rest is common practice. Local codes decide.`
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const hazards = hazardsOf(now, units)
  if (hazards.length === 0) return []
  const groups = byStand(hazards)
  return [
    words(
      'Read it out on the first day at each place, and tick what has been shown. What is not on this plan can hurt as well. Local codes and licensed people decide.',
    ),
    { as: 'blanks', labels: WHO_TO_CALL },
    keyPlan(now, groups, units),
    tableOf(hazardTable(groups), true),
    { as: 'blanks', labels: signOff },
    words(sourcesOf(hazards), 'note'),
  ]
}

/** What can hurt at this very bay, with where it is, for everyone on the first day. */
export const safetySheet: Sheet = {
  id: 'safety',
  code: 'SF',
  title: 'Safety sheet',
  reader: 'Everyone, on the first day',
  size: 'small',
  pieces: piecesOf,
}
