import { setFields, type FieldChanges } from '../../layout/setFields'
import { type Finding, rankOf } from '../../model/finding'
import type { PartId } from '../../model/ids'
import type { RowStrength } from '../../model/strength'
import { strengthOf } from '../5-loads'
import { findingsOf } from '../8-checks'
import { beforeChecks } from '../beforeChecks'
import type { Evaluation } from '../evaluation'
import { brokenBy } from '../recheck'
import { bayChange, type BayChange } from '../shop/change'
import { ailing, ailmentsOf, isEased, isHarmed, isSound, rowRank } from './ailments'
import type { Idea } from './ideas'
import { rackRowIn, type RowValues } from './rowTrial'
import { combined, easing } from './tried'

/** A change of one row, or of rows that are alike, that the whole bay allows: worked out, checked, and ready to be done. */
export interface RowMend {
  readonly values: RowValues
  readonly changes: readonly FieldChanges[]
  /** The rows as they would be, in the order of what was asked for. */
  readonly after: readonly RowStrength[]
  /** Within and standing, all of them. */
  readonly isSound: boolean
  /** What the bay then takes more, or less. */
  readonly takes: BayChange
  /** Towers that hang now and would not then. */
  readonly towersLost: number
}

/** A change that would ease a row and that the bay does not allow. */
export interface RefusedMend {
  readonly values: RowValues
  readonly findings: readonly [Finding, ...Finding[]]
}

export interface Mends {
  readonly rows: readonly PartId[]
  /** The rows as they are, in the same order. */
  readonly now: readonly RowStrength[]
  /** What leaves the rows within and standing: towers kept first, then the cheapest, then the least work. */
  readonly mending: readonly RowMend[]
  /** What only eases them, in the same order. */
  readonly easing: readonly RowMend[]
  readonly refused: readonly RefusedMend[]
}

/** The bay as it stands, and the rows in question. */
interface Standing {
  readonly evaluation: Evaluation
  readonly rows: readonly PartId[]
  readonly now: readonly RowStrength[]
  readonly findings: readonly Finding[]
}

type Outcome = RowMend | RefusedMend

const strengthsIn = ({ bay }: Evaluation, rows: readonly PartId[]): readonly RowStrength[] => {
  const all = strengthOf(bay)
  return rows.flatMap((id) => all.get(id) ?? [])
}

const everyRow = (
  after: readonly RowStrength[],
  now: readonly RowStrength[],
  is: (after: RowStrength, now: RowStrength) => boolean,
): boolean =>
  after.length === now.length &&
  after.every((row, index) => {
    const was = now[index]
    return was !== undefined && is(row, was)
  })

/** A row that was sound stays so, and one that was not is eased. */
const isWorthIt = (after: RowStrength, now: RowStrength): boolean =>
  isSound(after) || isEased(ailmentsOf(after), ailmentsOf(now))

const isNoHarm = (after: RowStrength, now: RowStrength): boolean =>
  !isHarmed(ailmentsOf(after), ailmentsOf(now))

/** What carries, and how it stands, is held against what it was member by member; a finding that is as it was says no more. */
const isKnownAilment = (now: Finding, { rows, findings }: Standing): boolean =>
  (now.subject === 'strength' || now.subject === 'stance') &&
  now.parts.every((part) => rows.includes(part)) &&
  findings.some(({ key, ...was }) => key === now.key && rankOf(was) >= rankOf(now))

/** One idea done to the rows, with everything derived, priced and checked anew; undefined where it is of no use after all. */
function* tryInBay(standing: Standing, { values }: Idea): Generator<undefined, Outcome | undefined> {
  const { evaluation, rows, now } = standing
  const changes = rows.map((part): FieldChanges => ({ part, values }))
  const edited = setFields(evaluation.layout, changes)
  if (!edited.ok) return undefined
  yield
  const mended = beforeChecks(edited.layout)
  yield
  const after = strengthsIn(mended, rows)
  if (!everyRow(after, now, isWorthIt)) return undefined
  yield
  const broken = brokenBy(findingsOf(mended.bay), standing.findings)
  const [first, ...others] = broken.filter((finding) => !isKnownAilment(finding, standing))
  if (first) return { values, findings: [first, ...others] }
  if (!everyRow(after, now, isNoHarm)) return undefined
  return {
    values,
    changes,
    after,
    isSound: after.every(isSound),
    takes: bayChange(evaluation, mended),
    towersLost: evaluation.towers - mended.towers,
  }
}

/** Whole cents, with what nobody can tell after all that can be told. */
const centsOf = ({ takes }: RowMend): number => (takes.unpriced > 0 ? Infinity : takes.cents)

const difference = (a: number, b: number): number => (a === b ? 0 : a - b)

const cheapestFirst = (a: RowMend, b: RowMend): number =>
  difference(a.towersLost, b.towersLost) ||
  difference(centsOf(a), centsOf(b)) ||
  difference(a.takes.hours, b.takes.hours)

const leftIll = ({ after }: RowMend): readonly string[] =>
  after.flatMap((row) => {
    const ailments = ailmentsOf(row)
    return ailing(ailments).map((id) => `${row.part} ${id} ${ailments.get(id)?.rank}`)
  })

