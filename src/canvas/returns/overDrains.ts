import { arrowHeads } from '../../drawing/arrow'
import type { CanvasLike } from '../../drawing/paint'
import type { Evaluation } from '../../evaluate/evaluation'
import { distance, type Point } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import { rememberLast } from '../../model/remember'
import type { Paint } from '../../store/planner'
import { hitIndexOf } from '../hit'
import type { Slip } from '../label'
import { pxOf, type Lens } from '../lens'
import { drawState, stateColour } from '../stateInk'
import { strokeLine } from '../strokes'
import { drainTags, joinedReaches } from './drainTags'
import { acrossOf, layTags, TAG_LETTER_PX, TAG_PAD_PX, TAG_SHAPE_PX, type LaidTag } from './layTags'

/** What is said of the drains over the plan. Asked for behind the first drawing, like the rules. */

const POINTED_PX = 6

/** Drains that are chosen, or under the pointer while nothing is dragged. */
export const chosenDrains = (
  { bay }: Evaluation,
  selection: readonly PartId[],
  pointer: Point | undefined,
  { view }: Lens,
): readonly PartId[] => {
  const pointed = pointer && hitIndexOf(bay.built, null).at(pointer, POINTED_PX / view.pxPerMm)
  const all = pointed === undefined ? selection : [...selection, pointed]
  return all.filter((part) => bay.levels.drains.has(part))
}

/** On a painted plan only what is wrong, and what is asked for. */
const tagsFor = rememberLast((evaluation: Evaluation, as: Paint, writer: Lens['writer'], chosen: string) =>
  drainTags(evaluation, writer).filter(
    ({ part, state }) => as === 'plain' || state !== undefined || chosen.split(' ').includes(part),
  ),
)

const laid = rememberLast(
  (evaluation: Evaluation, as: Paint, lens: Lens, chosen: string, room: Slip, taken: readonly Slip[]) =>
    layTags(tagsFor(evaluation, as, lens.writer, chosen), chosen.split(' '), lens, room, taken),
)

/** The tags over the plan, remembered until the bay, the view or what is chosen changes. */
export const laidTags = (
  evaluation: Evaluation,
  as: Paint,
  lens: Lens,
  chosen: readonly PartId[],
  room: Slip,
  taken: readonly Slip[],
): readonly LaidTag[] => laid(evaluation, as, lens, chosen.join(' '), room, taken)

/** How far from the middle of the pipe its casing lies, px. */
const CASING_PX = 6

/** Reaches that do not fall as they should, cased on both sides: flat ones by dashes, what backs up by full lines. */
const drawBadReaches = (ctx: CanvasLike, { bay }: Evaluation, lens: Lens): void => {
  for (const { reaches } of bay.returns.drains.values())
    for (const { state, from, to } of reaches) {
      if (state === 'Falls') continue
      const ink = {
        colour: stateColour(state, lens.theme),
        widthPx: 2.5,
        ...(state === 'Flat' && { dashPx: [5, 4] }),
      }
      const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
      const across = acrossOf(a, b)
      for (const off of [CASING_PX, -CASING_PX]) {
        const by = (p: Point) => ({ x: p.x + across.x * off, y: p.y + across.y * off })
        strokeLine(ctx, by(a), by(b), ink)
      }
    }
}

/** Length of a fall arrow, and the shortest reach on the screen that has one of its own, px. */
const ARROW_PX = 11
const LEAST_ARROW_RUN_PX = 4 * ARROW_PX

/** Toward the low end of its line on every reach, wherever it is looked at; what does not fall that way is cased besides. */
const drawFallArrows = (ctx: CanvasLike, { bay }: Evaluation, lens: Lens): void => {
  ctx.fillStyle = lens.theme.pens.drain.colour
  ctx.beginPath()
  for (const { reaches } of bay.returns.drains.values())
    for (const { from, to } of joinedReaches(reaches)) {
      const [a, b] = [pxOf(lens, from), pxOf(lens, to)]
      if (distance(a, b) < LEAST_ARROW_RUN_PX) continue
      const head = arrowHeads(Float64Array.from([a.x, a.y, b.x, b.y]), 'middle', ARROW_PX)
      ctx.moveTo(head[0] ?? 0, head[1] ?? 0)
      ctx.lineTo(head[2] ?? 0, head[3] ?? 0)
      ctx.lineTo(head[4] ?? 0, head[5] ?? 0)
      ctx.closePath()
    }
  ctx.fill()
}

const drawPeg = (ctx: CanvasLike, { x, y }: Point, { theme }: Lens): void => {
  ctx.beginPath()
  ctx.rect(x - 2.5, y - 2.5, 5, 5)
  ctx.fillStyle = theme.ink
  ctx.fill()
  ctx.lineWidth = 1
  ctx.strokeStyle = theme.sheet
  ctx.stroke()
}

const drawLeader = (ctx: CanvasLike, { at, slip }: LaidTag, { theme }: Lens): void => {
  ctx.beginPath()
  ctx.moveTo(at.x, at.y)
  ctx.lineTo((slip.x0 + slip.x1) / 2, (slip.y0 + slip.y1) / 2)
  ctx.lineWidth = 1
  ctx.strokeStyle = theme.pens.hidden.colour
  ctx.stroke()
}

const drawTag = (ctx: CanvasLike, { tag, slip }: LaidTag, { theme }: Lens): void => {
  const middle = (slip.y0 + slip.y1) / 2
  ctx.beginPath()
  ctx.rect(slip.x0, slip.y0, slip.x1 - slip.x0, slip.y1 - slip.y0)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  if (tag.state || tag.as === 'peg') {
    ctx.lineWidth = 1
    ctx.strokeStyle = tag.state ? stateColour(tag.state, theme) : theme.pens.hidden.colour
    ctx.stroke()
  }
  if (tag.state) drawState(ctx, tag.state, slip.x0 + TAG_PAD_PX + 5, middle, 4, theme)
  ctx.font = `${tag.as === 'peg' ? 600 : 500} ${TAG_LETTER_PX}px ${theme.font}`
  ctx.textAlign = 'start'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = theme.ink
  ctx.fillText(tag.words, slip.x0 + TAG_PAD_PX + (tag.state ? TAG_SHAPE_PX : 0), middle + 1)
}

/** Reaches by their state, pegs, and the words that have room. In px of canvas. */
export const drawDrains = (
  ctx: CanvasLike,
  evaluation: Evaluation,
  lens: Lens,
  tags: readonly LaidTag[],
): void => {
  drawBadReaches(ctx, evaluation, lens)
  ctx.setLineDash([])
  drawFallArrows(ctx, evaluation, lens)
  for (const laidTag of tags) if (laidTag.isFar) drawLeader(ctx, laidTag, lens)
  for (const { tag, at } of tags) if (tag.as === 'peg') drawPeg(ctx, at, lens)
  for (const laidTag of tags) drawTag(ctx, laidTag, lens)
}
