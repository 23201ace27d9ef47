import { shadeColours, shadeOf } from '../../drawing/cividis'
import type { CanvasLike } from '../../drawing/paint'
import { overlaps } from '../../geometry/box'
import type { Lens } from '../lens'
import type { Legs } from './legs'
import { FASTEST_MS, shareOn, type Scale } from './scale'

/** How wide a pipe is painted, px; what runs too fast is cased in red and wider, so that it shows without colour. */
const WIDTH_PX: Readonly<Record<Legs['as'], number>> = { main: 6, row: 3 }
const CASING_PX = 2
const FAST_CASING_PX = 6

type IsTaken = (velocityMS: number) => boolean

const trace = (ctx: CanvasLike, { lines, velocityMS }: Legs, isTaken: IsTaken): void => {
  for (let i = 0; i < velocityMS.length; i += 1) {
    if (!isTaken(velocityMS[i] ?? 0)) continue
    ctx.moveTo(lines[4 * i] ?? 0, lines[4 * i + 1] ?? 0)
    ctx.lineTo(lines[4 * i + 2] ?? 0, lines[4 * i + 3] ?? 0)
  }
}

const strokeTaken = (ctx: CanvasLike, all: readonly Legs[], widthMm: number, isTaken: IsTaken): void => {
  ctx.beginPath()
  for (const legs of all) trace(ctx, legs, isTaken)
  ctx.lineWidth = widthMm
  ctx.stroke()
}

const paintKind = (ctx: CanvasLike, all: readonly Legs[], widthPx: number, lens: Lens, scale: Scale) => {
  const { pxPerMm } = lens.paint
  ctx.strokeStyle = lens.theme.pens['must-fix'].colour
  strokeTaken(ctx, all, (widthPx + FAST_CASING_PX) / pxPerMm, (ms) => ms > FASTEST_MS)
  ctx.strokeStyle = lens.theme.ink
  strokeTaken(ctx, all, (widthPx + CASING_PX) / pxPerMm, () => true)
  shadeColours.forEach((colour, shade) => {
    ctx.strokeStyle = colour
    strokeTaken(ctx, all, widthPx / pxPerMm, (ms) => shadeOf(shareOn(scale, ms)) === shade)
  })
}

/** Strokes every stretch of pipe by its velocity, one path for each shade, the mains over the rows' own pipes. */
export const paintLegs = (ctx: CanvasLike, all: readonly Legs[], scale: Scale, lens: Lens): void => {
  const seen = all.filter(({ box }) => overlaps(box, lens.paint.within))
  ctx.setLineDash([])
  ctx.lineCap = 'butt'
  for (const as of ['row', 'main'] as const)
    paintKind(
      ctx,
      seen.filter((legs) => legs.as === as),
      WIDTH_PX[as],
      lens,
      scale,
    )
}
