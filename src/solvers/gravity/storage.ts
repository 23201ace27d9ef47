import { rootOfRising } from './rising'

/** How fast a store lets go, litres a second, of what stands in it, litres. Never falls where more stands; 0 of nothing. */
export type LetGo = (litres: number) => number

/** A way out of a store. */
export interface Outlet {
  /** Index of the store that it runs to. */
  readonly to: number
  readonly letGo: LetGo
}

/** Something that holds water for a while. Water runs on only to stores that stand later in the list. */
export interface Store {
  /** At the start, L. */
  readonly litres: number
  readonly outlets: readonly Outlet[]
  /** What comes to it from outside all the time, L/s. */
  readonly inLps?: number
}

/** A pump: takes a steady flow from one store to any other, earlier ones too, for as long as more than so much is left. */
export interface Lift {
  readonly from: number
  readonly to: number
  readonly lps: number
  readonly keepsL: number
}

export interface Cascade {
  readonly stores: readonly Store[]
  readonly lifts?: readonly Lift[]
}

export interface StorageOptions {
  /** Of all the water, how far a store may be off after one step; smaller for closer answers. */
  readonly close?: number
}

/** What stands in each store at one time. */
type Litres = Float64Array

const CLOSE = 1e-5
/** The first step, s, and how far the next may differ from the last. */
const FIRST_S = 0.25
const SHRINK = 0.2
const GROW = 2
/** Steps between two times that are asked for, before the error is taken as it is. */
const SHORTEST_S = 1e-3
const sumOf = (values: Litres): number => values.reduce((sum, each) => sum + each, 0)

const letGoAt = (outlets: readonly Outlet[], litres: number): number => {
  let lps = 0
  for (const outlet of outlets) lps += outlet.letGo(litres)
  return lps
}

/**
 * What is left of `had` litres after a step at whose end the store lets go as what is left says: the root of
 * left + seconds x letGo(left) = had, which lies between 0 and `had` because letting go never falls with more in store.
 */
const leftOf = (outlets: readonly Outlet[], had: number, seconds: number): number =>
  had <= 0 || outlets.length === 0
    ? Math.max(had, 0)
    : rootOfRising((left) => left + seconds * letGoAt(outlets, left) - had, 0, had)

/**
 * What pumps take over a step, out of what then stands there: the one thing that runs back to an earlier store, which has it
 * from the next step on. A pump that draws faster than water comes to it so gives just what comes.
 */
const lift = (lifts: readonly Lift[], seconds: number, now: Litres): void => {
  for (const { from, to, lps, keepsL } of lifts) {
    const taken = Math.min(lps * seconds, Math.max(0, (now[from] ?? 0) - keepsL))
    now[from] = (now[from] ?? 0) - taken
    now[to] = (now[to] ?? 0) + taken
  }
}

/** One step: each store in turn gives what it lets go to those after it, and exactly what it loses they gain. */
const stepped = ({ stores, lifts = [] }: Cascade, before: Litres, seconds: number): Litres => {
  const now = Float64Array.from(before)
  stores.forEach(({ outlets, inLps = 0 }, i) => {
    const had = (now[i] ?? 0) + inLps * seconds
    const left = leftOf(outlets, had, seconds)
    now[i] = left
    const gone = had - left
    const all = letGoAt(outlets, left)
    if (gone <= 0 || all <= 0) {
      now[i] = had
      return
    }
    for (const { to, letGo } of outlets) now[to] = (now[to] ?? 0) + (gone * letGo(left)) / all
  })
  lift(lifts, seconds, now)
  return now
}

interface Tried {
  readonly litres: Litres
  /** Furthest that one store is off, L. */
  readonly errorL: number
}

/**
 * A step at once and in two halves. Their difference tells the error, and what it tells is taken off (Richardson), which
 * moves no water in or out; but not where a store would then hold less than nothing.
 */
const tried = (cascade: Cascade, before: Litres, seconds: number): Tried => {
  const whole = stepped(cascade, before, seconds)
  const halves = stepped(cascade, stepped(cascade, before, seconds / 2), seconds / 2)
  const errorL = halves.reduce((most, litres, i) => Math.max(most, Math.abs(litres - (whole[i] ?? 0))), 0)
  const better = halves.map((litres, i) => 2 * litres - (whole[i] ?? 0))
  return { litres: better.every((litres) => litres >= 0) ? better : halves, errorL }
}

const nextStep = (seconds: number, errorL: number, mayL: number): number =>
  seconds * Math.min(GROW, Math.max(SHRINK, 0.8 * Math.sqrt(mayL / Math.max(errorL, Number.MIN_VALUE))))

const checkOrder = ({ stores }: Cascade): void =>
  stores.forEach(({ outlets }, i) => {
    for (const { to } of outlets)
      if (to <= i || to >= stores.length)
        throw new RangeError(`Store ${i} of ${stores.length} runs to ${to}, which does not come after it`)
  })

/**
 * What stands in each store, L, at each of the times asked for, s, which rise from 0 on. Steps are implicit (backward
 * Euler, every store solved for what is left at the step's end), so that none goes below nothing and every litre that one
 * loses another gains; twice-halved steps raise them to second order and choose their length. Hairer and Wanner, Solving
 * ordinary differential equations II (1996), section IV.3 and II.9, from memory.
 * @throws RangeError for a store that runs to one before it.
 */
export function* storageSteps(
  cascade: Cascade,
  times: readonly number[],
  { close = CLOSE }: StorageOptions = {},
): Generator<Litres> {
  checkOrder(cascade)
  let litres = Float64Array.from(cascade.stores, (store) => store.litres)
  const mayL = close * Math.max(sumOf(litres), 1)
  let [at, seconds] = [0, FIRST_S]
  for (const time of times) {
    while (at < time) {
      const span = Math.min(seconds, time - at)
      const next = tried(cascade, litres, span)
      const wanted = nextStep(span, next.errorL, mayL)
      if (next.errorL <= mayL || span <= SHORTEST_S) {
        litres = Float64Array.from(next.litres)
        at = span < time - at ? at + span : time
      }
      // A step cut short by the clock says nothing against a longer one.
      seconds = span < seconds && next.errorL <= mayL ? Math.max(seconds, wanted) : wanted
    }
    yield litres
  }
}
