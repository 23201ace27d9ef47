import type { FeedFacts } from '../../model/feedFacts'
import type { Fitting, Mouth, Tube } from '../../model/built'
import { feedPlanOf } from './feedPlan'
import { feedFittings } from './feedTakeOff'
import { feedTubes } from './feedTubes'
import { feedFacts, inletPlace, layWater } from './feedWater'
import type { RackPlan } from './plan'
import type { HungTower } from './towers'

/** A row's water, all told: drawn, counted and solved from the same joints. */
export interface Feed {
  readonly facts: FeedFacts
  readonly tubes: readonly Tube[]
  readonly fittings: readonly Fitting[]
  /** Where the row takes its water from a main, or from behind another row's valve. */
  readonly inlet: Mouth
}

export const feedOf = (plan: RackPlan, towers: readonly HungTower[]): Feed => {
  const feed = feedPlanOf(plan)
  const water = layWater(plan, feed, towers)
  return {
    facts: feedFacts(plan, feed, water),
    tubes: feedTubes(plan, feed, water),
    fittings: feedFittings(plan, feed, water),
    inlet: {
      role: water.header.valves ? 'zone-inlet' : 'shared-inlet',
      at: inletPlace(water),
      line: 0,
      station: 0,
    },
  }
}
