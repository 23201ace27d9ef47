import { shadeColours } from '../../drawing/cividis'
import type { CanvasLike } from '../../drawing/paint'
import type { Lens } from '../lens'
import { inSight, type PaintedRow } from './painted'
import { DRY } from './scale'

/** From afar a tower is painted larger than it is, so that its colour can be read, but never over its neighbours; px and a share. */
const LEAST_DISC_PX = 9
const OF_THE_WAY = 0.86

/** Under this diameter a disc is a little square: no eye tells, and arcs are slow. */
const LEAST_ARC_PX = 6

/** A rim of ink keeps the darkest shades apart from night paper; smaller discs would be nothing but rim. */
const LEAST_RIMMED_PX = 7

const radiusMm = ({ spots }: PaintedRow, pxPerMm: number): number =>
  Math.max(spots.bodyMm, Math.min(LEAST_DISC_PX / pxPerMm, spots.closestMm * OF_THE_WAY)) / 2

const traceOne = (ctx: CanvasLike, x: number, y: number, r: number, isArc: boolean): void => {
  if (!isArc) return ctx.rect(x - r, y - r, 2 * r, 2 * r)
  ctx.moveTo(x + r, y)
  ctx.arc(x, y, r, 0, 2 * Math.PI)
}

/** Adds the towers of a row to the path that have this shade, or all that have any where `shade` is undefined. */
const traceShade = (
  ctx: CanvasLike,
  { spots: { xy }, shades }: PaintedRow,
  shade: number | undefined,
  r: number,
  { pxPerMm, within }: Lens['paint'],
): void => {
  const isArc = 2 * r * pxPerMm >= LEAST_ARC_PX
  for (let i = 0; i < shades.length; i += 1) {
    if (shade !== undefined && shades[i] !== shade) continue
    const x = xy[2 * i] ?? 0
    const y = xy[2 * i + 1] ?? 0
    if (x + r < within.x0 || x - r > within.x1 || y + r < within.y0 || y - r > within.y1) continue
    traceOne(ctx, x, y, r, isArc)
  }
}

const isUsed = (rows: readonly PaintedRow[], shade: number): boolean =>
  rows.some(({ shades }) => shades.includes(shade))

const fillShade = (ctx: CanvasLike, rows: readonly PaintedRow[], shade: number, paint: Lens['paint']) => {
  ctx.beginPath()
  for (const row of rows) traceShade(ctx, row, shade, radiusMm(row, paint.pxPerMm), paint)
}

/** A bar across each dry tower, rising to the right: hollow and struck out, whatever the colours do. */
const traceStrikes = (ctx: CanvasLike, rows: readonly PaintedRow[], pxPerMm: number): void => {
  ctx.beginPath()
  for (const row of rows) {
    const { xy } = row.spots
    const r = radiusMm(row, pxPerMm) * 0.7
    for (let i = 0; i < row.shades.length; i += 1) {
      if (row.shades[i] !== DRY) continue
      const x = xy[2 * i] ?? 0
      const y = xy[2 * i + 1] ?? 0
      ctx.moveTo(x - r, y - r)
      ctx.lineTo(x + r, y + r)
    }
  }
}

const paintDry = (ctx: CanvasLike, rows: readonly PaintedRow[], { paint, theme }: Lens): void => {
  if (!isUsed(rows, DRY)) return
  fillShade(ctx, rows, DRY, paint)
  ctx.fillStyle = theme.sheet
  ctx.fill()
  ctx.strokeStyle = theme.ink
  traceStrikes(ctx, rows, paint.pxPerMm)
  ctx.stroke()
}

const paintRims = (ctx: CanvasLike, rows: readonly PaintedRow[], { paint, theme }: Lens): void => {
  const { pxPerMm } = paint
  ctx.beginPath()
  for (const row of rows) {
    const r = radiusMm(row, pxPerMm)
    if (2 * r * pxPerMm >= LEAST_RIMMED_PX) traceShade(ctx, row, undefined, r, paint)
  }
  ctx.strokeStyle = theme.pens.crop.colour
  ctx.stroke()
}

/**
 * Fills every tower by its flow, one path for each shade. The context's transform is in mm of floor. Nothing is made
 * for each tower: rows keep their places and shades in typed arrays.
 */
export const paintTowers = (ctx: CanvasLike, rows: readonly PaintedRow[], lens: Lens): void => {
  const seen = inSight(rows, lens.paint.within)
  ctx.setLineDash([])
  ctx.lineWidth = 1 / lens.paint.pxPerMm
  shadeColours.forEach((colour, shade) => {
    fillShade(ctx, seen, shade, lens.paint)
    ctx.fillStyle = colour
    ctx.fill()
  })
  paintDry(ctx, seen, lens)
  paintRims(ctx, seen, lens)
}
