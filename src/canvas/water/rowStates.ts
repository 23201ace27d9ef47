import { textWidth } from '../../drawing/lettering'
import type { CanvasLike } from '../../drawing/paint'
import type { Theme } from '../../drawing/theme'
import type { Box } from '../../geometry/box'
import type { Evaluation } from '../../evaluate/evaluation'
import { between, distance, type Point } from '../../geometry/point'
import { stateWords, type StateWord } from '../../model/finding'
import type { PartId } from '../../model/ids'
import type { RackFacts } from '../../model/rackFacts'
import { nameOf } from '../../store/partNames'
import type { Writer } from '../../units/writer'
import { pxOf, type Lens } from '../lens'
import { drawState, stateColour, stateRank } from '../stateInk'

/** A state of a row as it stands on the plan: its shape, then its words. */
export interface RowMark {
  readonly state: StateWord
  readonly words: string
}

/** What is said of a row on the plan, a mark each; nothing of what is no row. */
export type MarksOf = (evaluation: Evaluation, part: PartId, writer: Writer) => readonly RowMark[]

/** `N1: Even 6.4 %`, its spread; a row without water says so, in the shape of a starved one. Undefined for what is no row. */
export const rowStateOf = (
  { layout, bay: { water } }: Evaluation,
  part: PartId,
  { share }: Writer,
): RowMark | undefined => {
  const row = water.rows.get(part)
  const found = layout.parts.find(({ id }) => id === part)
  const name = found ? nameOf(found) : part
  if (row) return { state: row.state, words: `${name}: ${row.state} ${share(row.figures.spread)}` }
  return water.dry.has(part) ? { state: stateWords.flow[2], words: `${name}: no water` } : undefined
}

/** How each row is fed. */
export const flowMarks: MarksOf = (evaluation, part, writer) => {
  const row = rowStateOf(evaluation, part, writer)
  return row ? [row] : []
}

const LETTER_PX = 12
const SLIP_PX = 18
const PAD_PX = 4
const SHAPE_PX = 14

/** A slip that turns with its row. */
interface TurnedSlip {
  readonly at: Point
  /** Radians anticlockwise on the canvas, so that words read from the left or from the right. */
  readonly turn: number
  readonly lengthPx: number
  readonly marks: readonly RowMark[]
}

/** Of a mark, from its shape to where the next begins. */
const markPx = ({ words }: RowMark): number => SHAPE_PX + textWidth(words, LETTER_PX) + PAD_PX

const widthPx = (marks: readonly RowMark[]): number => marks.reduce((sum, mark) => sum + markPx(mark), PAD_PX)

/** A row on the canvas, px: its ends along the middle, and what lies from there to its leaves. */
interface Run {
  readonly start: Point
  readonly end: Point
  readonly halfPx: number
  readonly isUpright: boolean
}

const runOf = ({ leftFace: left, rightFace: right }: RackFacts, lens: Lens): Run => {
  const start = pxOf(lens, between(left.from, right.from, 0.5))
  const end = pxOf(lens, between(left.to, right.to, 0.5))
  const isUpright = Math.abs(end.y - start.y) > Math.abs(end.x - start.x)
  return { start, end, halfPx: (distance(left.from, right.from) / 2) * lens.view.pxPerMm, isUpright }
}

/** In the aisle beside the row where that is wide enough for the words, so that they lie on no tower; else on the row. */
const besideRow = ({ start, end, halfPx, isUpright }: Run, aislePx: number): Point => {
  const { x, y } = between(start, end, 0.5)
  const off = aislePx >= SLIP_PX ? halfPx + SLIP_PX / 2 : 0
  return isUpright ? { x: x - off, y } : { x, y: y - off }
}

/** A slip of a shape alone, px: beyond the row's start, where it covers no tower. */
const BARE_PX = 14

const bareSlip = (
  { start, end }: Run,
  runPx: number,
  turn: number,
  marks: readonly RowMark[],
): TurnedSlip => ({
  at: between(start, end, (-BARE_PX * marks.length) / 2 / runPx),
  turn,
  lengthPx: BARE_PX * marks.length,
  marks: marks.map((mark) => ({ ...mark, words: '' })),
})

/**
 * Where a slip stands: its words along the row, or its shape alone where the row is too short on the screen for words;
 * the legend has the word of each shape.
 */
