import { drainPipeOf } from '../catalogue/pipe'
import { type DrainPipeRun, drainStation, type DrainStation, groundLegs } from '../geometry/drainProfile'
import { slopeOf } from '../geometry/lineFit'
import { distance, type Place } from '../geometry/point'
import { pointAlong } from '../geometry/polyline'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { DrainFacts } from '../model/drainFacts'
import type { PartId } from '../model/ids'
import { climbAt, type DrainRun, type Foot, type Join, type Levels, type RowGrade } from '../model/levels'
import type { RackFace } from '../model/rackFacts'
import type { Site } from '../model/site'
import { isSameList, rememberEach } from '../model/remember'

type Footing = Omit<Foot, 'shimMm'>

/** The floor under each foot of a part that stands on the rack datum. */
const footingsOf = rememberEach<Built, Site, readonly Footing[]>((built, site) =>
  built.zFrom !== 'rack-datum'
    ? []
    : built.supports
        .filter((support) => support.rests === 'floor')
        .map(({ at }) => ({
          part: built.part,
          at: { x: at.x, y: at.y },
          groundMm: site.groundAt(at.x, at.y),
        })),
)

const highestOf = rememberEach<readonly Footing[], null, Footing | undefined>((footings) =>
  footings.reduce<Footing | undefined>(
    (high, footing) => (high && high.groundMm >= footing.groundMm ? high : footing),
    undefined,
  ),
)

/** Where a rack datum lies: level, or climbing along the row. */
interface Datum {
  readonly levelMm: number
  readonly grade: RowGrade | undefined
}

const isSameDatum = (a: Datum, b: Datum): boolean => a.levelMm === b.levelMm && a.grade === b.grade

/** Every foot but the highest is shimmed up to it. */
const feetOf = rememberEach<readonly Footing[], Datum, readonly Foot[]>(
  (footings, { levelMm, grade }) =>
    footings.map((footing) => ({
      ...footing,
      shimMm: levelMm + climbAt(grade, footing.at) - footing.groundMm,
    })),
  isSameDatum,
)

/** The datum of a row on grade: the floor's own climb along it, held up by the foot that stands out most. */
const gradedDatum = rememberEach<readonly Footing[], RackFace, Datum>((footings, { from, to }) => {
  const runMm = distance(from, to)
  const perX = (to.x - from.x) / runMm
  const perY = (to.y - from.y) / runMm
  const alongOf = ({ at }: Footing) => (at.x - from.x) * perX + (at.y - from.y) * perY
  const climb = slopeOf(footings.map((footing) => ({ x: alongOf(footing), y: footing.groundMm })))
  return {
    levelMm: Math.max(...footings.map((footing) => footing.groundMm - climb * alongOf(footing))),
    grade: { from, perX: perX * climb, perY: perY * climb },
  }
})

const highestFooting = (footings: readonly (readonly Footing[])[]): Footing | undefined => {
  let highest: Footing | undefined
  for (const list of footings) {
    const high = highestOf(list, null)
    if (high && (!highest || high.groundMm > highest.groundMm)) highest = high
  }
  return highest
}

interface Profile {
  readonly path: readonly Place[]
  readonly pipe: DrainPipeRun
  readonly facts: DrainFacts
  readonly lengthMm: number
  readonly high: DrainStation
  readonly low: DrainStation
  readonly tightest: DrainStation
}

const pipeOf = (stock: string, { bedMm, slopeMmPerM }: DrainFacts): DrainPipeRun => {
  const { odMm, wallMm } = drainPipeOf(stock)
  return { odMm, wallMm, bedMm, slopeMmPerM }
}

