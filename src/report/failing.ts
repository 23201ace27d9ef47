import type { Judged } from '../evaluate/evaluation'
import { rankOf, stateWords, type Finding } from '../model/finding'

/** A rail may be too long to bear its load, and a piece too long for any stock: both fail a plan by the same words. */
export const TOO_LONG = 'Too long'

/** What fails a plan unless others are named. */
export const USUAL_FAILS: readonly string[] = ['Clash', 'Backs up', 'Starved', TOO_LONG, 'Spills', 'Tips']

/** All that can be named: the states that are not the good one of their subject. */
export const possibleFails: readonly string[] = Object.values(stateWords).flatMap(([, ...poor]) => poor)

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
  /** How many of them are pieces that no stock is long enough for, not findings. */
  readonly pieces: number
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
  const countOf = (state: string): FailCount => {
    const open = stood.filter(({ finding, accepted }) => finding.state === state && !accepted).length
    const pieces = state === TOO_LONG ? piecesTooLong(plan) : 0
    return { state, count: open + pieces, pieces }
  }
  return {
    on,
    counts: on.map(countOf).filter(({ count }) => count > 0),
    accepted: stood.filter(({ accepted }) => accepted).length,
  }
}

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`

const countWords = ({ state, count, pieces }: FailCount): string =>
  [
    ...(pieces > 0 ? [`${many(pieces, 'piece', 'pieces')} too long`] : []),
    ...(count > pieces ? [`${count - pieces} ${state}`] : []),
  ].join(', ')

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
