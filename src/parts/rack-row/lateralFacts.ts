import type { FeedEnd, FeedLateral } from '../../model/feedFacts'
import type { LateralLaid } from './feedLaterals'
import type { FeedPlan } from './feedPlan'
import type { RackPlan } from './plan'
import type { RackRow } from './schema'

const endAt = ({ flushEnd, sightTube }: RackRow, joint: number): FeedEnd => ({
  joint,
  flush: flushEnd,
  hasSightTube: sightTube,
})

/** Open ends of a lateral: those where no water comes in. */
const endsOf = ({ part }: RackPlan, { stops, fedAt }: LateralLaid): FeedEnd[] =>
  [stops[0], stops.at(-1)].flatMap((stop) =>
    stop && !fedAt.includes(stop.joint) ? [endAt(part, stop.joint)] : [],
  )

const lateralFacts = (plan: RackPlan, feed: FeedPlan, laid: LateralLaid): FeedLateral => ({
  joints: laid.stops.map(({ joint }) => joint),
  alongMm: laid.stops.map(({ alongMm }) => alongMm),
  fedAt: laid.fedAt,
  ends: endsOf(plan, laid),
  sagMm: plan.part.lateralSagMm,
  riseMm: feed.riseMm,
})

/** Two laterals and what joins their ends, as one that ends where it began. */
const ringFacts = (first: FeedLateral, last: FeedLateral): FeedLateral => ({
  ...first,
  joints: [...first.joints, ...last.joints.toReversed(), ...first.joints.slice(0, 1)],
  alongMm: [...first.alongMm, ...last.alongMm.toReversed(), ...first.alongMm.slice(0, 1)],
  fedAt: [...first.fedAt, ...last.fedAt],
  ends: [...first.ends, ...last.ends],
  riseMm: 0,
})

/** What the laterals say of themselves. The two outer ones of a ring are one; one between them is flushed through them. */
export const lateralsFacts = (
  plan: RackPlan,
  feed: FeedPlan,
  laterals: readonly LateralLaid[],
): FeedLateral[] => {
  const facts = laterals.map((laid) => lateralFacts(plan, feed, laid))
  const [first, last] = [facts[0], facts.at(-1)]
  if (feed.kind !== 'ring' || !first || !last) return facts
  return [ringFacts(first, last), ...facts.slice(1, -1).map((inner) => ({ ...inner, ends: [] }))]
}