/** The levels of a drain along its run; undefined for a part that is no drain. */
const profileOf = rememberEach<Built, Site, Profile | undefined>((built, site) => {
  const tube = built.tubes.find(({ role }) => role === 'drain')
  if (!tube || !built.drain) return undefined
  const pipe = pipeOf(tube.stock, built.drain)
  const startMm = tube.path[0]?.z ?? 0
  const stations = groundLegs(tube.path, site.groundAt).flatMap((leg) => leg.stations)
  const all = stations.map((ground) => drainStation(ground, startMm, pipe))
  const [high] = all
  const low = all.at(-1)
  if (!high || !low) return undefined
  const tightest = all.reduce((least, station) => (station.coverMm < least.coverMm ? station : least))
  return { path: tube.path, pipe, facts: built.drain, lengthMm: low.alongMm, high, low, tightest }
})

const outletStation = ({ path, pipe, high }: Profile, alongMm: number, site: Site): DrainStation => {
  const at = pointAlong(path, alongMm)
  return drainStation({ at, alongMm, groundMm: site.groundAt(at.x, at.y) }, high.invertMm, pipe)
}

interface Dropping {
  /** Distances of the outlets from the high end, mm. */
  readonly alongs: readonly number[]
  readonly site: Site
}

/** The levels along a drain, remembered while the same outlets drop into it. */
const runOf = rememberEach<Profile, Dropping, Omit<DrainRun, 'part'>>(
  (profile, { alongs, site }) => {
    const { pipe, facts, lengthMm, high, low, tightest } = profile
    const outlets = [...alongs].sort((a, b) => a - b).map((alongMm) => outletStation(profile, alongMm, site))
    return {
      lengthMm,
      ...pipe,
      coverMm: facts.leastCoverMm,
      high,
      low,
      tightest,
      outlets,
      pegs: [],
      bellsMm: [],
    }
  },
  (a, b) => a.site === b.site && isSameList(a.alongs, b.alongs),
)

/** Where outlets drop in, for each drain. */
const outletsByDrain = (joins: readonly Join[]): ReadonlyMap<PartId, readonly number[]> => {
  const alongs = new Map<PartId, number[]>()
  for (const { kind, to, alongMm } of joins) {
    if (kind !== 'outlet-to-drain' || to === undefined) continue
    const known = alongs.get(to)
    if (known) known.push(alongMm)
    else alongs.set(to, [alongMm])
  }
  return alongs
}

/** The datum of one part with feet, as the bay's rails are level. */
const datumOf = (
  { rack }: Built,
  footings: readonly Footing[],
  across: Settings['datum'],
  highest: Footing | undefined,
): Datum | undefined => {
  if (footings.length === 0) return undefined
  if (across === 'grade' && rack) return gradedDatum(footings, rack.leftFace)
  const top = across === 'bay' ? highest : highestOf(footings, null)
  return top && { levelMm: top.groundMm, grade: undefined }
}

/**
 * Step 3: the rack datum, what goes under every foot, and the levels along every drain. Rails are level across the whole
 * bay, or each row's with its own highest foot, or climb with the floor.
 */
export const levels = (
  built: readonly Built[],
  joins: readonly Join[],
  site: Site,
  across: Settings['datum'],
): Levels => {
  const footings = built.map((b) => footingsOf(b, site))
  const highest = highestFooting(footings)
  const outlets = outletsByDrain(joins)
  const datums = new Map<PartId, number>()
  const grades = new Map<PartId, RowGrade>()
  const feet = new Map<PartId, readonly Foot[]>()
  const drains = new Map<PartId, DrainRun>()
  built.forEach((b, index) => {
    const under = footings[index] ?? []
    const datum = datumOf(b, under, across, highest)
    if (datum) {
      datums.set(b.part, datum.levelMm)
      if (datum.grade) grades.set(b.part, datum.grade)
      feet.set(b.part, feetOf(under, datum))
    }
    const profile = profileOf(b, site)
    if (profile)
      drains.set(b.part, { part: b.part, ...runOf(profile, { alongs: outlets.get(b.part) ?? [], site }) })
  })
  return { datums, grades, highest: highest && { ...highest, shimMm: 0 }, feet, drains }
}
