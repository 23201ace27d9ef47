import type { Place } from '../../geometry/point'
import type { FeedFacts, FeedTube } from '../../model/feedFacts'
import { layHeader, type HeaderLaid } from './feedHeader'
import { countBarbs, layCrossPipe, layLateral, type LateralLaid } from './feedLaterals'
import type { PipesLaid } from './feedPipes'
import type { FeedPlan } from './feedPlan'
import { lateralsFacts } from './lateralFacts'
import { microtubes } from './microtubes'
import type { RackPlan } from './plan'
import type { HungTower } from './towers'

/** Every joint and pipe of a row, from where water comes in to the open ends of the tubes. */
export interface WaterLaid {
  readonly laid: PipesLaid
  readonly header: HeaderLaid
  readonly laterals: readonly LateralLaid[]
  /** Joints of the pipe that closes a ring; none of another feed. */
  readonly crossRun: readonly number[]
  readonly tubes: readonly FeedTube[]
}

export const layWater = (plan: RackPlan, feed: FeedPlan, towers: readonly HungTower[]): WaterLaid => {
  const laid: PipesLaid = { joints: [], pipes: [] }
  const header = layHeader(plan, feed, laid)
  const barbs = countBarbs(plan, feed, towers)
  const laterals = header.entries.map((entry, lateral) =>
    layLateral(plan, feed, laid, lateral, entry, barbs[lateral] ?? new Uint8Array()),
  )
  const crossRun = layCrossPipe(plan, feed, laid, laterals)
  return { laid, header, laterals, crossRun, tubes: microtubes(plan, feed, laid, laterals, towers) }
}

/** Where the row takes its water: the foot of its riser pipe, or the start of its header behind another row's valve. */
export const inletPlace = ({ laid }: WaterLaid): Place => laid.joints[0] ?? { x: 0, y: 0, z: 0 }

/** What the row's pipes say of themselves. */
export const feedFacts = (plan: RackPlan, feed: FeedPlan, water: WaterLaid): FeedFacts => ({
  kind: feed.kind,
  joints: water.laid.joints,
  pipes: water.laid.pipes,
  valves: water.header.valves,
  shareJoint: water.header.head,
  tubes: water.tubes,
  laterals: lateralsFacts(plan, feed, water.laterals),
  inletStock: feed.header,
  waterFrom: plan.part.waterFrom ?? undefined,
})
