import { polyOf } from '../catalogue/pipe'
import type { FeedFacts } from '../model/feedFacts'
import type { Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'
import { biggerLaterals, biggerPipes } from './pipeSizes'
import { isGraded, lengthSpread, type RowHeads, tubeLawOf, type WateredRow } from './rowHeads'

/**
 * What is left of the loss along a lateral when its run is halved, and when it is quartered: (1/2)^2.75 and (1/4)^2.75 are
 * 1/6.7 and 1/45; the tees and sub-headers take some of it back. Laid too high rather than too low, so that a mend mends.
 */
const HALVED = 0.155
const QUARTERED = 1 / 25

/** Where a lateral's water parts to two sides, its way in passes half as much to each, and loses a quarter. */
const SHARED = 1 / 4

/** A header along more laterals than these loses more itself than its tees do. */
const FEW_LATERALS = 2

/** How the loss along a lateral goes with its bore: between 4, smooth, and 4.75, churned. */
const BORE_POWER = 4.5

/** With less loss more flows, and that loses more. */
const GROWS = 1.02

/** Flow goes with this power of the head at least, where a mend is promised; less would promise too much. */
const LEAST_POWER = 0.8

/** A mend must promise this much spread or less, so that what the rest of the bay does to it can't spoil it. */
const PROMISED_SPREAD = 0.09

/** And its least tower so much of the flow wanted. */
const PROMISED_SHARE = 0.78

interface Change {
  readonly mend: (part: PartId) => Mend
  /** What it leaves of the loss along the laterals, and of what lies between where the one and the other takes its water. */
  readonly leaves: number
  readonly leavesHeader: number
}

const setting =
  (field: string, value: string) =>
  (part: PartId): Mend => ({ kind: 'set', part, field, value })

const splitting =
  (feed: 'centre-split' | 'double-split') =>
  (part: PartId): Mend => ({ kind: 'split', part, feed })

const splits = ({ kind, laterals: { length } }: FeedFacts): readonly Change[] => {
  const leavesHeader = length > FEW_LATERALS ? 1 : SHARED
  switch (kind) {
    case 'straight':
      return [
        { mend: splitting('centre-split'), leaves: HALVED, leavesHeader },
        { mend: splitting('double-split'), leaves: QUARTERED, leavesHeader: 1 },
      ]
    case 'ring':
      return [{ mend: splitting('double-split'), leaves: QUARTERED / HALVED, leavesHeader }]
    case 'centre-split':
      return [{ mend: setting('feed', 'double-split'), leaves: QUARTERED / HALVED, leavesHeader: 1 }]
    case 'double-split':
      return []
  }
}

const lateralStock = ({ pipes }: FeedFacts): string | undefined =>
  pipes.find(({ role }) => role === 'lateral')?.stock

const shrunk = (fromMm: number, toMm: number): number => (fromMm / toMm) ** BORE_POWER

const laterals = (feed: FeedFacts): readonly Change[] => {
  const stock = lateralStock(feed)
  if (stock === undefined) return []
  const { idMm } = polyOf(stock)
  return biggerLaterals(stock).map((poly) => ({
    mend: setting('lateral', poly.key),
    leaves: shrunk(idMm, poly.idMm),
    leavesHeader: 1,
  }))
}

const headers = ({ inletStock }: FeedFacts): readonly Change[] => {
  const { idMm } = polyOf(inletStock)
  return biggerPipes(inletStock).map((poly) => ({
    mend: setting('header', poly.key),
    leaves: 1,
    leavesHeader: shrunk(idMm, poly.idMm),
  }))
}

const sizes = (feed: FeedFacts): readonly Change[] => [...laterals(feed), ...headers(feed)]

/** One split first, then bigger laterals, then a second split: from what takes the fewest fittings to what takes the most. */
const changes = rememberEach<FeedFacts, null, readonly Change[]>((feed) => {
  const [split, ...more] = splits(feed)
  if (!split) return sizes(feed)
  return feed.kind === 'straight' ? [split, ...sizes(feed), ...more] : [...sizes(feed), split]
})

/**
 * Spread of a row at its mean flow with so much of its lateral's loss left: flows go with a power of the head. Shares of 1;
 * 1 where a tube's head would be gone.
 */
const spreadWith = (
  { leaves, leavesHeader }: Change,
  power: number,
  meanMm: number,
  { alongMm, betweenMm, levelMm }: RowHeads,
  lengths: number,
): number => {
  const lostMm = GROWS * (leaves * alongMm + leavesHeader * betweenMm)
  const halfMm = (lostMm + levelMm + lengths * meanMm) / 2
  return halfMm < meanMm ? 1 - ((meanMm - halfMm) / (meanMm + halfMm)) ** power : 1
}

/**
 * The least change of a row's feed after which its towers are even by its own numbers: the loss along its laterals, how
 * level its tubes end, and what its tubes pass. Undefined where no one change does it.
 */
export const evenFeed = (
  watered: WateredRow,
  heads: RowHeads,
  targetLph: number,
  waterC: number,
): Mend | undefined => {
  const { row, feed } = watered
  const { meanLph } = row.figures
  if (!(meanLph > 0) || isGraded(feed)) return undefined
  const law = tubeLawOf(watered, waterC)
  const meanMm = law.headAt(meanLph)
  const power = Math.max(LEAST_POWER, law.powerAt(meanLph))
  const change = changes(feed, null).find((each) => {
    const spread = spreadWith(each, power, meanMm, heads, lengthSpread(feed, null))
    return spread <= PROMISED_SPREAD && meanLph * (1 - spread) >= PROMISED_SHARE * targetLph
  })
  return change?.mend(row.part)
}
