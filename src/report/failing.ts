import type { Judged } from '../evaluate/evaluation'
import { rankOf, stateWords, type Finding } from '../model/finding'

/** What is not a state of a finding and may fail a plan all the same: pieces that no stock is long enough for. */
export const TOO_LONG = 'Too long'

/** What fails a plan unless others are named. */
export const USUAL_FAILS: readonly string[] = ['Clash', 'Backs up', 'Starved', TOO_LONG, 'Spills']

/** All that can be named: the states that are not the good one of their subject. */
export const possibleFails: readonly string[] = [
  ...Object.values(stateWords).flatMap(([, ...poor]) => poor),
  TOO_LONG,
]

/** A finding, and whether the builder lives with it. */
export interface Stood {
  readonly finding: Finding
  /** The reason that it was accepted for, and by whom; undefined while it is open. */
  readonly accepted: { readonly reason: string; readonly by: string } | undefined
}

/** What warns, in the order of the evaluation: what must be mended first. */
export const stoodFindings = ({
  findings,
  layout,
}: Pick<Judged, 'findings' | 'layout'>): readonly Stood[] => {
  const reasons = new Map(layout.settings.accepted.map((entry) => [entry.key, entry]))
  return findings
    .filter((finding) => rankOf(finding) > 0)
    .map((finding) => ({ finding, accepted: reasons.get(finding.key) }))
}

export interface FailCount {
  readonly state: string
  readonly count: number
}

/** What of the list a plan has: by state, how often; and how many of such are accepted, which fail nothing. */
export interface Failing {
  readonly on: readonly string[]
  readonly counts: readonly FailCount[]
  readonly accepted: number
}

const piecesTooLong = ({ cuts }: Pick<Judged, 'cuts'>): number =>
  cuts.reduce((sum, { tooLong }) => sum + tooLong.reduce((pieces, { count }) => pieces + count, 0), 0)

/** Holds a plan against a list of states. */
export const failingOf = (plan: Judged, on: readonly string[]): Failing => {
  const stood = stoodFindings(plan).filter(({ finding }) => on.includes(finding.state))
  const count = (state: string): number =>
    state === TOO_LONG
      ? piecesTooLong(plan)
      : stood.filter(({ finding, accepted }) => finding.state === state && !accepted).length
  return {
    on,
    counts: on.map((state) => ({ state, count: count(state) })).filter((each) => each.count > 0),
    accepted: stood.filter(({ accepted }) => accepted).length,
  }
}

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`

const countWords = ({ state, count }: FailCount): string =>
  state === TOO_LONG ? `${many(count, 'piece', 'pieces')} too long` : `${count} ${state}`

/** One sentence: what fails the plan, or that nothing does, and what of such is accepted. */
export const failWords = ({ on, counts, accepted }: Failing): string => {
  const also =
    accepted === 0
      ? ''
      : ` ${many(accepted, 'more is accepted and fails', 'more are accepted and fail')} nothing.`
  return counts.length === 0
    ? `Nothing is ${on.join(', ')}.${accepted === 0 ? '' : ` ${many(accepted, 'finding', 'findings')} of such a state ${accepted === 1 ? 'is' : 'are'} accepted.`}`
    : `This plan fails: ${counts.map(countWords).join(', ')}.${also}`
}
