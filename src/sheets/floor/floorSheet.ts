import type { Words } from '../../checks/context'
import { BENCHMARK_MM, benchmarkMarks, houseMarks } from '../../drawing/houseMarks'
import { onPaper, type Page } from '../../drawing/page'
import type { OrientedPaper } from '../../drawing/paper'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, grown, type Box } from '../../geometry/box'
import type { Mark } from '../../model/drawing'
import { shapeMark } from '../../parts/marks'
import type { Units } from '../../units/length'
import { inTrench } from '../../units/precision'
import { aisleMarks } from './aisleMarks'
import { checkBar } from '../bars'
import { clearWords, textBox, type ClearWords } from '../clearWords'
import { columnOf, type Column } from './column'
import { flags } from './flags'
import { benchmarkWords, fallWords, pitWords } from './floorLabels'
import { floorGrid } from './floorGrid'
import { floorPieces } from './floorPieces'
import { footerBlock } from '../footer'
import { panel } from '../ink'
import { nameMarks } from './names'
import { isText, partShapes } from './partShapes'
import { isPegNumber, pegNumbers } from './pegNumbers'
import { planOf, smallerScales, withSpare, type Plan } from './plan'
import { rowNumbers } from './rowNumbers'
import { rowRuns, type RowRun } from './rowRuns'
import { centrelines, readingsAlong, runningDimensions, stringRoom } from './runningDimensions'
import type { Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { shunnedBoxes, stringBoxes, wallBoxes } from './shunned'

const CODE = 'FS'
const TITLE = 'Floor sheet'
const INSET_MM = 3
/** Bubbles and ticks stand about the words that are lettered first; others keep off these too, mm of paper. */
const LETTERED_APART_MM = 1

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

/** The floor and its grid. Walls are drawn once more over grid lines that run along them. */
const groundMarks = ({ bay: { house } }: Evaluation, plan: Plan, units: Units): Mark[] => [
  ...houseMarks(house),
  ...floorGrid(plan, units),
  shapeMark(house.outline, 'wall', 'none'),
]

/** What stands on the floor or under it, and its measures, before any words that move aside. In mm of floor. */
const standingMarks = (evaluation: Evaluation, plan: Plan, rows: readonly RowRun[], write: Words): Mark[] => [
  ...partShapes(evaluation, plan.scale.ratio),
  ...centrelines(rows, plan.scale.ratio),
  ...runningDimensions(plan, rows, evaluation.bay.house.outline, write),
]

interface Labels {
  readonly marks: readonly Mark[]
  /** What is said once of many, and what found no room. */
  readonly notes: readonly string[]
  /** Keeps clear of these what is lettered after them. */
  readonly words: ClearWords
}

const noRoomNotes = (aisles: number, names: number): string[] => [
  ...(aisles > 0 ? [`Aisle widths that find no room at this scale: ${aisles}. Take a larger paper.`] : []),
  ...(names > 0 ? [`Names that find no room at this scale: ${names}. Take a larger paper.`] : []),
]

/** Numbers, aisle widths and names, each clear of what is lettered already. In mm of floor. */
const labelsOf = (evaluation: Evaluation, plan: Plan, fixed: readonly Mark[], write: Words): Labels => {
  const { ratio } = plan.scale
  const taken = fixed.filter(isText).map((mark) => grown(textBox(mark, ratio), LETTERED_APART_MM * ratio))
  const symbols = [...postBoxes(evaluation), benchmarkBox(evaluation, ratio)]
  const words = clearWords([...taken, ...symbols], plan.window)
  const rows = rowNumbers(evaluation, ratio, words)
  words.shun(stringBoxes(fixed, ratio))
  const benchmark = benchmarkWords(evaluation, ratio, words, write)
  const aisles = aisleMarks(evaluation.bay, ratio, words, write)
  words.shun(shunnedBoxes(evaluation, ratio))
  const names = nameMarks(evaluation, ratio, words)
  const falls = fallWords(evaluation, ratio, words, write)
  const marks = [
    ...aisles.marks,
    ...rows,
    ...benchmarkMarks(evaluation.bay.house, BENCHMARK_MM * ratio),
    ...names.marks,
    ...pitWords(evaluation, ratio, words),
    ...benchmark,
    ...falls.marks,
    ...pegNumbers(evaluation, ratio, words),
  ]
  const notes = [...names.notes, ...falls.notes, ...noRoomNotes(aisles.leftOut, names.leftOut)]
  return { marks, notes, words }
}

/** Paper that the running dimensions take beside the plan, mm. */
const stringRooms = ({ bay: { built, house } }: Evaluation, write: Words) => {
  const rows = rowRuns(built)
  const { x0, y0 } = boxOf(house.outline)
  return {
    westMm: stringRoom(readingsAlong('y', rows, house.outline, y0), write),
    southMm: stringRoom(readingsAlong('x', rows, house.outline, x0), write),
  }
}

const cutNotes = ({ isCut, scale }: Plan): string[] =>
  isCut ? [`At ${scale.words} not all of the bay fits this paper: its edges are cut off.`] : []

const frameMarks = ({ rooms: { frame, column, footer } }: Plan): Mark[] => [
  panel(column, 'outline', 'none'),
  panel(footer, 'outline', 'none'),
  panel(frame, 'outline', 'none'),
]

/** A sheet with its plan at one scale and place. */
interface Draft {
  readonly plan: Plan
  /** In mm of floor, the numbers of findings left out. */
  readonly floor: readonly Mark[]
  readonly words: ClearWords
  readonly column: Column
}

const draftOf = (evaluation: Evaluation, options: SheetOptions, plan: Plan, write: Words): Draft => {
  const standing = standingMarks(evaluation, plan, rowRuns(evaluation.bay.built), write)
  const ground = groundMarks(evaluation, plan, options.units)
  const { marks, notes, words } = labelsOf(evaluation, plan, [...ground, ...standing], write)
  const told = {
    name: `${TITLE} (${CODE})`,
    drawn: [...standing, ...marks.filter(isPegNumber)],
    notes: [...notes, ...cutNotes(plan)],
  }
  const column = columnOf(told, evaluation, plan, options, write)
  return { plan, floor: [...ground, ...standing, ...marks], words, column }
}

/**
 * The sheet that tells every finding, if the plan must be set aside for it; or else one that tells all that must be
 * mended or was accepted, if the plan must be a scale smaller for it. A scale that was asked for is kept.
 */
const bestDraft = (evaluation: Evaluation, options: SheetOptions, plan: Plan, write: Words): Draft => {
  const draft = (one: Plan) => draftOf(evaluation, options, one, write)
  const centred = draft(plan)
  if (centred.column.isWhole) return centred
  const aside: Draft[] = []
  for (const one of withSpare(plan)) {
    const made = draft(one)
    if (made.column.isWhole) return made
    aside.push(made)
  }
  return [centred, ...aside].find(isDueTold) ?? smallerDraft(draft, options, plan) ?? aside.at(-1) ?? centred
}

/** The largest drawing below the fitted scale that tells all that is due, if any; none where a scale was asked for. */
const smallerDraft = (
  draft: (plan: Plan) => Draft,
  { scale, units }: SheetOptions,
  plan: Plan,
): Draft | undefined => {
  if (scale !== 'fit') return undefined
  for (const one of smallerScales(plan, units).flatMap((smaller) => withSpare(plan, smaller))) {
    const made = draft(one)
    if (isDueTold(made)) return made
  }
  return undefined
}

const isDueTold = ({ column }: Draft): boolean => column.isDueTold

/** The plan to scale on one page. */
export const floorPage = (evaluation: Evaluation, options: SheetOptions): Page => {
  const write = sheetWords(evaluation, options.units, inTrench)
  const foot = (paper: OrientedPaper) => footerBlock(evaluation, paper, options.units)
  const fitted = planOf(evaluation, options, {
    ...stringRooms(evaluation, write),
    footerMm: (paper) => foot(paper).heightMm,
  })
  const { plan, floor, words, column } = bestDraft(evaluation, options, fitted, write)
  const { footer } = plan.rooms
  const { ratio } = plan.scale
  const numbers = flags(column.numbered, ratio, words, wallBoxes(evaluation, ratio))
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
        marks: [...floor, ...numbers],
        placement: plan.placement,
        clip: plan.drawing,
      },
      { marks: furniture, placement: onPaper, isPlain: true },
    ],
  }
}

/** The floor sheet: the plan to scale with all that the crew sets out from it. */
export const floorSheet: Sheet = {
  id: 'floor',
  code: CODE,
  title: TITLE,
  reader: 'Everyone',
  size: 'large',
  pieces: floorPieces,
  pages: ({ now }, options) => [floorPage(now, options)],
}
