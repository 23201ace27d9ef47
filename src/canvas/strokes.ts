import type { Point } from '../geometry/point'
import type { CanvasLike } from '../drawing/paint'

/** Strokes in px of canvas that the overlay is made of. */

export interface Ink {
  readonly colour: string
  readonly widthPx: number
  readonly dashPx?: readonly number[]
}

const take = (ctx: CanvasLike, { colour, widthPx, dashPx = [] }: Ink) => {
  ctx.strokeStyle = colour
  ctx.lineWidth = widthPx
  ctx.setLineDash([...dashPx])
}

export const strokeLine = (ctx: CanvasLike, from: Point, to: Point, ink: Ink): void => {
  take(ctx, ink)
  ctx.beginPath()
  ctx.moveTo(from.x, from.y)
  ctx.lineTo(to.x, to.y)
  ctx.stroke()
}

export const strokeOutline = (ctx: CanvasLike, points: readonly Point[], ink: Ink): void => {
  take(ctx, ink)
  ctx.beginPath()
  points.forEach(({ x, y }, index) => (index === 0 ? ctx.moveTo(x, y) : ctx.lineTo(x, y)))
  ctx.closePath()
  ctx.stroke()
}

const TICK_PX = 5

/** A dimension line with a slanting tick at each end. */
export const strokeDimension = (ctx: CanvasLike, from: Point, to: Point, ink: Ink): void => {
  strokeLine(ctx, from, to, ink)
  for (const { x, y } of [from, to])
    strokeLine(ctx, { x: x - TICK_PX, y: y + TICK_PX }, { x: x + TICK_PX, y: y - TICK_PX }, ink)
}
