import { shimState } from '../../checks/shimLimits'
import { shadeColours, shadeOf } from '../../drawing/cividis'
import type { CanvasLike } from '../../drawing/paint'
import { overlaps } from '../../geometry/box'
import type { Lens } from '../lens'
import { stateColour } from '../stateInk'
import { shareOn, type Scale } from '../water/scale'
import type { ShimSpots } from './shimSpots'

/** A foot is painted as a square and a bearer as a bar, so that nobody takes one for the other; px. */
const FOOT_PX = 11
const BEARER_PX = 5
/** Where feet stand closer on the screen than they are wide, they shrink; mm of floor. */
const LARGEST_FOOT_MM = 450
const RIM_PX = 1
const OVER_PX = 4

const footHalfMm = (pxPerMm: number): number => Math.min(FOOT_PX / pxPerMm, LARGEST_FOOT_MM) / 2

type IsTaken = (shimMm: number) => boolean

const traceFeet = (ctx: CanvasLike, { feetXy, feetMm }: ShimSpots, half: number, isTaken: IsTaken): void => {
  for (let i = 0; i < feetMm.length; i += 1)
    if (isTaken(feetMm[i] ?? 0))
      ctx.rect((feetXy[2 * i] ?? 0) - half, (feetXy[2 * i + 1] ?? 0) - half, 2 * half, 2 * half)
}

const traceBearers = (ctx: CanvasLike, { bearers, bearersMm }: ShimSpots, isTaken: IsTaken): void => {
  for (let i = 0; i < bearersMm.length; i += 1) {
    if (!isTaken(bearersMm[i] ?? 0)) continue
    ctx.moveTo(bearers[4 * i] ?? 0, bearers[4 * i + 1] ?? 0)
    ctx.lineTo(bearers[4 * i + 2] ?? 0, bearers[4 * i + 3] ?? 0)
  }
}

const strokeBearers = (
  ctx: CanvasLike,
  all: readonly ShimSpots[],
  widthMm: number,
  isTaken: IsTaken,
): void => {
  ctx.beginPath()
  for (const spots of all) traceBearers(ctx, spots, isTaken)
  ctx.lineWidth = widthMm
  ctx.stroke()
}

const fillFeet = (ctx: CanvasLike, all: readonly ShimSpots[], half: number, isTaken: IsTaken): void => {
  ctx.beginPath()
  for (const spots of all) traceFeet(ctx, spots, half, isTaken)
  ctx.fill()
}

/** Feet over a limit stand in a frame: a thin one where a block is steadier, a thick one where none helps. */
const frameFeet = (
  ctx: CanvasLike,
  all: readonly ShimSpots[],
  half: number,
  { theme, paint }: Lens,
): void => {
  for (const [state, px] of [
    ['Tight', OVER_PX / 2],
    ['Clash', OVER_PX],
  ] as const) {
    ctx.fillStyle = stateColour(state, theme)
    fillFeet(ctx, all, half + (RIM_PX + px) / paint.pxPerMm, (mm) => shimState(mm) === state)
  }
}

/**
 * Fills every foot and strokes every gutter bearer by the height of its shim, one path for each shade. The context's
 * transform is in mm of floor.
 */
export const paintShims = (ctx: CanvasLike, all: readonly ShimSpots[], scale: Scale, lens: Lens): void => {
  const { pxPerMm, within } = lens.paint
  const seen = all.filter(({ box }) => overlaps(box, within))
  const half = footHalfMm(pxPerMm)
  ctx.setLineDash([])
  ctx.lineCap = 'butt'
  ctx.strokeStyle = lens.theme.ink
  strokeBearers(ctx, seen, (BEARER_PX + 2 * RIM_PX) / pxPerMm, () => true)
  shadeColours.forEach((colour, shade) => {
    ctx.strokeStyle = colour
    strokeBearers(ctx, seen, BEARER_PX / pxPerMm, (mm) => shadeOf(shareOn(scale, mm)) === shade)
  })
  frameFeet(ctx, seen, half, lens)
  ctx.fillStyle = lens.theme.ink
  fillFeet(ctx, seen, half + RIM_PX / pxPerMm, () => true)
  shadeColours.forEach((colour, shade) => {
    ctx.fillStyle = colour
    fillFeet(ctx, seen, half, (mm) => shadeOf(shareOn(scale, mm)) === shade)
  })
}
