import { length3 } from '../../geometry/point'
import type { FeedTube } from '../../model/feedFacts'
import { stationsAlong, type LateralLaid } from './feedLaterals'
import { jointAt, type PipesLaid } from './feedPipes'
import { NEAR_MM, type FeedPlan } from './feedPlan'
import { fedAlong } from './lateralCuts'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'
import type { HungTower } from './towers'

/**
 * How many stations the water passes before each, along its branch. A station right where water comes in is passed by
 * both branches that leave from there.
 */
const stationsBefore = (plan: RackPlan, feed: FeedPlan): number[] => {
  const along = stationsAlong(plan)
  const ins = fedAlong(plan, feed)
  return along.map((alongMm) => {
    const from = ins.reduce((a, b) => (Math.abs(b - alongMm) < Math.abs(a - alongMm) - NEAR_MM ? b : a))
    const [low, high] = [Math.min(from, alongMm), Math.max(from, alongMm)]
    const passed = along.filter((other) => other >= low - NEAR_MM && other <= high + NEAR_MM)
    return passed.length - 1
  })
}

/** Index of the colour group that a station falls in; the last group takes all that are left. */
const groupAt = ({ gradedTubes }: RackRow, before: number): number => {
  let left = before
  const group = gradedTubes.findIndex(({ stations }) => (left -= stations) < 0)
  return group < 0 ? Math.max(0, gradedTubes.length - 1) : group
}

/** The colour group of each station from the start of the row; all 0 where tubes are cut alike. */
export const stationGroups = (plan: RackPlan, feed: FeedPlan): readonly number[] =>
  plan.part.gradedTubes.length === 0 ? [] : stationsBefore(plan, feed).map((n) => groupAt(plan.part, n))

/** The joint of a lateral's barbs at each station; 0 where no tower hangs. */
const barbJoints = (plan: RackPlan, { stops }: LateralLaid): Int32Array => {
  const joints = new Int32Array(plan.positions.barU.length)
  let stop = 0
  stationsAlong(plan).forEach((alongMm, station) => {
    while (stop < stops.length && (stops[stop]?.alongMm ?? 0) < alongMm - NEAR_MM) stop += 1
    joints[station] = stops[stop]?.joint ?? 0
  })
  return joints
}

/** A tube for each tower, from its barb to the tower's top, cut as its group is and never too short to turn the tower. */
export const microtubes = (
  plan: RackPlan,
  feed: FeedPlan,
  laid: PipesLaid,
  laterals: readonly LateralLaid[],
  towers: readonly HungTower[],
): FeedTube[] => {
  const { part } = plan
  const groups = stationGroups(plan, feed)
  const joints = laterals.map((lateral) => barbJoints(plan, lateral))
  return towers.map(({ station, line, head }) => {
    const joint = joints[feed.lateralOfLine[line - 1] ?? 0]?.[station - 1] ?? 0
    const group = groups[station - 1] ?? 0
    const cutMm = part.gradedTubes[group]?.lengthMm ?? part.microtubeMm
    const leastMm = length3(jointAt(laid, joint), head) + part.tubeSlackMm
    const lengthMm = Math.max(cutMm, leastMm)
    return { joint, station, line, stock: part.microtube, lengthMm, outlet: head, group }
  })
}
