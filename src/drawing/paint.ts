import type { Box } from '../geometry/box'
import type { BoxesMark, DimensionMark, DiscsMark, Mark, PathMark, Pen, Wash } from '../model/drawing'
import { ARROW_MM, arrowHeads } from './arrow'
import type { Lettering } from './dimension'
import { hatchLines } from './hatch'
import { dimensionIn, HALF_CAPITAL, HALO, heightLettering, textLettering } from './lettered'
import { markReach } from './markReach'
import type { Hatch, PenStyle } from './theme'
import { isNear, onFloor, type View } from './view'

/** The few things that a canvas must do; a 2D context of the page or of a worker does them. */
export interface CanvasLike {
  fillStyle: unknown
  strokeStyle: unknown
  lineWidth: number
  lineJoin: string
  lineCap: string
  font: string
  textAlign: string
  textBaseline: string
  beginPath(): void
  closePath(): void
  moveTo(x: number, y: number): void
  lineTo(x: number, y: number): void
  rect(x: number, y: number, width: number, height: number): void
  arc(x: number, y: number, radius: number, from: number, to: number): void
  fill(): void
  stroke(): void
  clip(): void
  save(): void
  restore(): void
  translate(x: number, y: number): void
  rotate(angle: number): void
  scale(x: number, y: number): void
  setLineDash(segments: number[]): void
  fillText(text: string, x: number, y: number): void
  strokeText(text: string, x: number, y: number): void
}

/** Under this diameter a disc is a little square: no eye tells, and arcs are slow. */
const LEAST_ARC_PX = 3
/** Under this size a shape has no outline: it would be nothing but outline. */
const LEAST_OUTLINED_PX = 4
const LEAST_LINE_PX = 1
/** Hatch lines nearer than this are a smear. */
const LEAST_HATCH_PX = 3

const isOutside = (x0: number, y0: number, x1: number, y1: number, within: Box): boolean =>
  x1 < within.x0 || x0 > within.x1 || y1 < within.y0 || y0 > within.y1

/** Adds all boxes to the path and gives the largest short side, mm. */
const traceBoxes = (ctx: CanvasLike, boxes: Float64Array, within: Box | undefined): number => {
  let thickest = 0
  for (let i = 0; i + 3 < boxes.length; i += 4) {
    const x0 = boxes[i] ?? 0
    const y0 = boxes[i + 1] ?? 0
    const x1 = boxes[i + 2] ?? 0
    const y1 = boxes[i + 3] ?? 0
    if (within !== undefined && isOutside(x0, y0, x1, y1, within)) continue
    thickest = Math.max(thickest, Math.min(x1 - x0, y1 - y0))
    ctx.rect(x0, y0, x1 - x0, y1 - y0)
  }
  return thickest
}

/** Adds all discs to the path and gives the largest diameter, mm. */
const traceDiscs = (ctx: CanvasLike, discs: Float64Array, view: View): number => {
  const leastArcMm = LEAST_ARC_PX / view.pxPerMm
  let thickest = 0
  for (let i = 0; i + 2 < discs.length; i += 3) {
    const x = discs[i] ?? 0
    const y = discs[i + 1] ?? 0
    const radius = discs[i + 2] ?? 0
    if (view.within !== undefined && isOutside(x - radius, y - radius, x + radius, y + radius, view.within))
      continue
    thickest = Math.max(thickest, 2 * radius)
    if (2 * radius < leastArcMm) ctx.rect(x - radius, y - radius, 2 * radius, 2 * radius)
    else {
      ctx.moveTo(x + radius, y)
      ctx.arc(x, y, radius, 0, 2 * Math.PI)
    }
  }
  return thickest
}

const tracePath = (ctx: CanvasLike, points: Float64Array, closed: boolean): void => {
  for (let i = 0; i + 1 < points.length; i += 2) {
    if (i === 0) ctx.moveTo(points[0] ?? 0, points[1] ?? 0)
    else ctx.lineTo(points[i] ?? 0, points[i + 1] ?? 0)
  }
  if (closed) ctx.closePath()
}

const traceLines = (ctx: CanvasLike, lines: Float64Array): void => {
  for (let i = 0; i + 3 < lines.length; i += 4) {
    ctx.moveTo(lines[i] ?? 0, lines[i + 1] ?? 0)
    ctx.lineTo(lines[i + 2] ?? 0, lines[i + 3] ?? 0)
  }
}

const takeUp = (ctx: CanvasLike, pen: PenStyle, view: View): void => {
  ctx.strokeStyle = pen.colour
  ctx.lineWidth = Math.max(LEAST_LINE_PX / view.pxPerMm, onFloor(pen.widthMm, view))
  ctx.setLineDash(pen.dashMm.map((mm) => onFloor(mm, view)))
}

const paintHatch = (ctx: CanvasLike, hatch: Hatch, reach: Box, view: View): void => {
  if (hatch.spacingMm * view.pxPerPaperMm < LEAST_HATCH_PX) return
  ctx.save()
  ctx.clip()
  takeUp(ctx, { colour: hatch.colour, widthMm: hatch.widthMm, dashMm: [] }, view)
  ctx.beginPath()
  traceLines(ctx, hatchLines(reach, hatch.lean, onFloor(hatch.spacingMm, view)))
  ctx.stroke()
  ctx.restore()
}

