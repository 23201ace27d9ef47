import { criticalAbove, criticalBelow, type CriticalWidths } from './criticalWidths'

/** What one cart width shows. */
export interface Trial<Stand> {
  /** Whether this cart comes to the stand. */
  readonly comes: (stand: Stand) => boolean
  /** Whether this cart comes somewhere into the lane in which the widest cart that the stand has room for slides freely. */
  readonly meetsLane: (stand: Stand) => boolean
}

/** What is known of each stand: a cart of `lower` comes there, none wider than `upper` does. Settled where they are equal. */
interface Bounds {
  readonly lower: Float64Array
  readonly upper: Float64Array
}

const isOpen = ({ lower, upper }: Bounds, i: number): boolean => (lower[i] ?? 0) < (upper[i] ?? 0)

/** Learn from one trial for every stand that is still open; `below` is the next width worth trying under it. */
const learn = <Stand>(
  bounds: Bounds,
  stands: readonly Stand[],
  width: number,
  below: number,
  { comes, meetsLane }: Trial<Stand>,
): void => {
  const { lower, upper } = bounds
  stands.forEach((stand, i) => {
    const low = lower[i] ?? 0
    const high = upper[i] ?? 0
    if (low >= Math.min(high, width)) return
    if (width > high) {
      // Where this cart stands a narrower one can stand too, and from there it has its lane.
      if (meetsLane(stand)) lower[i] = high
    } else if (comes(stand)) lower[i] = width
    else upper[i] = Math.max(low, below)
  })
}

/** The open stand that may yet take the widest cart; -1 when all are settled. */
const widestOpen = (bounds: Bounds): number => {
  let widest = -1
  bounds.upper.forEach((high, i) => {
    if (isOpen(bounds, i) && high > (bounds.upper[widest] ?? 0)) widest = i
  })
  return widest
}

/** A width between the bounds of a stand: the critical one next above the middle. */
const halfway = ({ lower, upper }: Bounds, i: number, widths: CriticalWidths): number => {
  const low = lower[i] ?? 0
  const high = upper[i] ?? 0
  return Math.min(high, criticalAbove(widths, (low + high) / 2))
}

/**
 * The greatest width at which a cart comes to each stand, in few trials; 0 where a cart of `least` does not come. Most answers
 * are the `most` that the stand itself has room for, and one trial of a wide cart shows that for many; the rest are cut
 * off by a narrow place elsewhere and are halved down to it, again many at once. Between neighbouring critical widths an
 * answer cannot change, and a way that takes a cart takes every narrower one: that makes the answers exact.
 */
export const settleWidths = <Stand extends { readonly most: number }>(
  stands: readonly Stand[],
  least: number,
  widths: CriticalWidths,
  trial: (width: number) => Trial<Stand>,
): Float64Array => {
  const bounds: Bounds = {
    lower: new Float64Array(stands.length),
    upper: Float64Array.from(stands, ({ most }) => (most < least ? 0 : most)),
  }
  const attempt = (width: number): void => {
    const below = criticalBelow(widths, width)
    learn(bounds, stands, width, below < least ? 0 : below, trial(width))
  }
  if (widestOpen(bounds) >= 0) attempt(least)
  for (let i = widestOpen(bounds); i >= 0; i = widestOpen(bounds)) {
    attempt(bounds.upper[i] ?? 0)
    while (isOpen(bounds, i)) attempt(halfway(bounds, i, widths))
  }
  return bounds.lower
}
