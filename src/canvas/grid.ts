import { boxOf } from '../geometry/box'
import type { CanvasLike } from '../drawing/paint'
import type { House } from '../layout/house'
import type { Lens } from './lens'
import { multiples, rulerStep } from './rulerSteps'

/** Grid lines over the house on the rulers' written ticks, in mm of floor. */
export const drawGrid = (ctx: CanvasLike, { paint, units, theme, view }: Lens, house: House): void => {
  const box = boxOf(house.outline)
  const { majorMm } = rulerStep(view.pxPerMm, units)
  const x0 = Math.max(box.x0, paint.within.x0)
  const x1 = Math.min(box.x1, paint.within.x1)
  const y0 = Math.max(box.y0, paint.within.y0)
  const y1 = Math.min(box.y1, paint.within.y1)
  ctx.beginPath()
  for (const mm of multiples(x0 - box.x0, x1 - box.x0, majorMm)) {
    ctx.moveTo(box.x0 + mm, y0)
    ctx.lineTo(box.x0 + mm, y1)
  }
  for (const mm of multiples(y0 - box.y0, y1 - box.y0, majorMm)) {
    ctx.moveTo(x0, box.y0 + mm)
    ctx.lineTo(x1, box.y0 + mm)
  }
  ctx.setLineDash([])
  ctx.lineWidth = 1 / view.pxPerMm
  ctx.strokeStyle = theme.pens.grid.colour
  ctx.stroke()
}
