import { polyOf } from '../../catalogue/pipe'
import type { Place } from '../../geometry/point'
import type { FeedFacts } from '../../model/feedFacts'
import type { PartId } from '../../model/ids'
import type { Mouths, Network, Solution } from '../../solvers/water/network'
import { velocityMS } from '../../solvers/water/friction'
import { solve } from '../../solvers/water/solve'
import { fromM3PerS, toM3PerS } from '../../units/flow'
import { feetPerSecond } from '../../units/velocity'
import { cubicMetres } from '../../units/volume'
import { bayNetwork } from './bayNetwork'
import { LPH_PER_M3S, toM, toMm } from './metres'
import type { Plan, PlacedRow, WaterInputs } from './plan'
import { planOf } from './planOf'
import { SHORTEST_M } from './rowPiece'
import { solvedBay } from './solved'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** Velocity at the open end that carries solids out of a lateral: University of California, Maintenance of Microirrigation Systems. */
export const LATERAL_FLUSH_MS = feetPerSecond(1)

/** The same of a main, which is wider: common practice, no source. */
export const MAIN_FLUSH_MS = feetPerSecond(1.5)

/** A main's cap is off for so long; lateral caps until the water runs clear and so long after. Common practice, no source. */
export const MAIN_SECONDS = 60
export const AFTER_CLEAR_SECONDS = 30

/** The whole velocity head is lost where the water leaves an open end. */
const OPEN_END_K = 1

/** Higher than any water: an end that is shut. */
const SHUT_M = 1e4

/** Something of a bay that can be opened to the air. */
interface OpenEnd {
  readonly part: PartId
  readonly node: number
  readonly boreM: number
  readonly levelM: number
  readonly at: Place
}

/** How a zone's lateral ends are flushed with all other zones shut. */
export interface ZoneFlush {
  /** The row with the valves. */
  readonly part: PartId
  /** Ends with a cap or a valve, in the order in which they are opened, by row. */
  readonly ends: readonly PartId[]
  /** How many may be open at once with enough velocity at each; 0 where not even one may. */
  readonly atOnce: number
  /** Least velocity at an open end with so many open (with one, where not even one may), m/s. */
  readonly slowestMS: number
  /** What runs out of them together, L/h, and what its towers still get. */
  readonly endsLph: number
  readonly towersLph: number
  readonly batches: number
  /** Until each batch has run clear, which is taken as all water of the zone's pipes changed once, and a little after. */
  readonly seconds: number
  /** Out of the ends and to the pit over all batches. */
  readonly litres: number
  /** By hand arithmetic, with none of the zone's own losses: what its water gives with all zones open, less these towers. */
  readonly byHand: number
}

/** A free end of a main, flushed alone with every zone shut. */
export interface MainFlush {
  readonly part: PartId
  readonly at: Place
  readonly velocityMS: number
  readonly isFastEnough: boolean
  readonly flowLph: number
  readonly litres: number
}

/** Open ends at once by hand: what a pump gives beyond an open zone's towers, over what one end takes. */
export const endsByHand = (pumpLph: number, towersLph: number, endLph: number): number =>
  Math.max(0, Math.floor((pumpLph - towersLph) / endLph))

/** What one end takes to be flushed, L/h. */
export const flushLph = (boreMm: number, velocity: number = LATERAL_FLUSH_MS): number =>
  fromM3PerS(velocity / velocityMS(1, toM(boreMm)))

const lateralBoreM = ({ pipes }: FeedFacts, joint: number): number => {
  const pipe = pipes.find(({ from, to, role }) => role === 'lateral' && (from === joint || to === joint))
  return pipe ? toM(polyOf(pipe.stock).idMm) : 0
}

/** The lateral ends of a row that open; plugged ones do not. */
const rowEnds = (row: PlacedRow, { levels }: Plan): readonly OpenEnd[] => {
  const { built, feed, joint, sitePlace } = row
  return feed.laterals
    .flatMap(({ ends }) => ends)
    .filter(({ flush }) => flush !== 'none')
    .map((end) => {
      const at = sitePlace(feed.joints[end.joint] ?? { x: 0, y: 0, z: 0 })
      const boreM = lateralBoreM(feed, end.joint)
      return { part: built.part, node: levels + joint + end.joint, boreM, levelM: toM(at.z), at }
    })
    .filter(({ boreM }) => boreM > 0)
}

/** Numbers of the bay's own mouths, and one of each end behind them. */
const appended = (own: Float64Array, ofEnds: readonly number[]): Float64Array => {
  const all = new Float64Array(own.length + ofEnds.length)
  all.set(own)
  all.set(ofEnds, own.length)
  return all
}

