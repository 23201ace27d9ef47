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
  'lines at its high end. Aisles are measured leaf to leaf. ' +
  `BM, benchmark: ${house.benchmark.name}, ${write.length(house.benchmark.valueMm)}.`

/** Key, state of the plan, words of caution and title block of the sheet `name`. `drawn` is what the key explains. */
export const columnOf = (
  name: string,
  evaluation: Evaluation,
  plan: Plan,
  options: SheetOptions,
  drawn: readonly Mark[],
  write: Words,
): Column => {
  const room = plan.rooms.column
  const widthMm = room.x1 - room.x0 - 2 * INSET_MM
  const rows = cells(evaluation, plan, options)
  const state = stateOf(evaluation)
  const { northDegrees } = evaluation.bay.house
  const before = stacked([
    northBlock(northDegrees, [
      'Floor plan, seen from above.',
      'Numbers are sizes as built,',
      'not as drawn: do not scale.',
    ]),
    keyBlock(drawn, widthMm),
    gap(1),
    paragraph(readingNote(evaluation, write), widthMm, LETTERS.small),
    gap(APART_MM),
    cautionBlock(evaluation, plan.paper, options.units, widthMm),
  ])
  const top = room.y1 - 2
  const bar = scaleBar(plan.scale.ratio, options.units, write)
  const barTop = room.y0 + titleBlockHeight(rows.length) + bar.heightMm
  const leftMm = top - before.heightMm - barTop - APART_MM
  const accepted = acceptedBlock(state, widthMm, leftMm - LEAST_STATE_MM, write)
  const { block, numbered } = stateBlock(state, widthMm, leftMm - accepted.heightMm, write)
  const names = {
    title: evaluation.layout.title,
    place: evaluation.layout.settings.place,
    sheet: name,
  }
  return {
    marks: [
      ...stacked([before, accepted, block]).draw(room.x0 + INSET_MM, top),
      ...bar.draw(room.x0, barTop),
      ...titleBlock(names, rows, room),
    ],
    numbered,
  }
}
