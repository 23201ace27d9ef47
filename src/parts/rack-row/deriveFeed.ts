import type { Built, Mouth } from '../../model/built'
import type { Site } from '../../model/site'
import { feedOf } from './feed'
import { planOf } from './plan'
import type { RackRow } from './schema'
import { hungTowers } from './towers'

/**
 * The water of a row and nothing else of it: pipes, tubes, their fittings, tower heads and inlet, as the whole row has
 * them. For asking what another feed would do, a score of times over.
 */
export const deriveFeed = (part: RackRow, site: Site): Built => {
  const plan = planOf(part, site)
  const towers = hungTowers(plan)
  const { facts, tubes, fittings, inlet } = feedOf(plan, towers)
  return {
    part: part.id,
    zFrom: 'rack-datum',
    sticks: [],
    tubes,
    fittings,
    bodies: [],
    mouths: [
      ...towers.map(({ head, line, station }): Mouth => ({ role: 'tower-head', at: head, line, station })),
      inlet,
    ],
    supports: [],
    feed: facts,
  }
}