/** The ends as tubes without length behind the bay's own, all still shut. */
const withEnds = (mouths: Mouths, ends: readonly OpenEnd[]): Mouths => {
  const alike = (value: number) => ends.map(() => value)
  const nodes = appended(
    Float64Array.from(mouths.from),
    ends.map(({ node }) => node),
  )
  return {
    from: Int32Array.from(nodes),
    lengthM: appended(mouths.lengthM, alike(SHORTEST_M)),
    boreM: appended(
      mouths.boreM,
      ends.map(({ boreM }) => boreM),
    ),
    lossK: appended(mouths.lossK, alike(OPEN_END_K)),
    levelM: appended(mouths.levelM, alike(SHUT_M)),
  }
}

/** A network with ends that are opened one by one, and solved on from the last time. */
interface Flushing {
  readonly network: Network
  readonly ends: readonly OpenEnd[]
  readonly waterC: number
  last: Solution | undefined
}

const flushingOf = (plan: Plan, ends: readonly OpenEnd[], whatIf: WhatIf): Flushing => {
  const network = bayNetwork(plan, whatIf)
  const waterC = whatIf.waterC ?? plan.settings.waterC
  return { network: { ...network, mouths: withEnds(network.mouths, ends) }, ends, waterC, last: undefined }
}

/** Flow of each end, m3/s, with the first `open` of them open; undefined where the bay can't be solved. */
const opened = (flushing: Flushing, open: number): Float64Array | undefined => {
  const { network, ends, waterC, last } = flushing
  const first = network.mouths.from.length - ends.length
  ends.forEach(({ levelM }, i) => {
    network.mouths.levelM[first + i] = i < open ? levelM : SHUT_M
  })
  const solution = solve(network, { temperatureC: waterC }, last)
  if (!solution.ok || !solution.isSettled) return undefined
  flushing.last = solution
  return solution.mouthM3S.subarray(first)
}

const sumOf = (values: ArrayLike<number>): number => Array.from(values).reduce((sum, value) => sum + value, 0)

const slowest = (flows: Float64Array, ends: readonly OpenEnd[], open: number): number => {
  let least = Infinity
  for (let i = 0; i < open; i += 1) least = Math.min(least, velocityMS(flows[i] ?? 0, ends[i]?.boreM ?? 1))
  return least
}

interface Opened {
  readonly atOnce: number
  readonly slowestMS: number
  readonly endsLph: number
}

/** Opens one end after the other until the velocity at one falls too low, or all are open. */
const openOneByOne = (flushing: Flushing): Opened | undefined => {
  let best: Opened | undefined
  for (let open = 1; open <= flushing.ends.length; open += 1) {
    const flows = opened(flushing, open)
    if (!flows) return undefined
    const slowestMS = slowest(flows, flushing.ends, open)
    const endsLph = sumOf(flows) * LPH_PER_M3S
    if (slowestMS < LATERAL_FLUSH_MS) return best ?? { atOnce: 0, slowestMS, endsLph }
    best = { atOnce: open, slowestMS, endsLph }
  }
  return best
}

/** Water in the pipes of some rows, L. */
const pipesLitres = (rows: readonly PlacedRow[]): number =>
  rows.reduce((sum, { piece: { pipes } }) => {
    const m3 = pipes.lengthM.reduce((all, length, i) => all + length / velocityMS(1, pipes.boreM[i] ?? 1), 0)
    return sum + cubicMetres(m3)
  }, 0)

/** More turns than any valve has. */
const WIDE_OPEN = Infinity

/** All zones shut but one, whose trim valve is opened wide: set for its towers it would starve an open end. */
const onlyOpen = (plan: Plan, zone: PartId | undefined, whatIf: WhatIf): WhatIf => ({
  ...whatIf,
  valves: new Map(plan.rows.map(({ built }) => [built.part, built.part === zone])),
  trimTurns: new Map([
    ...(whatIf.trimTurns ?? []),
    ...(zone === undefined ? [] : [[zone, WIDE_OPEN] as const]),
  ]),
})

/** What all rows of each water get together, L/h, by `FedRow.group`. */
const groupFlows = (plan: Plan, whatIf: WhatIf): ReadonlyMap<PartId, number> => {
  const flows = new Map<PartId, number>()
  const solved = solvedBay(plan, whatIf)
  if ('sentence' in solved) return flows
  for (const { group, mouth, piece } of plan.rows) {
    const own = solved.solution.mouthM3S.subarray(mouth, mouth + piece.mouths.from.length)
    flows.set(group, (flows.get(group) ?? 0) + sumOf(own) * LPH_PER_M3S)
  }
  return flows
}

