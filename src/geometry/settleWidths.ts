import { criticalAbove, criticalBelow, type CriticalWidths } from './criticalWidths'

/** Whether a cart of some width comes to a stand. */
type Comes<Stand> = (stand: Stand) => boolean

/** What is known of each stand: a cart of `lower` comes there, none wider than `upper` does. Settled where they are equal. */
interface Bounds {
  readonly lower: Float64Array
  readonly upper: Float64Array
}

const isOpenAt = ({ lower, upper }: Bounds, i: number, width: number): boolean =>
  (lower[i] ?? 0) < width && width <= (upper[i] ?? 0)

/** Raise or lower the bounds of every stand that is still open at `width`; `below` is the next width worth trying under it. */
const record = <Stand>(
  bounds: Bounds,
  stands: readonly Stand[],
  width: number,
  below: number,
  comes: Comes<Stand>,
): void => {
  const { lower, upper } = bounds
  stands.forEach((stand, i) => {
    if (!isOpenAt(bounds, i, width)) return
    if (comes(stand)) lower[i] = width
    else upper[i] = Math.max(lower[i] ?? 0, below)
  })
}

const firstOpen = ({ lower, upper }: Bounds): number => lower.findIndex((low, i) => low < (upper[i] ?? 0))

/** A width between the bounds of a stand: the critical one next above the middle. */
const halfway = ({ lower, upper }: Bounds, i: number, widths: CriticalWidths): number => {
  const low = lower[i] ?? 0
  const high = upper[i] ?? 0
  return Math.min(high, criticalAbove(widths, (low + high) / 2))
}

/**
 * The greatest width at which a cart comes to each stand, in few trials: most answers are the most that the stand itself
 * has room for (`most`), which one trial a width confirms for all; the rest are cut off by a narrow place elsewhere and are
 * halved down to it. 0 where a cart of `least` does not come. Between neighbouring critical widths an answer
 * cannot change, and a way that takes a cart takes every narrower one: that makes the answers exact.
 */
export const settleWidths = <Stand>(
  stands: readonly Stand[],
  most: Float64Array,
  least: number,
  widths: CriticalWidths,
  trial: (width: number) => Comes<Stand>,
): Float64Array => {
  const bounds: Bounds = {
    lower: new Float64Array(stands.length),
    upper: most.map((width) => (width < least ? 0 : width)),
  }
  const attempt = (width: number): void => {
    if (!stands.some((_, i) => isOpenAt(bounds, i, width))) return
    const below = criticalBelow(widths, width)
    record(bounds, stands, width, below < least ? 0 : below, trial(width))
  }
  attempt(least)
  for (const width of new Set(most.toSorted().reverse())) attempt(width)
  for (let open = firstOpen(bounds); open >= 0; open = firstOpen(bounds)) {
    attempt(halfway(bounds, open, widths))
  }
  return bounds.lower
}
