import type { Point } from '../geometry/point'
import { boxOf } from '../geometry/box'
import type { CanvasLike } from '../drawing/paint'
import type { House } from '../layout/house'
import { toFloor, toScreen } from '../store/view'
import type { Lens } from './lens'
import { multiples, rulerStep, tickWords, type RulerStep } from './rulerSteps'

/** Width of the rulers along the top and the left edge, px. */
export const RULER_PX = { top: 22, left: 44 }

const TICK_PX = { major: 9, minor: 5 }
const LETTER_PX = 12

interface Tick {
  readonly px: number
  readonly words: string | undefined
}

/** Ticks along one axis, counted from the wall strings as the crew counts. */
const ticksOf = (lens: Lens, step: RulerStep, axis: 'x' | 'y', zeroMm: number): Tick[] => {
  const { view, size, units, writer } = lens
  const start = toFloor(view, { x: 0, y: 0 })
  const end = toFloor(view, { x: size.width, y: size.height })
  const low = Math.min(start[axis], end[axis]) - zeroMm
  const high = Math.max(start[axis], end[axis]) - zeroMm
  const everyMinor = Math.round(step.majorMm / step.minorMm)
  return multiples(low, high, step.minorMm).map((mm) => {
    const at = { x: zeroMm + mm, y: zeroMm + mm }
    const isMajor = Math.round(mm / step.minorMm) % everyMinor === 0
    return { px: toScreen(view, at)[axis], words: isMajor ? tickWords(mm, step, units, writer) : undefined }
  })
}

const band = (ctx: CanvasLike, { theme }: Lens, x: number, y: number, width: number, height: number) => {
  ctx.beginPath()
  ctx.rect(x, y, width, height)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.fillStyle = theme.ink
}

const tickLength = ({ words }: Tick): number => (words === undefined ? TICK_PX.minor : TICK_PX.major)

const drawTop = (ctx: CanvasLike, lens: Lens, ticks: readonly Tick[]) => {
  band(ctx, lens, 0, 0, lens.size.width, RULER_PX.top)
  ctx.beginPath()
  for (const tick of ticks) {
    ctx.moveTo(tick.px, RULER_PX.top)
    ctx.lineTo(tick.px, RULER_PX.top - tickLength(tick))
  }
  ctx.moveTo(0, RULER_PX.top)
  ctx.lineTo(lens.size.width, RULER_PX.top)
  ctx.stroke()
  ctx.textAlign = 'start'
  for (const { px, words } of ticks) if (words !== undefined) ctx.fillText(words, px + 3, 9)
}

const drawLeft = (ctx: CanvasLike, lens: Lens, ticks: readonly Tick[]) => {
  band(ctx, lens, 0, 0, RULER_PX.left, lens.size.height)
  ctx.beginPath()
  for (const tick of ticks) {
    ctx.moveTo(RULER_PX.left, tick.px)
    ctx.lineTo(RULER_PX.left - tickLength(tick), tick.px)
  }
  ctx.moveTo(RULER_PX.left, 0)
  ctx.lineTo(RULER_PX.left, lens.size.height)
  ctx.stroke()
  ctx.textAlign = 'end'
  for (const { px, words } of ticks) if (words !== undefined) ctx.fillText(words, RULER_PX.left - 4, px - 8)
}

const take = (ctx: CanvasLike, { theme }: Lens) => {
  ctx.setLineDash([])
  ctx.lineWidth = 1
  ctx.strokeStyle = theme.pens.dimension.colour
  ctx.fillStyle = theme.ink
  ctx.font = `${LETTER_PX}px ${theme.font}`
  ctx.textBaseline = 'middle'
}

/** Where the pointer is, on both rulers. */
const drawPointer = (ctx: CanvasLike, lens: Lens, pointer: Point | undefined) => {
  if (!pointer) return
  const { x, y } = toScreen(lens.view, pointer)
  ctx.beginPath()
  ctx.moveTo(x, 0)
  ctx.lineTo(x, RULER_PX.top)
  ctx.moveTo(0, y)
  ctx.lineTo(RULER_PX.left, y)
  ctx.strokeStyle = lens.theme.pens.water.colour
  ctx.lineWidth = 2
  ctx.stroke()
}

/** Rulers along the top and the left edge, zero at the west and the south wall string. */
export const drawRulers = (ctx: CanvasLike, lens: Lens, house: House, pointer: Point | undefined): void => {
  const { x0, y0 } = boxOf(house.outline)
  const step = rulerStep(lens.view.pxPerMm, lens.units)
  take(ctx, lens)
  drawTop(ctx, lens, ticksOf(lens, step, 'x', x0))
  take(ctx, lens)
  drawLeft(ctx, lens, ticksOf(lens, step, 'y', y0))
  take(ctx, lens)
  band(ctx, lens, 0, 0, RULER_PX.left - 1, RULER_PX.top - 1)
  drawPointer(ctx, lens, pointer)
}
