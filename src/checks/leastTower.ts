import type { FeedTube } from '../model/feedFacts'
import type { WateredRow } from './rowHeads'

/** Flows as near as this, as a share, are one: which of two like towers comes out less is rounding. */
const SAME_SHARE = 1e-6

/** The first tube, in the order of the row's mouths, whose flow is the least, or the most, that any has. */
const firstNear = ({ row, feed }: WateredRow, flowLph: number): FeedTube | undefined => {
  const closeLph = SAME_SHARE * row.figures.most.flowLph
  let index = 0
  while (index < row.tubeLph.length && Math.abs((row.tubeLph[index] ?? 0) - flowLph) > closeLph) index += 1
  return feed.tubes[index]
}

export const leastTube = (watered: WateredRow): FeedTube | undefined =>
  firstNear(watered, watered.row.figures.least.flowLph)

export const mostTube = (watered: WateredRow): FeedTube | undefined =>
  firstNear(watered, watered.row.figures.most.flowLph)
