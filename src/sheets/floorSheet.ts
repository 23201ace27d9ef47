import type { Words } from '../checks/context'
import { BENCHMARK_MM, benchmarkMarks, houseMarks } from '../drawing/houseMarks'
import { onPaper, type Page } from '../drawing/page'
import type { OrientedPaper } from '../drawing/paper'
import type { Evaluation } from '../evaluate/evaluation'
import { boxOf, type Box } from '../geometry/box'
import type { Mark } from '../model/drawing'
import { inTrench } from '../units/precision'
import { writerFor } from '../units/writer'
import { aisleMarks } from './aisleMarks'
import { checkBar } from './bars'
import { clearWords, textBox, type ClearWords } from './clearWords'
import { columnOf } from './column'
import { flags } from './flags'
import { benchmarkWords, fallWords, pitWords } from './floorLabels'
import { floorGrid } from './floorGrid'
import { footerBlock } from './footer'
import { panel } from './ink'
import { clearNames, isText, partShapes, partWords } from './partNames'
import { planOf, type Plan } from './plan'
import { rowRuns, type RowRun } from './rowRuns'
import { centrelines, runningDimensions } from './runningDimensions'
import type { Sheet, SheetOptions } from './sheet'

const CODE = 'FS'
const TITLE = 'Floor sheet'
const INSET_MM = 3

const wordsFor = ({ layout }: Evaluation, { units }: SheetOptions): Words => {
  const names = new Map(layout.parts.map(({ id, name }) => [id, name]))
  return { ...writerFor(units, inTrench), name: (part) => names.get(part) || part }
}

const benchmarkBox = ({ bay }: Evaluation, ratio: number): Box => {
  const { x, y } = bay.house.benchmark.at
  const half = BENCHMARK_MM * ratio
  return { x0: x - half, y0: y - half, x1: x + half, y1: y + half }
}

/** Posts are small: words on top of one would hide it. */
const postBoxes = ({ bay }: Evaluation): Box[] =>
  bay.built
    .flatMap(({ bodies }) => bodies.filter(({ role }) => role === 'post'))
    .map(({ outline }) => boxOf(outline))

/** What stands on the floor or under it, and its measures, before any words that move aside. In mm of floor. */
const standingMarks = (evaluation: Evaluation, plan: Plan, rows: readonly RowRun[], write: Words): Mark[] => [
  ...partShapes(evaluation),
  ...centrelines(rows, plan.scale.ratio),
  ...runningDimensions(plan, rows, evaluation.bay.house.outline, write),
]

interface Labels {
  readonly marks: readonly Mark[]
  /** Aisle widths that found no room. */
  readonly leftOut: number
  /** Keeps clear of these what is lettered after them. */
  readonly words: ClearWords
}

/** Aisle widths and names, each clear of what is lettered already. In mm of floor. */
const labelsOf = (evaluation: Evaluation, plan: Plan, standing: readonly Mark[], write: Words): Labels => {
  const { ratio } = plan.scale
  const { rows, others } = partWords(evaluation, ratio)
  const taken = [...standing.filter(isText), ...rows].map((mark) => textBox(mark, ratio))
  const symbols = [...postBoxes(evaluation), benchmarkBox(evaluation, ratio)]
  const words = clearWords([...taken, ...symbols], plan.window)
  const aisles = aisleMarks(evaluation.bay, ratio, words, write)
  const marks = [
    ...rows,
    ...clearNames(others, ratio, words),
    ...benchmarkMarks(evaluation.bay.house, BENCHMARK_MM * ratio),
    ...aisles.marks,
    ...pitWords(evaluation, ratio, words),
    ...benchmarkWords(evaluation, ratio, words, write),
    ...fallWords(evaluation, ratio, words, write),
  ]
  return { marks, leftOut: aisles.leftOut, words }
}

/** What the sheet could not show, said on the sheet. */
const shortcomings = ({ isCut, scale }: Plan, leftOut: number): string[] => [
  ...(isCut ? [`At ${scale.words} not all of the bay fits this paper: its edges are cut off.`] : []),
  ...(leftOut > 0 ? [`Aisle widths that find no room at this scale: ${leftOut}. Take a larger paper.`] : []),
]

const frameMarks = ({ rooms: { frame, column, footer } }: Plan): Mark[] => [
  panel(column, 'outline', 'none'),
  panel(footer, 'outline', 'none'),
  panel(frame, 'outline', 'none'),
]

const drawPage = (evaluation: Evaluation, options: SheetOptions): Page => {
  const write = wordsFor(evaluation, options)
  const foot = (paper: OrientedPaper) => footerBlock(evaluation, paper, options.units)
  const plan = planOf(evaluation, options, (paper) => foot(paper).heightMm)
  const { footer } = plan.rooms
  const rows = rowRuns(evaluation.bay.built)
  const standing = standingMarks(evaluation, plan, rows, write)
  const labels = labelsOf(evaluation, plan, standing, write)
  const notes = shortcomings(plan, labels.leftOut)
  const column = columnOf(
    { name: `${TITLE} (${CODE})`, drawn: standing, notes },
    evaluation,
    plan,
    options,
    write,
  )
  const numbers = flags(column.numbered, plan.scale.ratio, labels.words)
  const ground = [...houseMarks(evaluation.bay.house), ...floorGrid(plan, options.units)]
  const furniture = [
    ...frameMarks(plan),
    ...column.marks,
    ...checkBar(plan.rooms.check, options.units, write),
    ...foot(plan.paper).draw(footer.x0 + INSET_MM, footer.y1),
  ]
  return {
    title: `${evaluation.layout.title}: floor sheet, issue ${options.issue}`,
    paper: plan.paper,
    units: options.units,
    items: [
      {
        marks: [...ground, ...standing, ...labels.marks, ...numbers],
        placement: plan.placement,
        clip: plan.rooms.drawing,
      },
      { marks: furniture, placement: onPaper },
    ],
  }
}

/** The floor sheet: the plan to scale with all that the crew sets out from it. */
export const floorSheet: Sheet = { id: 'floor', code: CODE, title: TITLE, page: drawPage }
