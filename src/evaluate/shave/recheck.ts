import { type Finding, rankOf } from '../../model/finding'

/** A finding may drift by this share of how far it is from its limit before it counts as worse: solved flows move by less. */
const DRIFT = 0.01

/** And by this in its own unit: sums of ticks carry rounding. */
const ROUNDING = 0.01

const beyond = ({ measured, limit }: Finding): number => Math.abs(measured.value - limit.value)

const isWorse = (now: Finding, was: Finding): boolean =>
  rankOf(now) > rankOf(was) || beyond(now) > beyond(was) * (1 + DRIFT) + ROUNDING

/** What a change breaks: findings of the changed bay that the bay did not have, or had less badly. */
export const brokenBy = (after: readonly Finding[], before: readonly Finding[]): readonly Finding[] => {
  const known = new Map(before.map((finding) => [finding.key, finding]))
  return after.filter((now) => {
    const was = known.get(now.key)
    return was === undefined || isWorse(now, was)
  })
}