/** How long all batches run, s, and what comes out of them, L. */
const duration = ({ atOnce, endsLph }: Opened, ends: number, pipesL: number) => {
  if (atOnce === 0) return { batches: 0, seconds: 0, litres: 0 }
  const batches = Math.ceil(ends / atOnce)
  const litresPerS = cubicMetres(toM3PerS(endsLph))
  const seconds = batches * (pipesL / litresPerS + AFTER_CLEAR_SECONDS)
  return { batches, seconds, litres: seconds * litresPerS }
}

/** What its towers get with the ends as they were last opened, L/h. */
const towersLph = ({ network, ends, last }: Flushing): number =>
  sumOf(last?.mouthM3S.subarray(0, network.mouths.from.length - ends.length) ?? []) * LPH_PER_M3S

const zoneFlush = (
  plan: Plan,
  zone: PartId,
  groupLph: ReadonlyMap<PartId, number>,
  whatIf: WhatIf,
): ZoneFlush | undefined => {
  const rows = plan.rows.filter((row) => row.zone === zone)
  const ends = rows.flatMap((row) => rowEnds(row, plan))
  const [first] = ends
  if (!first) return undefined
  const flushing = flushingOf(plan, ends, onlyOpen(plan, zone, whatIf))
  opened(flushing, 0)
  const aloneLph = towersLph(flushing)
  const found = openOneByOne(flushing)
  if (!found) return undefined
  opened(flushing, Math.max(1, found.atOnce))
  return {
    part: zone,
    ends: ends.map(({ part }) => part),
    ...found,
    towersLph: towersLph(flushing),
    ...duration(found, ends.length, pipesLitres(rows)),
    byHand: endsByHand(
      rows[0] ? (groupLph.get(rows[0].group) ?? 0) : 0,
      aloneLph,
      flushLph(toMm(first.boreM)),
    ),
  }
}

const mainEnds = ({ mains, levels }: Plan): readonly OpenEnd[] =>
  mains.flatMap(({ part, stops, joint, boreM }) =>
    [0, stops.length - 1].flatMap((i) => {
      const stop = stops[i]
      // A row may join right at a capped end; whatever else joins there takes the cap's place.
      return stop && (!stop.by || stop.by.kind === 'zone-to-main')
        ? [{ part, node: levels + joint + i, boreM, levelM: toM(stop.at.z), at: stop.at }]
        : []
    }),
  )

const mainFlush = (plan: Plan, end: OpenEnd, whatIf: WhatIf): readonly MainFlush[] => {
  const flows = opened(flushingOf(plan, [end], onlyOpen(plan, undefined, whatIf)), 1)
  if (!flows) return []
  const velocity = velocityMS(flows[0] ?? 0, end.boreM)
  return [
    {
      part: end.part,
      at: end.at,
      velocityMS: velocity,
      isFastEnough: velocity >= MAIN_FLUSH_MS,
      flowLph: (flows[0] ?? 0) * LPH_PER_M3S,
      litres: cubicMetres(flows[0] ?? 0) * MAIN_SECONDS,
    },
  ]
}

/** Flushing of a bay; each zone is solved when it is asked for. */
export interface FlushPlan {
  /** The rows with valves, in the order of the bay's parts. */
  readonly zones: readonly PartId[]
  /** Undefined for a zone without an end that opens, or a bay that can't be solved. */
  readonly zone: (part: PartId) => ZoneFlush | undefined
  /** Free ends of mains, each opened alone, every zone shut. */
  readonly mains: () => readonly MainFlush[]
}

/**
 * How the bay is flushed from what its own network gives: all zones shut but one, its trim valve wide, lateral ends opened as wide as their
 * pipe one after another for as long as each runs fast enough.
 */
export const flushPlan = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): FlushPlan => {
  const plan = planOf(inputs)
  let groupLph: ReadonlyMap<PartId, number> | undefined
  return {
    zones: plan.rows.filter(({ valve }) => valve !== undefined).map(({ built }) => built.part),
    zone: (part) =>
      plan.levels > 0 ? zoneFlush(plan, part, (groupLph ??= groupFlows(plan, whatIf)), whatIf) : undefined,
    mains: () => (plan.levels > 0 ? mainEnds(plan).flatMap((end) => mainFlush(plan, end, whatIf)) : []),
  }
}
