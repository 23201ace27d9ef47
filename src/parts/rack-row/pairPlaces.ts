import { rowLengthMm } from './frame'
import { rackGapMm, sharesPairs } from './joints'
import type { Materials } from './materials'
import type { RackRow } from './schema'

/** Where a pair of risers stands; where the house carries the row, where its straps hang. */
export interface PairPlace {
  /** mm. */
  readonly u: number
  /** From 0 at the high end; of a shared pair the rack below it. */
  readonly rack: number
  readonly isShared: boolean
  /** At an end of what stands by itself: the row, or a rack of J2. */
  readonly isEnd: boolean
  /** At the low end of that. */
  readonly isLast: boolean
}

/** From a rack's first riser pair to its last, as they stand before the end pairs of the row make way for whole rails; u in mm. */
export interface RackSpan {
  readonly fromU: number
  readonly toU: number
}

/** End pairs move in by so much of the way between them at most: a third is left. */
const MOST_SHARE = 1 / 3

export const rackSpans = (part: RackRow, materials: Materials): RackSpan[] => {
  const { racks, rackLengthMm, endInMm } = part
  const gapMm = racks === 1 ? 0 : rackGapMm(part, materials)
  const inMm = Math.min(endInMm, (rackLengthMm - gapMm) * MOST_SHARE)
  const besideLineMm = sharesPairs(part) ? 0 : gapMm / 2 + inMm
  return Array.from({ length: racks }, (_, rack) => ({
    fromU: rack === 0 ? inMm : rack * rackLengthMm + besideLineMm,
    toU: (rack + 1) * rackLengthMm - (rack === racks - 1 ? inMm : besideLineMm),
  }))
}

/** Riser pairs from the high end down, evenly along each rack. */
export const pairPlaces = (part: RackRow, spans: readonly RackSpan[], insetMm: number): PairPlace[] => {
  const bays = part.midPairs + 1
  const within = (u: number) => Math.min(Math.max(u, insetMm), rowLengthMm(part) - insetMm)
  const isShared = sharesPairs(part)
  return spans.flatMap(({ fromU, toU }, rack) => {
    // A pair that two racks share comes with the one below.
    const bringsLast = !isShared || rack === spans.length - 1
    return Array.from({ length: bringsLast ? bays + 1 : bays }, (_, index) => {
      const isFirst = index === 0
      const isLast = index === bays
      return {
        u: within(fromU + (index * (toU - fromU)) / bays),
        rack,
        isShared: isShared && isFirst && rack > 0,
        isEnd: isLast || (isFirst && (!isShared || rack === 0)),
        isLast,
      }
    })
  })
}