const isSubset = (some: readonly string[], all: readonly string[]): boolean =>
  some.every((each) => all.includes(each))

/** Fields with more and less of one thing; ties or anchors, or which joint, is for the builder to choose. */
const SIZES = new Set<string>(['rail', 'bar', 'midPairs'] satisfies (keyof RowValues)[])

const isOfSize = (a: RowValues, b: RowValues): boolean => {
  const [fields, others] = [Object.keys(a), Object.keys(b)]
  return SIZES.has(fields[0] ?? '') && fields.join() === others.join()
}

/** Whether a cheaper one is a smaller size and leaves no more to mend: a bigger one than will do is no offer. */
const isSurpassed = (mend: RowMend, cheaper: readonly RowMend[]): boolean =>
  cheaper.some((other) => isOfSize(other.values, mend.values) && isSubset(leftIll(other), leftIll(mend)))

const isMend = (outcome: Outcome): outcome is RowMend => 'takes' in outcome

const ranked = ({ rows, now }: Standing, outcomes: readonly Outcome[]): Mends => {
  const sorted = outcomes.filter(isMend).toSorted(cheapestFirst)
  const allowed = sorted.filter((mend, index) => !isSurpassed(mend, sorted.slice(0, index)))
  return {
    rows,
    now,
    mending: allowed.filter((mend) => mend.isSound),
    easing: allowed.filter((mend) => !mend.isSound),
    refused: outcomes.filter((outcome): outcome is RefusedMend => !isMend(outcome)),
  }
}

/** A single change mends all without the loss of a tower: then two at once are not looked for. */
const isMended = (outcomes: readonly Outcome[]): boolean =>
  outcomes.some((outcome) => isMend(outcome) && outcome.isSound && outcome.towersLost <= 0)

/** Ideas tried in the bay in turn; what is known so far is given with each. */
function* tryAll(
  standing: Standing,
  ideas: readonly Idea[],
  outcomes: Outcome[],
): Generator<Mends | undefined, void> {
  for (const idea of ideas) {
    yield
    const outcome = yield* tryInBay(standing, idea)
    if (!outcome) continue
    outcomes.push(outcome)
    yield ranked(standing, outcomes)
  }
}

/** Of what mends one row so many, the cheapest first, are tried in all that are alike. */
const MOST_FOR_ALL = 4

const standingOf = (evaluation: Evaluation, rows: readonly PartId[]): Standing => ({
  evaluation,
  rows,
  now: strengthsIn(evaluation, rows),
  findings: findingsOf(evaluation.bay),
})

/** What would mend one row. */
function* ofOne(standing: Standing): Generator<Mends | undefined, Mends> {
  const { evaluation, rows, now } = standing
  const [[id], [strength]] = [rows, now]
  const row = id === undefined ? undefined : rackRowIn(evaluation.layout, id)
  if (id === undefined || !strength || !row || isSound(strength)) return ranked(standing, [])
  yield
  const bench = { evaluation, id }
  const ill = { row, strength, ailments: ailmentsOf(strength), settings: evaluation.layout.settings }
  const singles = yield* easing(bench, ill)
  const outcomes: Outcome[] = []
  const soundFirst = singles.toSorted((a, b) => Number(isSound(b.strength)) - Number(isSound(a.strength)))
  yield* tryAll(standing, soundFirst, outcomes)
  const refused = new Set(outcomes.filter((outcome) => !isMend(outcome)).map(({ values }) => values))
  const allowed = singles.filter(({ values }) => !refused.has(values))
  // What is refused alone may do with something else: a bigger sleeve that a riser has no room for, in the gap between racks.
  for (const some of refused.size > 0 ? [allowed, singles] : [singles])
    if (!isMended(outcomes)) yield* tryAll(standing, yield* combined(bench, some), outcomes)
  return ranked(standing, outcomes)
}

/** What would mend rows that are alike: what mends the worst of them by itself, tried in all. */
function* ofAlike(standing: Standing): Generator<Mends | undefined, Mends> {
  const { evaluation, now } = standing
  const worst = [...now].sort((a, b) => rowRank(b) - rowRank(a))[0]
  const steps = ofOne(standingOf(evaluation, worst ? [worst.part] : []))
  let step = steps.next()
  for (; !step.done; step = steps.next()) yield
  const { mending, easing: eased, refused } = step.value
  const ideas = [...mending, ...eased].slice(0, MOST_FOR_ALL).map(({ values }) => ({ values, weight: 0 }))
  const outcomes: Outcome[] = [...refused]
  yield* tryAll(standing, ideas, outcomes)
  return ranked(standing, outcomes)
}

/**
 * What would mend a row that is not within or does not stand, or several rows that are alike, cheapest first by the price book.
 * A change is offered only once the whole bay has been derived, priced and checked with it, it eases the rows, and no rule
 * finds anything new or worse. Where no single change mends all, up to four are put together. In steps, since each is a bay of its
 * own; what is known so far comes with every one that is found.
 */
export const mendsOf = (
  evaluation: Evaluation,
  rows: readonly PartId[],
): Generator<Mends | undefined, Mends> => {
  const standing = standingOf(evaluation, rows)
  return rows.length > 1 ? ofAlike(standing) : ofOne(standing)
}
