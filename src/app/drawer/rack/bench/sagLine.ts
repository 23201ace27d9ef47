import type { Point } from '../../../../geometry/point'
import type { RailLine, RailSpan, StrengthState } from '../../../../model/strength'
import { type Laid, onSheet } from '../../../../sheets/assembly/shapes'
import type { Stretch } from './stretch'

/** Magnifications that a person can reckon with. */
const TIMES = [1, 2, 5, 10, 20, 50, 100]

/** No sag is drawn deeper than this, mm of glass. */
const DEEPEST_MM = 5

/** How many times a sag is drawn at a scale: the most that stays shallow enough to be read as a line. */
export const sagTimes = (mostMm: number, scale: number): number =>
  TIMES.findLast((times) => mostMm * scale * times <= DEEPEST_MM) ?? 1

const mostSag = ({ curve }: RailLine): number => Math.max(0, ...curve.sagMm)

/** A span of a rail that is not within what it may, mm of glass. */
export interface Strip {
  readonly state: StrengthState
  readonly from: Point
  readonly to: Point
}

/** The spans of a rail to look at, as far as they are drawn. */
export const stripsOf = ({ spans, z }: RailLine, { fromU, toU }: Stretch, laid: Laid): readonly Strip[] =>
  spans
    .filter((span) => span.state !== 'Within' && span.toU > fromU && span.fromU < toU)
    .map((span) => ({
      state: span.state,
      from: onSheet(laid, { x: Math.max(span.fromU, fromU), y: z }),
      to: onSheet(laid, { x: Math.min(span.toU, toU), y: z }),
    }))

/** Rails of a row lie behind each other in the elevation: the one that sags most is drawn. */
export const sagging = (rails: readonly RailLine[]): RailLine | undefined =>
  rails.reduce<RailLine | undefined>(
    (most, rail) => (most === undefined || mostSag(rail) > mostSag(most) ? rail : most),
    undefined,
  )

/** The greatest stress of a span with everything hung: the curve's moment over the span's own section. */
const stressHung = ({ curve }: RailLine, span: RailSpan): number => {
  const { fromU, toU, momentNmm, stressMpa } = span
  const moments = curve.u.map((u, i) => (u >= fromU && u <= toU ? Math.abs(curve.momentNmm[i] ?? 0) : 0))
  return momentNmm === 0 ? 0 : (Math.max(0, ...moments) * stressMpa) / Math.abs(momentNmm)
}

/** Spans that would not spring back with everything hung: past the yield that is assumed, an elastic sag says nothing. */
export const bentSpans = (rail: RailLine, yieldMpa: number): readonly RailSpan[] =>
  rail.spans.filter((span) => stressHung(rail, span) > yieldMpa)

/** The sag of a rail as it is drawn, mm of glass. */
export interface SagLine {
  readonly times: number
  /** Unbroken runs. */
  readonly runs: readonly (readonly Point[])[]
  readonly deepest: { readonly sagMm: number; readonly at: Point } | undefined
  readonly bent: readonly RailSpan[]
}

/** The sag of a rail over a stretch of it; what is bent is left out. */
export const sagLine = (rail: RailLine, { fromU, toU }: Stretch, laid: Laid, yieldMpa: number): SagLine => {
  const bent = bentSpans(rail, yieldMpa)
  const isBent = (u: number) => bent.some((span) => u > span.fromU && u < span.toU)
  const along = rail.curve.u
    .map((u, i) => ({ u, sagMm: rail.curve.sagMm[i] ?? 0 }))
    .filter(({ u }) => u >= fromU && u <= toU)
  const kept = along.filter(({ u }) => !isBent(u))
  const times = sagTimes(Math.max(0, ...kept.map(({ sagMm }) => sagMm)), laid.scale)
  const drawn = ({ u, sagMm }: (typeof along)[number]): Point =>
    onSheet(laid, { x: u, y: rail.z - sagMm * times })
  const runs: Point[][] = [[]]
  for (const place of along) {
    if (isBent(place.u)) runs.push([])
    else runs.at(-1)?.push(drawn(place))
  }
  const most = kept.reduce<(typeof along)[number] | undefined>(
    (deepest, place) => (deepest === undefined || place.sagMm > deepest.sagMm ? place : deepest),
    undefined,
  )
  return {
    times,
    runs: runs.filter(({ length }) => length > 1),
    deepest: most && most.sagMm > 0 ? { sagMm: most.sagMm, at: drawn(most) } : undefined,
    bent: bent.filter((span) => span.toU > fromU && span.fromU < toU),
  }
}