const fillWash = (ctx: CanvasLike, wash: Wash, view: View): void => {
  const colour = wash === 'none' ? undefined : view.theme.washes[wash].colour
  if (colour === undefined) return
  ctx.fillStyle = colour
  ctx.fill()
}

const strokePen = (ctx: CanvasLike, pen: Pen, view: View): void => {
  if (pen === 'none') return
  takeUp(ctx, view.theme.pens[pen], view)
  ctx.stroke()
}

/** Washes, outlines and hatches the path just traced. */
const paintShape = (
  ctx: CanvasLike,
  mark: BoxesMark | DiscsMark | PathMark,
  outlined: boolean,
  view: View,
) => {
  fillWash(ctx, mark.wash, view)
  if (outlined || mark.wash === 'none') strokePen(ctx, mark.pen, view)
  const hatch = mark.wash === 'none' ? undefined : view.theme.washes[mark.wash].hatch
  if (hatch !== undefined) paintHatch(ctx, hatch, markReach(mark), view)
}

const paintMany = (ctx: CanvasLike, mark: BoxesMark | DiscsMark, view: View): void => {
  ctx.beginPath()
  const thickestMm =
    mark.as === 'boxes' ? traceBoxes(ctx, mark.boxes, view.within) : traceDiscs(ctx, mark.discs, view)
  paintShape(ctx, mark, thickestMm * view.pxPerMm >= LEAST_OUTLINED_PX, view)
}

const paintArrows = (ctx: CanvasLike, mark: PathMark, view: View): void => {
  if (mark.arrows === undefined || mark.pen === 'none') return
  const heads = arrowHeads(mark.points, mark.arrows, onFloor(ARROW_MM, view))
  ctx.beginPath()
  for (let i = 0; i + 5 < heads.length; i += 6) tracePath(ctx, heads.subarray(i, i + 6), true)
  ctx.fillStyle = view.theme.pens[mark.pen].colour
  ctx.fill()
}

const paintPath = (ctx: CanvasLike, mark: PathMark, view: View): void => {
  ctx.beginPath()
  tracePath(ctx, mark.points, mark.closed)
  paintShape(ctx, mark, true, view)
  paintArrows(ctx, mark, view)
}

/** Sets words down upright to the reader, whatever the floor's transform. */
const paintWords = (ctx: CanvasLike, words: Lettering, pen: Pen, view: View): void => {
  if (pen === 'none') return
  const px = words.heightMm * view.pxPerMm
  ctx.save()
  ctx.translate(words.at.x, words.at.y)
  ctx.scale(1 / view.pxPerMm, -1 / view.pxPerMm)
  ctx.rotate(-words.turn)
  ctx.font = `${px}px ${view.theme.font}`
  ctx.textAlign = words.anchor === 'middle' ? 'center' : words.anchor
  ctx.textBaseline = 'alphabetic'
  ctx.setLineDash([])
  ctx.lineJoin = 'round'
  ctx.lineWidth = px * HALO
  ctx.strokeStyle = view.theme.sheet
  ctx.strokeText(words.text, 0, px * HALF_CAPITAL)
  ctx.fillStyle = view.theme.pens[pen].colour
  ctx.fillText(words.text, 0, px * HALF_CAPITAL)
  ctx.restore()
}

const paintDimension = (ctx: CanvasLike, mark: DimensionMark, view: View): void => {
  const strokes = dimensionIn(mark, view)
  if (strokes === undefined) return
  ctx.beginPath()
  traceLines(ctx, strokes.lines)
  strokePen(ctx, mark.pen, view)
  for (const words of strokes.words) paintWords(ctx, words, mark.pen, view)
}

const paintOne = (ctx: CanvasLike, mark: Mark, view: View): void => {
  switch (mark.as) {
    case 'boxes':
    case 'discs':
      return paintMany(ctx, mark, view)
    case 'path':
      return paintPath(ctx, mark, view)
    case 'text':
      return paintWords(ctx, textLettering(mark, view), mark.pen, view)
    case 'height':
      return paintWords(ctx, heightLettering(mark, view), mark.pen, view)
    case 'dimension':
      return paintDimension(ctx, mark, view)
  }
}

/**
 * Writes marks on a canvas, in their order. The caller's transform takes mm of floor to px with `view.pxPerMm` on both
 * axes and turns y over (floor y grows north, canvas y grows down); words alone are turned back here, so they never
 * come out mirrored. Leaves line and fill styles changed, and the transform as it was.
 */
export const paint = (ctx: CanvasLike, marks: readonly Mark[], view: View): void => {
  ctx.lineJoin = 'miter'
  ctx.lineCap = 'butt'
  for (const mark of marks) {
    const nearMm = mark.as === 'dimension' ? undefined : mark.nearMm
    if (isNear(nearMm, view)) paintOne(ctx, mark, view)
  }
}
