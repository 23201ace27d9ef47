import { boresOf } from '../../evaluate/water/bores'
import type { Settings } from '../../layout/settings'
import type { FeedFacts, FeedTube } from '../../model/feedFacts'
import type { RowWater } from '../../model/water'
import type { Pipe } from '../../solvers/water/friction'
import { waterAt } from '../../solvers/water/properties'
import { TUBE_LOSS_K, tubeFlowM3S, tubeHeadM } from '../../solvers/water/tube'
import { fromM3PerS, toM3PerS } from '../../units/flow'
import { toHeadM } from '../../units/head'

/** What each tower gets where its own tube end hangs too high or too low, in the order of the feed's tubes. */
export interface LevelBand {
  readonly lowLph: Float64Array
  readonly highLph: Float64Array
  /** What the tower that loses most loses, as a share of what it gets with its tube end in place. */
  readonly mostLost: number
}

type TubeSettings = Pick<Settings, 'waterC' | 'bucket' | 'outletErrorMm'>

/**
 * Flow of each tower of a row if its tube end alone hangs higher or lower than it should by `outletErrorMm`: exact for
 * one tube among many, since one tube changes nothing of the head that drives it.
 */
export const levelBand = (feed: FeedFacts, { tubeLph }: RowWater, settings: TubeSettings): LevelBand => {
  const { kinematicM2S } = waterAt(settings.waterC)
  const boreOf = boresOf(settings.bucket)
  const offM = toHeadM(settings.outletErrorMm)
  const pipeOf = ({ stock, lengthMm }: FeedTube): Pipe => ({
    boreM: boreOf(stock),
    lengthM: toHeadM(lengthMm),
    lossK: TUBE_LOSS_K,
  })
  const flowWith = (shiftM: number) =>
    Float64Array.from(feed.tubes, (tube, i) => {
      const pipe = pipeOf(tube)
      const headM = tubeHeadM(toM3PerS(tubeLph[i] ?? 0), pipe, kinematicM2S)
      return fromM3PerS(tubeFlowM3S(headM + shiftM, pipe, kinematicM2S))
    })
  const lowLph = flowWith(-offM)
  const lost = lowLph.map((low, i) => (tubeLph[i] ? 1 - low / (tubeLph[i] ?? low) : 0))
  return { lowLph, highLph: flowWith(offM), mostLost: lost.reduce((a, b) => Math.max(a, b), 0) }
}
