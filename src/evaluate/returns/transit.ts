import { gutterOf } from '../../catalogue/gutter'
import type { Built } from '../../model/built'
import type { FeedFacts, FeedPipe } from '../../model/feedFacts'
import { rememberEach } from '../../model/remember'
import type { TroughReturn } from '../../model/returns'
import type { TroughFacts } from '../../model/troughFacts'
import { normalDepthMm } from '../../solvers/gravity/manning'
import type { ReturnInputs } from '../4-returns'
import { lineTowers } from './flows'
import { litresIn, polyL, shareOver } from './pipes'
import { channelOf, fallOnSite } from './troughLines'

/** What a row lets go of when the pump stops, L; all of it by its tower tips and outlets but what lies below its tubes. */
export interface RowTransit {
  readonly towersL: number
  readonly troughsL: number
  /** In riser pipe, headers, laterals and microtubes over the lowest tube end: it runs out by the tubes, come what may. */
  readonly overTubesL: number
  /** In the riser pipe under it: that runs back through the pump, where no check valve holds it. */
  readonly underTubesL: number
}

type FeedStore = Pick<RowTransit, 'overTubesL' | 'underTubesL'>

const pipeStore = ({ joints }: FeedFacts, pipe: FeedPipe, tubeEndMm: number): FeedStore => {
  const heldL = polyL(pipe.stock, pipe.lengthMm)
  const share = shareOver(tubeEndMm, joints[pipe.from]?.z ?? 0, joints[pipe.to]?.z ?? 0)
  return { overTubesL: share * heldL, underTubesL: (1 - share) * heldL }
}

/** Heights are over the rack datum: on a row whose rails climb, the climb is left out, which is some inches of riser pipe. */
const feedStore = rememberEach<FeedFacts, null, FeedStore>((feed) => {
  const tubeEndMm = Math.min(...feed.tubes.map(({ outlet }) => outlet.z))
  let [overTubesL, underTubesL] = [0, 0]
  for (const pipe of feed.pipes) {
    const store = pipeStore(feed, pipe, tubeEndMm)
    overTubesL += store.overTubesL
    underTubesL += store.underTubesL
  }
  for (const { stock, lengthMm } of feed.tubes) overTubesL += polyL(stock, lengthMm)
  return { overTubesL, underTubesL }
})

const NO_STORE: FeedStore = { overTubesL: 0, underTubesL: 0 }

/** What the water standing in a row's troughs is reckoned from. */
interface Standing {
  /** Of the line that carries most. */
  readonly flowLph: number
  readonly standingL: number
  readonly fallMmPerM: number
  readonly n: number
}

const isSameStanding = (a: Standing, b: Standing): boolean =>
  a.flowLph === b.flowLph && a.standingL === b.standingL && a.fallMmPerM === b.fallMmPerM && a.n === b.n

/**
 * Water in all lines of a row's troughs, L: as deep over their whole length as the fullest of them runs at its outlet, on
 * the width of their bottom. An upper estimate, as the trade reckons it, for at the high end nothing runs; or what was found
 * to stand in them, if that is more or they do not fall.
 */
const troughsL = rememberEach<TroughFacts, Standing, number>(
  (trough, { flowLph, standingL, fallMmPerM, n }) => {
    const { section, slopeMmPerM } = channelOf(trough, fallMmPerM, n)
    const depthMm = normalDepthMm(section, flowLph, slopeMmPerM, n) ?? 0
    const ruleL = trough.lines * litresIn(gutterOf(trough.gutter).bottomMm * depthMm, trough.runMm)
    return Math.max(ruleL, standingL)
  },
  isSameStanding,
)

const standingOf = (
  built: Built,
  { flowLph, standingL }: TroughReturn,
  { levels, settings }: ReturnInputs,
): Standing => ({ flowLph, standingL, fallMmPerM: fallOnSite(built, levels), n: settings.manningN })

const towersIn = rememberEach<Built, null, number>((built) =>
  lineTowers(built, null).reduce((sum, count) => sum + count, 0),
)

/** What a row, or a lone trough, lets go of when the pump stops. */
export const rowTransit = (
  built: Built,
  running: TroughReturn | undefined,
  inputs: ReturnInputs,
): RowTransit => {
  const { trough, feed } = built
  return {
    towersL: towersIn(built, null) * inputs.settings.towerHoldUpL,
    troughsL: trough && running ? troughsL(trough, standingOf(built, running, inputs)) : 0,
    ...(feed ? feedStore(feed, null) : NO_STORE),
  }
}
