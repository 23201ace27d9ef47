import type { FeedTube } from '../model/feedFacts'
import type { WateredRow } from './rowHeads'

/** Flows as near as this, as a share, are one: which of two like towers comes out less is rounding. */
const SAME_SHARE = 1e-6

/** The tube that gives the least: of like ones the first in the order of the row's mouths. */
export const leastTube = ({ row, feed }: WateredRow): FeedTube | undefined => {
  const { least, most } = row.figures
  const closeLph = SAME_SHARE * most.flowLph
  const index = row.tubeLph.findIndex((flow) => flow - least.flowLph <= closeLph)
  return feed.tubes[index]
}
