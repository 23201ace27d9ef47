import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import { rememberEach } from '../../model/remember'
import type { TroughFacts } from '../../model/troughFacts'
import { pooledDepthMm } from '../../solvers/gravity/pool'
import { type Channel, type Profile, troughProfile } from '../../solvers/gravity/profile'
import { MINUTES_PER_HOUR } from '../../units/time'
import { channelOf, fallOnSite, type TroughLine, troughLines } from './troughLines'

/** A line of troughs at one flow. */
export interface TroughWater {
  readonly profile: Profile
  /** Depth at the low end once the outlet has been blocked for a minute, mm. */
  readonly blockedMm: () => number
}

/** A trough with its towers, and the water that was reckoned in it: one for all lines of the bay that are alike. */
interface KnownTrough {
  readonly channel: Channel
  readonly dripsMm: readonly number[]
  readonly waters: Map<number, TroughWater>
}

/** More kinds of trough, or more flows in one, than a bay has; then all is forgotten and reckoned again. */
const MOST_KNOWN = 1000

/**
 * Flows are taken in steps of one in 200, so that rows which get nearly the same share one sum, and a drag that moves every
 * flow by a hair asks for none. It makes 0.15 % of depth.
 */
const STEPS_A_FOLD = 200

/** Less, L/h, is nothing. */
const LEAST_LPH = 0.01

/** Holds answers by key, and lets go of all when there are too many. */
const kept = <K, V>(known: Map<K, V>, key: K, make: () => V): V => {
  const held = known.get(key)
  if (held !== undefined) return held
  if (known.size >= MOST_KNOWN) known.clear()
  const value = make()
  known.set(key, value)
  return value
}

const knownTroughs = new Map<string, KnownTrough>()

/** What a trough lies on: its fall on the site, mm per m, and how rough it is, Manning's n. */
interface Lying {
  readonly fallMmPerM: number
  readonly n: number
}

const keyOf = (facts: TroughFacts, { dripsMm }: TroughLine, { fallMmPerM, n }: Lying): string =>
  [facts.gutter, fallMmPerM, facts.runMm, facts.outletFromHighMm, facts.outletBoreMm, n, ...dripsMm].join(' ')

const knownTrough = (facts: TroughFacts, line: TroughLine, lying: Lying): KnownTrough =>
  kept(knownTroughs, keyOf(facts, line, lying), () => ({
    channel: channelOf(facts, lying.fallMmPerM, lying.n),
    dripsMm: line.dripsMm,
    waters: new Map(),
  }))

const knownLines = rememberEach<Built, Lying, readonly KnownTrough[]>(
  (built, lying) => {
    const { trough } = built
    return trough ? troughLines(built, trough).map((line) => knownTrough(trough, line, lying)) : []
  },
  (a, b) => a.fallMmPerM === b.fallMmPerM && a.n === b.n,
)

/**
 * All towers of a line are taken to give the same: which of them gives a tenth more hardly moves the water's surface, and
 * where it is deepest, at the outlet and behind it, not at all.
 */
const reckoned = ({ channel, dripsMm }: KnownTrough, flowLph: number): TroughWater => {
  const each = dripsMm.length > 0 ? flowLph / dripsMm.length : 0
  const profile = troughProfile(channel, { alongMm: dripsMm, lph: dripsMm.map(() => each) })
  let blocked: number | undefined
  return {
    profile,
    blockedMm: () => (blocked ??= pooledDepthMm(channel, profile, flowLph / MINUTES_PER_HOUR)),
  }
}

/**
 * The water of a line, 1-based, of a part's troughs at a flow, L/h; undefined where there is no such line. On grade the
 * floor's fall counts in.
 */
export const troughWater = (
  built: Built,
  line: number,
  flowLph: number,
  { levels, settings }: Pick<Bay, 'levels' | 'settings'>,
): TroughWater | undefined => {
  const lying = { fallMmPerM: fallOnSite(built, levels), n: settings.manningN }
  const trough = knownLines(built, lying)[line - 1]
  if (!trough) return undefined
  if (!(flowLph > LEAST_LPH)) return kept(trough.waters, -Infinity, () => reckoned(trough, 0))
  const step = Math.round(Math.log(flowLph) * STEPS_A_FOLD)
  return kept(trough.waters, step, () => reckoned(trough, Math.exp(step / STEPS_A_FOLD)))
}
