import { polyOf } from '../../catalogue/pipe'
import type { BucketTest } from '../../layout/bucketTest'
import { rememberLast } from '../../model/remember'
import { waterAt } from '../../solvers/water/properties'
import { calibratedBoreM, TUBE_LOSS_K } from '../../solvers/water/tube'
import { toM3PerS } from '../../units/flow'
import { toM } from './metres'
import type { BoreOf } from './rowPiece'

const catalogueBore: BoreOf = (stock) => toM(polyOf(stock).idMm)

const testedBoreM = ({ flowLph, headMm, lengthMm, waterC }: BucketTest): number | undefined => {
  const { kinematicM2S } = waterAt(waterC)
  const test = { flowM3S: toM3PerS(flowLph), headM: toM(headMm), lengthM: toM(lengthMm), kinematicM2S }
  return calibratedBoreM(test, TUBE_LOSS_K)
}

/**
 * The bores of microtubes: as the catalogue has them, but for the stock that a bucket test was made with. A test that no
 * bore explains changes nothing. The same function for as long as the test is the same.
 */
export const boresOf = rememberLast((bucket: BucketTest | null): BoreOf => {
  const tested = bucket ? testedBoreM(bucket) : undefined
  if (!bucket || tested === undefined) return catalogueBore
  return (stock) => (stock === bucket.stock ? tested : catalogueBore(stock))
})
