import { polyOf } from '../../catalogue/pipe'
import type { BucketTest } from '../../layout/bucketTest'
import { rememberLast } from '../../model/remember'
import { testedBoreM } from './bucketTest'
import { toM } from './metres'
import type { BoreOf } from './rowPiece'

const catalogueBore: BoreOf = (stock) => toM(polyOf(stock).idMm)

/**
 * The bores of microtubes: as the catalogue has them, but for the stock that a bucket test was made with. A test that no
 * bore explains changes nothing. The same function for as long as the test is the same.
 */
export const boresOf = rememberLast((bucket: BucketTest | null): BoreOf => {
  const tested = bucket ? testedBoreM(bucket) : undefined
  if (!bucket || tested === undefined) return catalogueBore
  return (stock) => (stock === bucket.stock ? tested : catalogueBore(stock))
})
