import { boxOf, corners, middle, type Box } from '../geometry/box'
import { between, distance, type Point } from '../geometry/point'
import type { CanvasLike } from '../drawing/paint'
import { quantityWords } from '../checks/measuredWords'
import type { Evaluation } from '../evaluate/evaluation'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import type { Distance } from './distances'
import type { PartHandle } from './hit'
import type { Label } from './label'
import { pxOf, type Lens } from './lens'
import type { Guide } from './snapCandidates'
import { standBoxOf } from './standing'
import { stateColour } from './stateInk'
import { strokeDimension, strokeLine, strokeOutline } from './strokes'
import type { Measure } from './tools/tool'

/** Each function draws one thing of the overlay, in px of canvas, or makes its label. */

const chosenColour = ({ theme }: Lens): string => theme.pens.water.colour

/** A bent run is outlined leg by leg: one box round it all would take in half the floor. */
const outlinesOf = ({ bay }: Evaluation, id: PartId): readonly (readonly Point[])[] => {
  const built = bay.builtOf.get(id)
  const runs = built?.bodies.filter(({ role }) => role === 'trench' || role === 'main') ?? []
  if (runs.length > 0) return runs.map(({ outline }) => outline)
  const box = built && standBoxOf(built, null)
  return box ? [corners(box)] : []
}

export const drawChosen = (
  ctx: CanvasLike,
  lens: Lens,
  evaluation: Evaluation,
  ids: readonly PartId[],
): void => {
  const ink = { colour: chosenColour(lens), widthPx: 2 }
  for (const outline of ids.flatMap((id) => outlinesOf(evaluation, id)))
    strokeOutline(
      ctx,
      outline.map((p) => pxOf(lens, p)),
      ink,
    )
}

const HANDLE_PX = 11

export const drawHandles = (ctx: CanvasLike, lens: Lens, handles: readonly PartHandle[]): void => {
  for (const { at } of handles) {
    const { x, y } = pxOf(lens, at)
    ctx.beginPath()
    ctx.rect(x - HANDLE_PX / 2, y - HANDLE_PX / 2, HANDLE_PX, HANDLE_PX)
    ctx.fillStyle = lens.theme.sheet
    ctx.fill()
    ctx.setLineDash([])
    ctx.lineWidth = 2
    ctx.strokeStyle = chosenColour(lens)
    ctx.stroke()
  }
}

export const drawDistance = (ctx: CanvasLike, lens: Lens, { from, to, state }: Distance): void =>
  strokeDimension(ctx, pxOf(lens, from), pxOf(lens, to), {
    colour: stateColour(state, lens.theme),
    widthPx: 1.5,
  })

export const distanceLabel = (lens: Lens, { from, to, words, state }: Distance): Label => ({
  at: pxOf(lens, between(from, to, 0.5)),
  words,
  state,
})

/** How far a line of alignment runs on past both things. */
const PAST_PX = 14

const longer = (from: Point, to: Point): readonly [Point, Point] => {
  const run = distance(from, to) || 1
  const by = { x: ((to.x - from.x) / run) * PAST_PX, y: ((to.y - from.y) / run) * PAST_PX }
  return [
    { x: from.x - by.x, y: from.y - by.y },
    { x: to.x + by.x, y: to.y + by.y },
  ]
}

export const drawGuide = (ctx: CanvasLike, lens: Lens, { as, lines }: Guide): void => {
  const colour = chosenColour(lens)
  for (const [from, to] of lines) {
    const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
    if (as === 'line') strokeLine(ctx, ...longer(a, b), { colour, widthPx: 1, dashPx: [8, 3, 2, 3] })
    else strokeDimension(ctx, a, b, { colour, widthPx: 1, dashPx: [4, 3] })
  }
}

const NOTE_BELOW_PX = 34
const NOTE_LINE_PX = 22

/** Why things hold where they are, in words below the pointer. */
export const noteLabels = (lens: Lens, pointer: Point, notes: readonly string[]): Label[] => {
  const { x, y } = pxOf(lens, pointer)
  return notes.map((words, line) => ({ at: { x, y: y + NOTE_BELOW_PX + line * NOTE_LINE_PX }, words }))
}

export const drawMarquee = (ctx: CanvasLike, lens: Lens, box: Box): void =>
  strokeOutline(
    ctx,
    corners(box).map((p) => pxOf(lens, p)),
    { colour: chosenColour(lens), widthPx: 1.5, dashPx: [5, 4] },
  )

export const drawMeasure = (ctx: CanvasLike, lens: Lens, { from, to }: Measure): void =>
  strokeDimension(ctx, pxOf(lens, from), pxOf(lens, to), {
    colour: lens.theme.pens.timber.colour,
    widthPx: 2.5,
  })

const BESIDE_PX = 20

/**
 * What the tape reads, and how far that is by the compass where it slants: `10' 0" (6' 0" east, 8' 0" south)`. In feet,
 * for it may be pulled the whole length of the house.
 */
export const measureWords = ({ from, to }: Measure, { length }: Writer): string => {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const east = `${length(Math.abs(dx))} ${dx > 0 ? 'east' : 'west'}`
  const north = `${length(Math.abs(dy))} ${dy > 0 ? 'north' : 'south'}`
  return `${length(distance(from, to))}${dx !== 0 && dy !== 0 ? ` (${east}, ${north})` : ''}`
}

export const measureLabel = (lens: Lens, measure: Measure): Label => {
  const { x, y } = pxOf(lens, between(measure.from, measure.to, 0.5))
  return { at: { x, y: y - BESIDE_PX }, words: measureWords(measure, lens.writer) }
}

const AROUND_PX = 16

const around = ({ x, y }: Point): Point[] =>
  corners({ x0: x - AROUND_PX, y0: y - AROUND_PX, x1: x + AROUND_PX, y1: y + AROUND_PX })

/** The finding that is opened: what was measured, from end to end, or a box round its place. */
export const drawFinding = (ctx: CanvasLike, lens: Lens, { span, at, state }: Finding): void => {
  const ink = { colour: stateColour(state, lens.theme), widthPx: 2.5 }
  if (span) strokeDimension(ctx, pxOf(lens, span[0]), pxOf(lens, span[1]), ink)
  else strokeOutline(ctx, around(pxOf(lens, at)), ink)
}

/** What is less than nothing, such as the depth of a dig into a wire, is not for a tape: its state says enough. */
const measuredWords = ({ measured }: Finding, { writer }: Lens): string =>
  measured.unit === 'count' || measured.value < 0 ? '' : `${quantityWords(measured, writer)} `

export const findingLabel = (lens: Lens, finding: Finding): Label => {
  const { x, y } = pxOf(lens, middle(boxOf(finding.span ?? [finding.at])))
  return {
    at: { x, y: y - AROUND_PX - 12 },
    words: `${measuredWords(finding, lens)}${finding.state}`,
    state: finding.state,
  }
}
