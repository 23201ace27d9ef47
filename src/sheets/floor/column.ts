import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Mark } from '../../model/drawing'
import type { Units } from '../../units/length'
import { scaleBar } from '../bars'
import { type Block, gap, paragraph, stacked } from '../block'
import type { FindingGroup } from './findingGroups'
import { gridSpacing } from './floorGrid'
import { cautionBlock } from '../footer'
import { LETTERS } from '../ink'
import { keyBlock } from './key'
import { northBlock } from './north'
import type { Plan } from './plan'
import { pour, type Room } from '../pour'
import type { SheetOptions } from '../sheet'
import { stateLines, stateOf, type StateLine } from './state'
import { titleBlock, titleBlockHeight, type Cell } from '../titleBlock'

const INSET_MM = 3
const APART_MM = 2.5

/** The right side of a sheet and what runs on beside the plan. */
export interface Column {
  readonly marks: readonly Mark[]
  /** What bears a number on the plan, in that order. */
  readonly numbered: readonly FindingGroup[]
  /** Every finding is told. */
  readonly isWhole: boolean
  /** Every finding that must be mended is told, and all that the builder has accepted. */
  readonly isDueTold: boolean
}

const cells = ({ towers, sites }: Evaluation, plan: Plan, options: SheetOptions): Cell[][] => [
  [
    { label: 'Issue', text: options.issue },
    { label: 'Date', text: options.dateText },
  ],
  [{ label: 'Scale', text: plan.scale.words }],
  [{ label: 'Paper', text: plan.paper.title }],
  [
    { label: 'Units', text: options.units === 'metric' ? 'Millimetres' : 'Feet and inches' },
    { label: 'Towers / plant sites', text: `${towers} / ${sites}` },
  ],
]

/** What the benchmark is called, and whether levels on this sheet are counted from it. */
const benchmarkNote = ({ house: { benchmark }, settings }: Evaluation['bay'], write: Words): string =>
  `BM, benchmark: ${benchmark.name}, ${write.plainLevel(benchmark.valueMm)}${settings.levelsFrom === 'benchmark' ? '; levels are counted from it' : ''}.`

const readingNote = ({ bay }: Evaluation, gridMm: number, write: Words): string =>
  `Grid lines stand ${write.length(gridMm)} apart. ` +
  'Running dimensions are read from the inside of the west and south walls. Numbers in a row: racks along its middle, ' +
  'lines at its start. Aisles are measured leaf to leaf. ' +
  benchmarkNote(bay, write)

/** What one sheet puts in its column. */
interface Told {
  /** Title and code of the sheet. */
  readonly name: string
  /** Marks that the key explains. */
  readonly drawn: readonly Mark[]
  /** What is said once for all of the plan, and what the sheet could not show. */
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
): Block =>
  stacked([
    northBlock(evaluation.bay.house.northDegrees, SEEN),
    keyBlock(told.drawn, plan.scale.ratio, widthMm),
    gap(1),
    ...[readingNote(evaluation, gridSpacing(plan.scale.ratio, units), write), ...told.notes].map((note) =>
      paragraph(note, widthMm, LETTERS.small),
    ),
    gap(APART_MM),
    cautionBlock(evaluation, plan.paper, units, widthMm),
  ])

const sumOf = (lines: readonly StateLine[]): number => lines.reduce((sum, { findings }) => sum + findings, 0)

const moreLine = (count: number): StateLine => ({
  block: (widthMm) => paragraph(`and ${count} more on the screen`, widthMm, LETTERS.small),
  findings: 0,
  isDue: false,
})

/** As many lines as the rooms hold, and how many findings are left out, said in the last. */
const poured = (lines: readonly StateLine[], rooms: readonly Room[]) => {
  const whole = pour(lines, rooms)
  if (whole.count === lines.length) return whole
  for (let count = whole.count; count >= 0; count--) {
    const cut = [...lines.slice(0, count), moreLine(sumOf(lines.slice(count)))]
    const { marks, count: shown } = pour(cut, rooms)
    if (shown === cut.length) return { marks, count }
  }
  return { marks: [], count: 0 }
}

/** A list reads best in one place: beside the plan alone where it fits there, else from the column on. */
const roomsFor = (lines: readonly StateLine[], rest: Room, spare: readonly Room[]): readonly Room[] =>
  spare.length > 0 && pour(lines, spare).count === lines.length ? spare : [rest, ...spare]

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
  const left = room.x0 + INSET_MM
  const rows = cells(evaluation, plan, options)
  const before = explained(told, evaluation, plan, options.units, widthMm, write)
  const bar = scaleBar(plan.scale.ratio, options.units, write)
  const top = room.y1 - 2
  const barTop = room.y0 + titleBlockHeight(rows.length) + bar.heightMm
  const under = top - before.heightMm
  const lines = stateLines(stateOf(evaluation), write)
  const rest = { left, top: under, widthMm, heightMm: under - barTop - APART_MM }
  const state = poured(lines, roomsFor(lines, rest, plan.spare))
  const { title, settings } = evaluation.layout
  return {
    marks: [
      ...before.draw(left, top),
      ...state.marks,
      ...bar.draw(room.x0, barTop),
      ...titleBlock({ title, place: settings.place, sheet: told.name }, rows, room),
    ],
    numbered: lines.slice(0, state.count).flatMap(({ group }) => group ?? []),
    isWhole: state.count === lines.length,
    isDueTold: lines.slice(state.count).every(({ isDue }) => !isDue),
  }
}