const placedSlip = (run: Run, aislePx: number, marks: readonly RowMark[]): TurnedSlip[] => {
  const runPx = distance(run.start, run.end)
  const lengthPx = widthPx(marks)
  const turn = run.isUpright ? -Math.PI / 2 : 0
  if (runPx > lengthPx) return [{ at: besideRow(run, aislePx), turn, lengthPx, marks }]
  return runPx > 2 * BARE_PX ? [bareSlip(run, runPx, turn, marks)] : []
}

/** The slips of these rows, in px of canvas. */
export const rowSlips = (
  evaluation: Evaluation,
  parts: readonly PartId[],
  lens: Lens,
  marksOf: MarksOf,
): readonly TurnedSlip[] =>
  parts.flatMap((part) => {
    const marks = marksOf(evaluation, part, lens.writer)
    const rack = evaluation.bay.builtOf.get(part)?.rack
    const aislePx = evaluation.bay.settings.workAisleMm * lens.view.pxPerMm
    return marks.length > 0 && rack ? placedSlip(runOf(rack, lens), aislePx, marks) : []
  })

/** Half of how thick a slip is, px. */
const slipHalf = ({ marks }: TurnedSlip): number => (isBare(marks) ? BARE_PX : SLIP_PX) / 2

const isBare = (marks: readonly RowMark[]): boolean => marks.every(({ words }) => words === '')

/** What a slip covers on the canvas, px. */
export const slipBox = (slip: TurnedSlip): Box => {
  const { at, turn, lengthPx } = slip
  const half = slipHalf(slip)
  const [x, y] = turn === 0 ? [lengthPx / 2, half] : [half, lengthPx / 2]
  return { x0: at.x - x, y0: at.y - y, x1: at.x + x, y1: at.y + y }
}

/** The shape keeps its foot down on a slip that is turned: a triangle must not become an arrow. */
const drawUprightState = (ctx: CanvasLike, state: StateWord, x: number, turn: number, theme: Theme) => {
  ctx.save()
  ctx.translate(x, 0)
  ctx.rotate(-turn)
  drawState(ctx, state, 0, 0, 4, theme)
  ctx.restore()
}

/** Shapes and words one after the other, from the slip's left end on. */
const drawMarks = (ctx: CanvasLike, { turn, lengthPx, marks }: TurnedSlip, theme: Theme): void => {
  ctx.font = `500 ${LETTER_PX}px ${theme.font}`
  ctx.textAlign = 'start'
  ctx.textBaseline = 'middle'
  const bare = isBare(marks)
  let x = -lengthPx / 2 + (bare ? BARE_PX / 2 : PAD_PX)
  for (const mark of marks) {
    drawUprightState(ctx, mark.state, bare ? x : x + 5, turn, theme)
    ctx.fillStyle = theme.ink
    if (!bare) ctx.fillText(mark.words, x + SHAPE_PX, 1)
    x += bare ? BARE_PX : markPx(mark)
  }
}

const worstOf = (marks: readonly RowMark[]): StateWord | undefined =>
  marks
    .map(({ state }) => state)
    .reduce((worst, state) => (stateRank(state) > stateRank(worst) ? state : worst))

const drawSlip = (ctx: CanvasLike, slip: TurnedSlip, { theme }: Lens): void => {
  const { at, turn, lengthPx, marks } = slip
  const half = slipHalf(slip)
  const worst = worstOf(marks)
  ctx.save()
  ctx.translate(at.x, at.y)
  ctx.rotate(turn)
  ctx.beginPath()
  ctx.rect(-lengthPx / 2, -half, lengthPx, 2 * half)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.setLineDash([])
  ctx.lineWidth = 1
  ctx.strokeStyle = worst ? stateColour(worst, theme) : theme.ink
  ctx.stroke()
  drawMarks(ctx, slip, theme)
  ctx.restore()
}

/** Writes on each of these rows how it fares: word, shape and number. In px of canvas. */
export const drawRowStates = (
  ctx: CanvasLike,
  evaluation: Evaluation,
  parts: readonly PartId[],
  lens: Lens,
  marksOf: MarksOf,
): void => {
  for (const slip of rowSlips(evaluation, parts, lens, marksOf)) drawSlip(ctx, slip, lens)
}
