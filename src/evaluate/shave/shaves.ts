import type { Layout } from '../../layout/schema'
import type { FieldChanges } from '../../layout/setFields'
import type { CutList, StockCount } from '../../model/cutList'
import type { Finding } from '../../model/finding'
import { beforeChecks } from '../beforeChecks'
import { findingsOf } from '../8-checks'
import type { Evaluation } from '../evaluation'
import { membersOf } from './members'
import { nearMissesOf, offTicks, type NearMiss } from './nearMisses'
import { brokenBy } from '../recheck'
import { isWorthIt, savedBetween, type Saved } from './saved'
import { shorten } from './shorten'
import { toleranceSaves, type ToleranceSave } from './tolerance'

/** What stands in the way of making pieces shorter by one field. */
export type Hindrance =
  /** The schema will not have the field so. */
  | { readonly kind: 'bounds'; readonly field: string; readonly sentence: string }
  /** A rule finds what it did not find before, or finds it worse. */
  | { readonly kind: 'breaks'; readonly field: string; readonly findings: readonly [Finding, ...Finding[]] }
  /** All in all the changed bay buys no less. */
  | { readonly kind: 'saves-nothing'; readonly field: string }

/** A shave that the whole bay allows: worked out, checked, and ready to be done. */
export interface AllowedShave {
  readonly near: NearMiss
  readonly field: string
  readonly changes: readonly FieldChanges[]
  readonly saved: Saved
  /** Of the stock that is shaved, without and with. */
  readonly boughtNow: readonly StockCount[]
  readonly boughtThen: readonly StockCount[]
}

/** A near miss that the bay does not allow to be mended, and why. */
export interface BlockedShave {
  readonly near: NearMiss
  /** In the order in which the fields were tried; none where no field makes the pieces shorter. */
  readonly hindrances: readonly Hindrance[]
}

export interface Shaves {
  /** What saves most first. */
  readonly allowed: readonly AllowedShave[]
  readonly blocked: readonly BlockedShave[]
  /** Pieces that the plan already cuts within their tolerance, to buy less. */
  readonly tolerances: readonly ToleranceSave[]
}

/** The bay as it stands: what it buys by first plans, the cheapest that is known of each list, and what its rules find. */
interface Standing {
  readonly layout: Layout
  readonly cuts: readonly CutList[]
  readonly leastCost: LeastCost
  readonly findings: readonly Finding[]
}

/** What the cheapest plan that anybody knows of a list costs, in the unit of its cost. */
export type LeastCost = (list: CutList) => number

const listOf = (cuts: readonly CutList[], { members }: NearMiss): CutList | undefined =>
  cuts.find(({ stock }) => stock === members.stock)

/** Whether a plan is known of the bay as it stands that none of the shaven bay can beat: then there is nothing to save. */
const isBeaten = (now: Standing, then: readonly CutList[], near: NearMiss): boolean => {
  const [before, after] = [listOf(now.cuts, near), listOf(then, near)]
  return (
    before !== undefined &&
    after !== undefined &&
    before.costIs === after.costIs &&
    now.leastCost(before) <= after.bound
  )
}

/** One field tried: set so that the pieces are short enough, everything derived, cut and checked anew. */
function* tryField(
  now: Standing,
  near: NearMiss,
  field: string,
): Generator<undefined, AllowedShave | Hindrance | undefined> {
  const shortened = yield* shorten(now.layout, near, field)
  if (!('layout' in shortened))
    return shortened.sentence === undefined
      ? undefined
      : { kind: 'bounds', field, sentence: shortened.sentence }
  yield
  const then = beforeChecks(shortened.layout)
  const saved = savedBetween(now.cuts, then.cuts)
  if (!isWorthIt(saved) || isBeaten(now, then.cuts, near)) return { kind: 'saves-nothing', field }
  yield
  const [first, ...others] = brokenBy(findingsOf(then.bay), now.findings)
  if (first) return { kind: 'breaks', field, findings: [first, ...others] }
  return {
    near,
    field,
    changes: shortened.changes,
    saved,
    boughtNow: listOf(now.cuts, near)?.bought ?? [],
    boughtThen: listOf(then.cuts, near)?.bought ?? [],
  }
}

/** The first field that the bay allows, or what stands in the way of each. */
function* tryShave(now: Standing, near: NearMiss): Generator<undefined, AllowedShave | BlockedShave> {
  const hindrances: Hindrance[] = []
  for (const field of near.members.fields) {
    const found = yield* tryField(now, near, field)
    if (found && 'near' in found) return found
    if (found) hindrances.push(found)
  }
  return { near, hindrances }
}

/** Two shaves that set the same fields to the same values are one. */
const changeKey = ({ changes }: AllowedShave): string => JSON.stringify(changes)

const worthOf = ({ saved }: AllowedShave): number => saved.cents ?? saved.lengthMm

/** What saves most first, the least of two like ones to take off; each change once. */
const bestFirst = (all: readonly AllowedShave[]): AllowedShave[] => {
  const sorted = [...all].sort((a, b) => worthOf(b) - worthOf(a) || offTicks(a.near) - offTicks(b.near))
  return [...new Map(sorted.toReversed().map((each) => [changeKey(each), each])).values()].reverse()
}

/**
 * Every length of the bay that is a little over what a board gives once more: how much to take off, by which field of its parts,
 * and what that saves, or what would break. A shave is allowed only once the whole bay has been derived, cut and checked with it
 * and no rule finds anything new or worse. What it saves is told of first plans, with and without, like against like. In steps,
 * since each candidate is a bay of its own.
 */
export function* shavesOf(
  { layout, bay, cuts }: Evaluation,
  leastCost: LeastCost = ({ cost }) => cost,
): Generator<undefined, Shaves> {
  const now: Standing = { layout, cuts, leastCost, findings: findingsOf(bay) }
  yield
  const members = membersOf(layout, bay.built)
  const nears: NearMiss[] = []
  for (const list of cuts) {
    yield
    nears.push(...nearMissesOf(list, members).map(({ near }) => near))
  }
  const allowed: AllowedShave[] = []
  const blocked: BlockedShave[] = []
  for (const near of nears) {
    yield
    const tried = yield* tryShave(now, near)
    if ('saved' in tried) allowed.push(tried)
    else blocked.push(tried)
  }
  return { allowed: bestFirst(allowed), blocked, tolerances: cuts.flatMap(toleranceSaves) }
}
