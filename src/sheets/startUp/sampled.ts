import type { FeedTube } from '../../model/feedFacts'

/**
 * Least number of towers that tell how even a zone is: 18 emitters a zone, the sample that field tests of microirrigation
 * go by (University of Florida IFAS Extension, AE193: 18 timed containers at least).
 */
export const LEAST_SAMPLE = 18

/**
 * Which tubes of a row are caught when not all are, by their place in the feed's list: eighteen or all, evenly spread from the
 * first station to the last, whichever line comes up there. A row is at most a zone, so that a zone has eighteen at least.
 */
export const sampledOf = (tubes: readonly FeedTube[]): ReadonlySet<number> => {
  const inOrder = tubes
    .map(({ station, line }, index) => ({ station, line, index }))
    .toSorted((a, b) => a.station - b.station || a.line - b.line)
  const count = Math.min(LEAST_SAMPLE, inOrder.length)
  const step = count > 1 ? (inOrder.length - 1) / (count - 1) : 0
  const places = Array.from({ length: count }, (_, i) => inOrder[Math.round(i * step)]?.index ?? 0)
  return new Set(places)
}
