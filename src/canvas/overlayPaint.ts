import { corners, middle, boxOf, type Box } from '../geometry/box'
import { between, distance, type Point } from '../geometry/point'
import type { CanvasLike } from '../drawing/paint'
import type { Evaluation } from '../evaluate/evaluation'
import type { Finding } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Distance } from './distances'
import type { PartHandle } from './hit'
import { drawLabel, type Room } from './label'
import { pxOf, type Lens } from './lens'
import { RULER_PX } from './rulers'
import type { Guide } from './snapCandidates'
import { standBoxOf } from './standing'
import { stateColour } from './stateInk'
import { strokeDimension, strokeLine, strokeOutline } from './strokes'
import type { Measure } from './tools/tool'

/** Each function draws one thing of the overlay, in px of canvas. */

const roomOf = ({ size }: Lens): Room => ({
  left: RULER_PX.left + 4,
  top: RULER_PX.top + 4,
  right: size.width - 4,
  bottom: size.height - 4,
})

const chosenInk = ({ theme }: Lens) => ({ colour: theme.pens.water.colour, widthPx: 2 })

const outlinesOf = ({ bay }: Evaluation, id: PartId): readonly (readonly Point[])[] => {
  const built = bay.builtOf.get(id)
  const box = built && standBoxOf(built, null)
  // A bent run is outlined leg by leg: one box round it all would take in half the floor.
  const runs = built?.bodies.filter(({ role }) => role === 'trench' || role === 'main') ?? []
  if (runs.length > 0) return runs.map(({ outline }) => outline)
  return box ? [corners(box)] : []
}

export const drawChosen = (
  ctx: CanvasLike,
  lens: Lens,
  evaluation: Evaluation,
  ids: readonly PartId[],
): void => {
  for (const id of ids)
    for (const outline of outlinesOf(evaluation, id))
      strokeOutline(
        ctx,
        outline.map((p) => pxOf(lens, p)),
        chosenInk(lens),
      )
}

const HANDLE_PX = 11

export const drawHandles = (ctx: CanvasLike, lens: Lens, handles: readonly PartHandle[]): void => {
  const { colour } = chosenInk(lens)
  for (const { at } of handles) {
    const { x, y } = pxOf(lens, at)
    ctx.beginPath()
    ctx.rect(x - HANDLE_PX / 2, y - HANDLE_PX / 2, HANDLE_PX, HANDLE_PX)
    ctx.fillStyle = lens.theme.sheet
    ctx.fill()
    ctx.setLineDash([])
    ctx.lineWidth = 2
    ctx.strokeStyle = colour
    ctx.stroke()
  }
}

export const drawDistance = (ctx: CanvasLike, lens: Lens, { from, to, words, state }: Distance): void => {
  const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
  strokeDimension(ctx, a, b, { colour: stateColour(state, lens.theme), widthPx: 1.5 })
  drawLabel(ctx, { at: between(a, b, 0.5), words, state }, lens.theme, roomOf(lens))
}

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
  const colour = lens.theme.pens.water.colour
  for (const [from, to] of lines) {
    const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
    if (as === 'line') strokeLine(ctx, ...longer(a, b), { colour, widthPx: 1, dashPx: [8, 3, 2, 3] })
    else strokeDimension(ctx, a, b, { colour, widthPx: 1, dashPx: [4, 3] })
  }
}

const NOTE_BELOW_PX = 30
const NOTE_LINE_PX = 22

/** Why things hold where they are, in words beside the pointer. */
export const drawNotes = (ctx: CanvasLike, lens: Lens, pointer: Point, notes: readonly string[]): void => {
  const at = pxOf(lens, pointer)
  notes.forEach((words, line) => {
    const place = { x: at.x, y: at.y + NOTE_BELOW_PX + line * NOTE_LINE_PX }
    drawLabel(ctx, { at: place, words }, lens.theme, roomOf(lens))
  })
}

export const drawMarquee = (ctx: CanvasLike, lens: Lens, box: Box): void =>
  strokeOutline(
    ctx,
    corners(box).map((p) => pxOf(lens, p)),
    { colour: lens.theme.pens.water.colour, widthPx: 1.5, dashPx: [5, 4] },
  )

/** The tape with its length, and how far it goes east and north where it slants. */
export const drawMeasure = (ctx: CanvasLike, lens: Lens, { from, to }: Measure): void => {
  const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
  const { length } = lens.writer
  const dx = Math.abs(to.x - from.x)
  const dy = Math.abs(to.y - from.y)
  const slant = dx > 0 && dy > 0 ? ` (${length(dx)} across, ${length(dy)} up)` : ''
  strokeDimension(ctx, a, b, { colour: lens.theme.pens.timber.colour, widthPx: 2.5 })
  const words = `${length(distance(from, to))}${slant}`
  drawLabel(ctx, { at: between(a, b, 0.5), words }, lens.theme, roomOf(lens))
}

const quantityWords = ({ measured }: Finding, lens: Lens): string => {
  if (measured.unit === 'mm') return `${lens.writer.onTape(measured.value)} `
  return measured.unit === 'mm/m' ? `${lens.writer.fall(measured.value)} ` : ''
}

const AROUND_PX = 16

/** The finding that is opened: what was measured, from end to end, or a box round its place. */
export const drawFinding = (ctx: CanvasLike, lens: Lens, finding: Finding): void => {
  const { span, at, state } = finding
  const ink = { colour: stateColour(state, lens.theme), widthPx: 2.5 }
  const [a, b] = (span ?? [at, at]).map((p) => pxOf(lens, p))
  if (!a || !b) return
  if (span) strokeDimension(ctx, a, b, ink)
  else
    strokeOutline(
      ctx,
      corners({ x0: a.x - AROUND_PX, y0: a.y - AROUND_PX, x1: a.x + AROUND_PX, y1: a.y + AROUND_PX }),
      ink,
    )
  const place = middle(boxOf([a, b]))
  const words = `${quantityWords(finding, lens)}${state}`
  drawLabel(ctx, { at: { x: place.x, y: place.y - AROUND_PX - 12 }, words, state }, lens.theme, roomOf(lens))
}
