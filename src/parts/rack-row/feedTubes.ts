import type { Place } from '../../geometry/point'
import type { FeedTube } from '../../model/feedFacts'
import type { Tube } from '../../model/built'
import { pathLength } from '../points'
import { jointAt, type PipesLaid } from './feedPipes'
import { feedPlace, lateralLevel, type FeedPlan } from './feedPlan'
import type { WaterLaid } from './feedWater'
import { LATERAL_END_MM, lateralCuts, SLACK } from './lateralCuts'
import type { RackPlan } from './plan'

const pipe = (role: Tube['role'], stock: string, path: readonly Place[], endsMm: number): Tube => ({
  role,
  stock,
  path,
  lengthMm: pathLength(path) * SLACK + endsMm,
})

const lateralTubes = (plan: RackPlan, feed: FeedPlan): Tube[] => {
  const cuts = lateralCuts(plan, feed)
  return feed.lateralRightMm.flatMap((rightMm) => {
    const places = cuts.map((alongMm) => feedPlace(plan, alongMm, rightMm, lateralLevel(plan, feed, alongMm)))
    return places.slice(1).map((to, index) => {
      const ends = Number(index === 0) + Number(index === places.length - 2)
      return pipe('lateral', plan.part.lateral, [places[index] ?? to, to], ends * LATERAL_END_MM)
    })
  })
}

const microtube = (laid: PipesLaid, { joint, outlet, stock, lengthMm }: FeedTube): Tube => ({
  role: 'microtube',
  stock,
  path: [jointAt(laid, joint), outlet],
  lengthMm,
})

/** All pipes and tubes as they are cut; the pipes run exactly where the feed's own facts have them. */
export const feedTubes = (plan: RackPlan, feed: FeedPlan, water: WaterLaid): Tube[] => {
  const { laid, header, laterals, crossRun, tubes } = water
  const run = (role: Tube['role'], stock: string, joints: readonly number[]): Tube =>
    pipe(
      role,
      stock,
      joints.map((joint) => jointAt(laid, joint)),
      0,
    )
  const [foot] = header.riserRun
  return [
    ...(foot === undefined ? [] : [run('riser-pipe', feed.header, [foot, header.head])]),
    ...header.headerRuns.map((joints) => run('header', feed.header, joints)),
    ...laterals.flatMap(({ subHeaderRuns }) =>
      subHeaderRuns.map((joints) => run('sub-header', feed.header, joints)),
    ),
    ...(crossRun.length > 1 ? [run('header', plan.part.lateral, crossRun)] : []),
    ...lateralTubes(plan, feed),
    ...tubes.map((tube) => microtube(laid, tube)),
  ]
}
