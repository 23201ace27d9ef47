import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import { rememberEach } from '../../model/remember'
import type { TroughFacts } from '../../model/troughFacts'
import { pooledDepthMm } from '../../solvers/gravity/pool'
import { type Channel, type Profile, troughProfile } from '../../solvers/gravity/profile'
import { dropOver } from '../../units/slope'
import { MINUTES_PER_HOUR } from '../../units/time'
import { channelOf, fallOnSite, type TroughLine, troughLines } from './troughLines'

/** A line of troughs at one flow. What takes longer than looking up is reckoned when first asked for. */
export interface TroughWater {
  readonly profile: Profile
  /** Depth where it is most once the outlet has been blocked for a minute, mm. */
  readonly blockedMm: () => number
  /**
   * From the water up to the level at which all tips hang, where that is least, mm, if they hung at the invert's own level at
   * the high end; Infinity without towers.
   */
  readonly airMm: () => number
}

/** A trough with its towers, and the water that was reckoned in it: one for all lines of the bay that are alike. */
interface KnownTrough {
  readonly channel: Channel
  readonly dripsMm: readonly number[]
  /** How far each tip hangs over the invert under it, for tips level with the invert at the high end, mm. */
  readonly tipsMm: readonly number[]
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
    // The rails, and the tips with them, lie as the trough does but for its own fall.
    tipsMm: line.dripsMm.map((mm) => dropOver(mm, facts.fallMmPerM)),
    waters: new Map(),
  }))

const knownLines = rememberEach<Built, Lying, readonly KnownTrough[]>(
  (built, lying) => {
    const { trough } = built
    return trough ? troughLines(built, trough).map((line) => knownTrough(trough, line, lying)) : []
  },
  (a, b) => a.fallMmPerM === b.fallMmPerM && a.n === b.n,
)

/** Depth along a profile at ascending distances from the high end, mm. */
const depthsAt = ({ alongMm, depthMm }: Profile, places: readonly number[]): number[] => {
  let after = 1
  return places.map((mm) => {
    while (after < alongMm.length - 1 && (alongMm[after] ?? 0) < mm) after += 1
    const [from, to] = [alongMm[after - 1] ?? 0, alongMm[after] ?? 0]
    const share = to > from ? Math.min(1, Math.max(0, (mm - from) / (to - from))) : 0
    return (depthMm[after - 1] ?? 0) * (1 - share) + (depthMm[after] ?? 0) * share
  })
}

const leastAir = ({ dripsMm, tipsMm }: KnownTrough, profile: Profile): number =>
  depthsAt(profile, dripsMm).reduce((least, mm, i) => Math.min(least, (tipsMm[i] ?? 0) - mm), Infinity)

const onceAsked = (make: () => number): (() => number) => {
  let value: number | undefined
  return () => (value ??= make())
}

/**
 * All towers of a line are taken to give the same: which of them gives a tenth more hardly moves the water's surface, and
 * where it is deepest, at the outlet and behind it, not at all.
 */
const reckoned = (trough: KnownTrough, flowLph: number): TroughWater => {
  const { channel, dripsMm } = trough
  const each = dripsMm.length > 0 ? flowLph / dripsMm.length : 0
  const profile = troughProfile(channel, { alongMm: dripsMm, lph: dripsMm.map(() => each) })
  return {
    profile,
    blockedMm: onceAsked(() => pooledDepthMm(channel, profile, flowLph / MINUTES_PER_HOUR)),
    airMm: onceAsked(() => leastAir(trough, profile)),
  }
}

const waterIn = (trough: KnownTrough, flowLph: number): TroughWater => {
  if (!(flowLph > LEAST_LPH)) return kept(trough.waters, -Infinity, () => reckoned(trough, 0))
  const step = Math.round(Math.log(flowLph) * STEPS_A_FOLD)
  return kept(trough.waters, step, () => reckoned(trough, Math.exp(step / STEPS_A_FOLD)))
}

type Ground = Pick<Bay, 'levels' | 'settings'>

const linesOf = (built: Built, { levels, settings }: Ground): readonly KnownTrough[] =>
  knownLines(built, { fallMmPerM: fallOnSite(built, levels), n: settings.manningN })

/** The water of every line of a part's troughs, at flows, L/h, in the order of its lines. On grade the floor's fall counts in. */
export const troughWaters = (built: Built, flowsLph: readonly number[], ground: Ground): TroughWater[] =>
  linesOf(built, ground).map((trough, i) => waterIn(trough, flowsLph[i] ?? 0))

/** The water of one line, 1-based; undefined where there is no such line. */
export const troughWater = (
  built: Built,
  line: number,
  flowLph: number,
  ground: Ground,
): TroughWater | undefined => {
  const trough = linesOf(built, ground)[line - 1]
  return trough && waterIn(trough, flowLph)
}
