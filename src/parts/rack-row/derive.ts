import type { Built, Mouth, Stick } from '../../model/built'
import type { Site } from '../../model/site'
import { bodiesOf, floorSupports } from './bodies'
import { braceSticks } from './braces'
import { conduitSticks } from './conduits'
import { rackFacts } from './facts'
import { feedOf, type Feed } from './feed'
import { rackFittings } from './fittings'
import { frameSticks } from './frames'
import { gutterSticks, outletMouths } from './gutters'
import { standingPairs } from './pairs'
import { planOf, type RackPlan } from './plan'
import { runnerSticks } from './runners'
import type { RackRow } from './schema'
import { hungTowers, type HungTower } from './towers'
import { troughFacts } from './troughFacts'

const sticksOf = (plan: RackPlan): Stick[] => {
  const pairs = standingPairs(plan)
  return [
    ...frameSticks(plan, pairs),
    ...braceSticks(plan, pairs),
    ...runnerSticks(plan),
    ...conduitSticks(plan),
    ...gutterSticks(plan),
  ]
}

const mouthsOf = (plan: RackPlan, { inlet }: Feed, towers: readonly HungTower[]): Mouth[] => [
  ...towers.map(({ head, line, station }): Mouth => ({ role: 'tower-head', at: head, line, station })),
  ...outletMouths(plan),
  inlet,
]

/** A row of racks to its built things; every part of it reads the one plan. */
export const deriveRackRow = (part: RackRow, site: Site): Built => {
  const plan = planOf(part, site)
  const towers = hungTowers(plan)
  const feed = feedOf(plan, towers)
  const sticks = sticksOf(plan)
  return {
    part: part.id,
    zFrom: 'rack-datum',
    sticks,
    tubes: feed.tubes,
    fittings: [...rackFittings(plan, sticks, towers), ...feed.fittings],
    bodies: bodiesOf(plan),
    mouths: mouthsOf(plan, feed, towers),
    supports: floorSupports(plan),
    rack: rackFacts(plan, towers.length),
    trough: troughFacts(plan, sticks),
    feed: feed.facts,
  }
}
