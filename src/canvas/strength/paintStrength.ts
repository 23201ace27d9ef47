import { shadeColours, shadeOf } from '../../drawing/cividis'
import type { CanvasLike } from '../../drawing/paint'
import { overlaps } from '../../geometry/box'
import type { StrengthState } from '../../model/strength'
import type { Lens } from '../lens'
import { stateColour } from '../stateInk'
import type { PlacedSpan, RowSpans } from './strengthSpans'

/** A rail is painted wider than it is, so that its shade can be seen; px, and never over so much of the floor. */
const RAIL_PX = 6
const WIDEST_MM = 300
const RIM_PX = 1
/** How far the casing of a state stands out: what only a load test speaks for, and what is too long. */
const CASED: readonly (readonly [StrengthState, number])[] = [
  ['Proof-load', 3],
  ['Too long', 4],
]

const trace = (
  ctx: CanvasLike,
  spans: readonly PlacedSpan[],
  isTaken: (span: PlacedSpan['span']) => boolean,
) => {
  ctx.beginPath()
  for (const { from, to, span } of spans) {
    if (!isTaken(span)) continue
    ctx.moveTo(from.x, from.y)
    ctx.lineTo(to.x, to.y)
  }
  ctx.stroke()
}

/**
 * Strokes every span of every rail by the share of its limit that is used, one path a shade; spans that are not within are cased
 * in their state's colour. The context's transform is in mm of floor.
 */
export const paintStrength = (
  ctx: CanvasLike,
  rows: readonly RowSpans[],
  { paint: { pxPerMm, within }, theme }: Lens,
): void => {
  const spans = rows.filter(({ box }) => overlaps(box, within)).flatMap((row) => row.spans)
  const railMm = Math.min(RAIL_PX / pxPerMm, WIDEST_MM)
  ctx.setLineDash([])
  ctx.lineCap = 'butt'
  for (const [state, px] of CASED) {
    ctx.lineWidth = railMm + (2 * px) / pxPerMm
    ctx.strokeStyle = stateColour(state, theme)
    trace(ctx, spans, (span) => span.state === state)
  }
  ctx.lineWidth = railMm + (2 * RIM_PX) / pxPerMm
  ctx.strokeStyle = theme.ink
  trace(ctx, spans, () => true)
  ctx.lineWidth = railMm
  shadeColours.forEach((colour, shade) => {
    ctx.strokeStyle = colour
    trace(ctx, spans, ({ used }) => shadeOf(used) === shade)
  })
}
