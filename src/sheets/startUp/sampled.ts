import type { FeedTube } from '../../model/feedFacts'

/**
 * Least number of towers that tell how even a zone is: 18 emitters a zone, the sample that field tests of microirrigation
 * go by (University of Florida IFAS Extension, AE193: 18 timed containers at least).
 */
export const LEAST_SAMPLE = 18

/** Tubes by their place in the feed's list, station by station along the row. */
const byStation = (tubes: readonly FeedTube[]): readonly (readonly number[])[] => {
  const stations = new Map<number, number[]>()
  for (const [index, { station }] of tubes.entries()) {
    const own = stations.get(station)
    if (own) own.push(index)
    else stations.set(station, [index])
  }
  return [...stations].toSorted(([a], [b]) => a - b).map(([, own]) => own)
}

/**
 * Which tubes of a row are caught when not all are, by their place in the feed's list: eighteen or all, evenly spread from the
 * first station to the last, line after line in turn. A row is at most a zone, so that a zone has eighteen at least.
 */
export const sampledOf = (tubes: readonly FeedTube[]): ReadonlySet<number> => {
  const stations = byStation(tubes)
  const count = Math.min(LEAST_SAMPLE, tubes.length)
  const step = (stations.length - 1) / Math.max(1, count - 1)
  const taken = new Set<number>()
  for (let i = 0; i < count; i += 1) {
    const left = (stations[Math.round(i * step)] ?? []).filter((index) => !taken.has(index))
    const next = left[i % Math.max(1, left.length)] ?? tubes.findIndex((_, index) => !taken.has(index))
    taken.add(next)
  }
  return taken
}
