import type { CanvasLike } from '../drawing/paint'
import type { Lens } from './lens'
import { rulerStep, tickWords } from './rulerSteps'
import { RULER_PX } from './rulers'

const ARROW_PX = 18
const INSET_PX = 30

/** North arrow in the top right corner; `degrees` clockwise from the plan's up to true north. */
export const drawNorth = (ctx: CanvasLike, { size, theme }: Lens, degrees: number): void => {
  ctx.save()
  ctx.translate(size.width - INSET_PX, RULER_PX.top + INSET_PX)
  ctx.rotate((degrees * Math.PI) / 180)
  ctx.setLineDash([])
  ctx.lineWidth = 1
  ctx.strokeStyle = theme.ink
  for (const side of [-1, 1]) {
    ctx.beginPath()
    ctx.moveTo(0, -ARROW_PX)
    ctx.lineTo(side * 7, ARROW_PX * 0.8)
    ctx.lineTo(0, ARROW_PX * 0.4)
    ctx.closePath()
    ctx.fillStyle = side < 0 ? theme.ink : theme.sheet
    ctx.fill()
    ctx.stroke()
  }
  ctx.font = `600 13px ${theme.font}`
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = theme.ink
  ctx.fillText('N', 0, ARROW_PX + 3)
  ctx.restore()
}

const BAR_PX = 6

/** Scale bar in the bottom left corner, two steps of the rulers long, the first one filled. */
export const drawScaleBar = (ctx: CanvasLike, { size, theme, units, view, writer }: Lens): void => {
  const step = rulerStep(view.pxPerMm, units)
  const stepPx = step.majorMm * view.pxPerMm
  const x = RULER_PX.left + 16
  const y = size.height - 18
  ctx.beginPath()
  ctx.rect(x - 8, y - 18, 2 * stepPx + 30, BAR_PX + 24)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.setLineDash([])
  ctx.lineWidth = 1
  ctx.strokeStyle = theme.ink
  for (const part of [0, 1]) {
    ctx.beginPath()
    ctx.rect(x + part * stepPx, y, stepPx, BAR_PX)
    ctx.fillStyle = part === 0 ? theme.ink : theme.sheet
    ctx.fill()
    ctx.stroke()
  }
  ctx.font = `12px ${theme.font}`
  ctx.textAlign = 'center'
  ctx.textBaseline = 'middle'
  ctx.fillStyle = theme.ink
  for (const part of [0, 1, 2])
    ctx.fillText(tickWords(part * step.majorMm, step, units, writer), x + part * stepPx, y - 9)
}
