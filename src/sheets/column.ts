import type { Words } from '../checks/context'
import type { Evaluation } from '../evaluate/evaluation'
import type { Mark } from '../model/drawing'
import type { Finding } from '../model/finding'
import { scaleBar } from './bars'
import { gap, paragraph, stacked } from './block'
import { cautionBlock } from './footer'
import { LETTERS } from './ink'
import { keyBlock } from './key'
import { northBlock } from './north'
import type { Units } from '../units/length'
import type { Plan } from './plan'
import type { SheetOptions } from './sheet'
import { acceptedBlock, stateBlock, stateOf } from './state'
import { titleBlock, titleBlockHeight, type Cell } from './titleBlock'

const INSET_MM = 3
const APART_MM = 2.5
/** Room that the counts of findings always have. */
const LEAST_STATE_MM = 14

/** The right side of a sheet, and which findings it numbers. */
export interface Column {
  readonly marks: readonly Mark[]
  readonly numbered: readonly Finding[]
}

const cells = ({ towers, sites }: Evaluation, plan: Plan, options: SheetOptions): Cell[][] => [
  [
    { label: 'Issue', text: `${options.issue}` },
    { label: 'Date', text: options.dateText },
  ],
  [{ label: 'Scale', text: plan.scale.words }],
  [{ label: 'Paper', text: plan.paper.title }],
  [
    { label: 'Units', text: options.units === 'metric' ? 'Millimetres' : 'Feet and inches' },
    { label: 'Towers / plant sites', text: `${towers} / ${sites}` },
  ],
]

const readingNote = ({ bay: { house } }: Evaluation, write: Words): string =>
  'Running dimensions are read from the inside of the west and south walls. Numbers in a row: racks along its middle, ' +
  'lines at its start. Aisles are measured leaf to leaf. ' +
  `BM, benchmark: ${house.benchmark.name}, ${write.length(house.benchmark.valueMm)}.`

/** What one sheet puts in its column. */
interface Told {
  /** Title and code of the sheet. */
  readonly name: string
  /** Marks that the key explains. */
  readonly drawn: readonly Mark[]
  /** What the sheet could not show. */
  readonly notes: readonly string[]
}

const SEEN = ['Floor plan, seen from above.', 'A written size comes before', 'one scaled off the drawing.']

/** North, key, how to read the sheet, and words of caution. */
const explained = (
  told: Told,
  evaluation: Evaluation,
  plan: Plan,
  units: Units,
  widthMm: number,
  write: Words,
) =>
  stacked([
    northBlock(evaluation.bay.house.northDegrees, SEEN),
    keyBlock(told.drawn, widthMm),
    gap(1),
    ...[readingNote(evaluation, write), ...told.notes].map((note) => paragraph(note, widthMm, LETTERS.small)),
    gap(APART_MM),
    cautionBlock(evaluation, plan.paper, units, widthMm),
  ])

/** Key, words of caution, state of the plan and title block. What is open gets the room that the rest leaves. */
export const columnOf = (
  told: Told,
  evaluation: Evaluation,
  plan: Plan,
  options: SheetOptions,
  write: Words,
): Column => {
  const room = plan.rooms.column
  const widthMm = room.x1 - room.x0 - 2 * INSET_MM
  const rows = cells(evaluation, plan, options)
  const before = explained(told, evaluation, plan, options.units, widthMm, write)
  const bar = scaleBar(plan.scale.ratio, options.units, write)
  const top = room.y1 - 2
  const barTop = room.y0 + titleBlockHeight(rows.length) + bar.heightMm
  const leftMm = top - before.heightMm - barTop - APART_MM
  const state = stateOf(evaluation)
  const accepted = acceptedBlock(state, widthMm, leftMm - LEAST_STATE_MM, write)
  const { block, numbered } = stateBlock(state, widthMm, leftMm - accepted.heightMm, write)
  const { title, settings } = evaluation.layout
  const marks = [
    ...stacked([before, accepted, block]).draw(room.x0 + INSET_MM, top),
    ...bar.draw(room.x0, barTop),
    ...titleBlock({ title, place: settings.place, sheet: told.name }, rows, room),
  ]
  return { marks, numbered }
}
