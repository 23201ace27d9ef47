import { type Finding, type Quantity, rankOf } from '../model/finding'
import { inches } from '../units/length'

/** A finding may drift by this share of how far it is from its limit before it counts as worse: solved flows move by less. */
const DRIFT = 0.01

/** And by this in its own unit: sums of ticks carry rounding. */
const ROUNDING = 0.01

/** A length by half of what a tape tells: a foot that stands elsewhere on a floor has a hair more under it, and the same shims. */
const TAPE_MM = inches(1 / 32)

const roundingOf = ({ unit }: Quantity): number => (unit === 'mm' ? TAPE_MM : ROUNDING)

const beyond = ({ measured, limit }: Finding): number => Math.abs(measured.value - limit.value)

/** A rule that tells the worst of several things may tell of another one now: a sag is not held against a stress. */
const isOfOneSort = (a: Finding, b: Finding): boolean =>
  a.measured.unit === b.measured.unit && a.facts['screen'] === b.facts['screen']

const isWorse = (now: Finding, was: Finding): boolean => {
  if (rankOf(now) !== rankOf(was)) return rankOf(now) > rankOf(was)
  return isOfOneSort(now, was) && beyond(now) > beyond(was) * (1 + DRIFT) + roundingOf(now.measured)
}

/** What a change breaks: findings of the changed bay that the bay did not have, or had less badly. */
export const brokenBy = (after: readonly Finding[], before: readonly Finding[]): readonly Finding[] => {
  const known = new Map(before.map((finding) => [finding.key, finding]))
  return after.filter((now) => {
    const was = known.get(now.key)
    return was === undefined || isWorse(now, was)
  })
}
