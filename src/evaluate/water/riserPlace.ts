import { isFedInMiddle } from '../../parts/rack-row/feedSizes'
import type { RackRow } from '../../parts/rack-row/schema'
import { type FeedValues, feedVariant, type FeedVariant, type RowBay } from './feedVariant'
import { pipeLengthMm, rowParts } from './rowParts'

/** A row fed another way, and the fields that make it so. */
interface Laid {
  readonly values: FeedValues
  readonly variant: FeedVariant
}

const laid = (row: RackRow, values: FeedValues, bay: RowBay): Laid => ({
  values,
  variant: feedVariant(row, values, bay),
})

const pipeMm = ({ variant }: Laid): number => pipeLengthMm(rowParts(variant.things))

/** What gets water beats what does not; of two that do, the one that takes less pipe. */
const isBetter = (a: Laid, b: Laid): boolean => {
  if (a.variant.isJoined !== b.variant.isJoined) return a.variant.isJoined
  return a.variant.isJoined && pipeMm(a) < pipeMm(b)
}

/**
 * The row fed another way so that its water still comes to it: a split feed gets its riser pipe in the middle of the row
 * or at its end, whichever a main is in reach of, and of both the one that takes less pipe. A row that is split already
 * keeps its place while water comes there.
 */
export const laidToReach = (row: RackRow, values: FeedValues, bay: RowBay): Laid => {
  const own = laid(row, values, bay)
  const isSettled = isFedInMiddle(row) && own.variant.isJoined
  if (!isFedInMiddle(own.variant.part) || isSettled) return own
  const other = laid(row, { ...values, riserAt: row.riserAt === 'middle' ? 'inlet-end' : 'middle' }, bay)
  return isBetter(other, own) ? other : own
}
