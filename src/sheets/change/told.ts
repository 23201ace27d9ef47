import type { Words } from '../../checks/context'
import { comparePlans, type PlanDifference } from '../../evaluate/compare/comparePlans'
import type { Judged } from '../../evaluate/evaluation'
import { rememberEach } from '../../model/remember'
import type { Units } from '../../units/length'
import { money } from '../../units/money'
import type { Precision } from '../../units/precision'
import { sheetWords } from '../sheetWords'

/** What differs between two plans, with the words of who reads it. */
export interface Told {
  readonly was: Judged
  readonly now: Judged
  readonly difference: PlanDifference
  readonly write: Words
  readonly units: Units
  /** Whole cents in the currency of the plan that is. */
  readonly money: (cents: number) => string
}

const differenceOf = rememberEach<Judged, Judged, PlanDifference>((now, was) => comparePlans(was, now))

/** Names of parts that are gone are those that they had. */
export const toldOf = (was: Judged, now: Judged, units: Units, precision: Precision): Told => {
  const [before, after] = [sheetWords(was, units, precision), sheetWords(now, units, precision)]
  const there = new Set(now.layout.parts.map(({ id }) => id))
  return {
    was,
    now,
    difference: differenceOf(now, was),
    write: { ...after, name: (part) => (there.has(part) ? after : before).name(part) },
    units,
    money: (cents) => money(cents, now.layout.counter.currency),
  }
}

/** `+3`, `−2 1/2"`: how much more or less, with the words of its size. */
export const signed = (more: number, size: string): string => `${more > 0 ? '+' : '−'}${size}`
