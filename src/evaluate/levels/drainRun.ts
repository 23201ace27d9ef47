import { dropHole } from '../../catalogue/dropHole'
import { drainPipeOf } from '../../catalogue/pipe'
import { bellsAlong } from '../../geometry/bells'
import { type DrainPipeRun, drainStation, type DrainStation, groundLegs } from '../../geometry/drainProfile'
import { turningPlaces } from '../../geometry/legs'
import type { Place } from '../../geometry/point'
import { pointAlong, segmentsOf } from '../../geometry/polyline'
import type { Built } from '../../model/built'
import type { DrainFacts } from '../../model/drainFacts'
import type { PartId } from '../../model/ids'
import type { DrainRun, Join } from '../../model/levels'
import { isSameList, rememberEach } from '../../model/remember'
import type { Site } from '../../model/site'
import { type PegPlace, pegsAlong } from './pegs'

/** A drain along its run, whatever drops into it. */
export interface Profile {
  readonly path: readonly Place[]
  readonly pipe: DrainPipeRun
  readonly facts: DrainFacts
  readonly lengthMm: number
  readonly high: DrainStation
  readonly low: DrainStation
  readonly tightest: DrainStation
  readonly bellsMm: readonly number[]
  /** How far along it turns, mm. */
  readonly bendsMm: readonly number[]
}

const pipeOf = (stock: string, { bedMm, slopeMmPerM }: DrainFacts): DrainPipeRun => {
  const { odMm, wallMm } = drainPipeOf(stock)
  return { odMm, wallMm, bedMm, slopeMmPerM }
}

const bendsAlong = (path: readonly Place[]): number[] => {
  const turns = new Set<unknown>(turningPlaces(path).slice(1, -1))
  return segmentsOf(path)
    .filter(({ from }) => turns.has(from))
    .map(({ startMm }) => startMm)
}

/** The levels of a drain along its run; undefined for a part that is no drain. */
export const profileOf = rememberEach<Built, Site, Profile | undefined>((built, site) => {
  const tube = built.tubes.find(({ role }) => role === 'drain')
  if (!tube || !built.drain) return undefined
  const { path, stock, firstMm } = tube
  const pipe = pipeOf(stock, built.drain)
  const startMm = path[0]?.z ?? 0
  const stations = groundLegs(path, site.groundAt).flatMap((leg) => leg.stations)
  const all = stations.map((ground) => drainStation(ground, startMm, pipe))
  const [high] = all
  const low = all.at(-1)
  if (!high || !low) return undefined
  const tightest = all.reduce((least, station) => (station.coverMm < least.coverMm ? station : least))
  const bellsMm = bellsAlong(path, drainPipeOf(stock).stickMm, firstMm)
  const common = { path, pipe, facts: built.drain, lengthMm: low.alongMm, high, low, tightest }
  return { ...common, bellsMm, bendsMm: bendsAlong(path) }
})

const stationAt =
  ({ path, pipe, high }: Profile, site: Site) =>
  (alongMm: number): DrainStation => {
    const at = pointAlong(path, alongMm)
    return drainStation({ at, alongMm, groundMm: site.groundAt(at.x, at.y) }, high.invertMm, pipe)
  }

/** What comes into a drain, by distance from its high end, mm. */
export interface Incoming {
  /** Each outlet that drops in, and its bore in a list beside. */
  readonly outlets: readonly number[]
  readonly bores: readonly number[]
  readonly branches: readonly number[]
}

interface Dropping extends Incoming {
  readonly site: Site
}

const pegPlaces = ({ pipe, bendsMm }: Profile, { outlets, bores, branches }: Incoming): PegPlace[] => [
  ...outlets.map((alongMm, index): PegPlace => ({
    alongMm,
    why: 'outlet',
    holeMm: dropHole(bores[index] ?? 0, pipe.odMm),
  })),
  ...branches.map((alongMm): PegPlace => ({ alongMm, why: 'branch', holeMm: 0 })),
  ...bendsMm.map((alongMm): PegPlace => ({ alongMm, why: 'bend', holeMm: 0 })),
]

/** The levels along a drain, remembered while the same water comes into it. */
export const runOf = rememberEach<Profile, Dropping, Omit<DrainRun, 'part'>>(
  (profile, incoming) => {
    const { pipe, facts, lengthMm, high, low, tightest, bellsMm } = profile
    const at = stationAt(profile, incoming.site)
    return {
      lengthMm,
      ...pipe,
      coverMm: facts.leastCoverMm,
      high,
      low,
      tightest,
      outlets: incoming.outlets.toSorted((a, b) => a - b).map(at),
      pegs: pegsAlong(lengthMm, pegPlaces(profile, incoming), at, facts.pegTopMm),
      bellsMm,
    }
  },
  (a, b) =>
    a.site === b.site &&
    isSameList(a.outlets, b.outlets) &&
    isSameList(a.bores, b.bores) &&
    isSameList(a.branches, b.branches),
)

interface Coming {
  readonly outlets: number[]
  readonly bores: number[]
  readonly branches: number[]
}

export const NOTHING_IN: Incoming = { outlets: [], bores: [], branches: [] }

/** What comes in, for each drain. */
export const incomingByDrain = (
  built: readonly Built[],
  joins: readonly Join[],
): ReadonlyMap<PartId, Incoming> => {
  const boreOf = new Map<PartId, number>()
  for (const { part, trough } of built) if (trough) boreOf.set(part, trough.outletBoreMm)
  const incoming = new Map<PartId, Coming>()
  for (const { kind, from, to, alongMm } of joins) {
    if (to === undefined || (kind !== 'outlet-to-drain' && kind !== 'drain-to-drain')) continue
    const coming = incoming.get(to) ?? { outlets: [], bores: [], branches: [] }
    incoming.set(to, coming)
    if (kind === 'drain-to-drain') coming.branches.push(alongMm)
    else {
      coming.outlets.push(alongMm)
      coming.bores.push(boreOf.get(from) ?? 0)
    }
  }
  return incoming
}
