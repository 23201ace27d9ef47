import { CLOSE_MM } from '../../checks/found'
import { polyOf } from '../../catalogue/pipe'
import { pathLength } from '../../geometry/path'
import { distance, length3, type Place } from '../../geometry/point'
import type { Built, Tube } from '../../model/built'
import type { PartId } from '../../model/ids'
import { joinedPipe, type JoinedTubes } from './joinedPipe'
import { mainLegs, type MainStop, mainStops } from './mainStops'
import { toM } from './metres'
import {
  type Link,
  PUMP_JOINTS,
  type PlacedBox,
  type PlacedMain,
  type PlacedPump,
  type PlacedRow,
} from './plan'
import type { Met, Reach } from './reach'
import { SHORTEST_M } from './rowPiece'

const boreM = (stock: string): number => toM(polyOf(stock).idMm)

export const mainTube = ({ tubes }: Built): Tube | undefined => tubes.find(({ role }) => role === 'main')

const byReceiver = (joins: readonly Met[]): ReadonlyMap<PartId, readonly Met[]> => {
  const byPart = new Map<PartId, Met[]>()
  for (const join of joins) {
    const known = byPart.get(join.to)
    if (known) known.push(join)
    else byPart.set(join.to, [join])
  }
  return byPart
}

/** Mains with their stops, numbered on from a joint and a pipe. */
export const placeMains = (reach: Reach, firstJoint: number): readonly PlacedMain[] => {
  const placed: PlacedMain[] = []
  let [joint, pipe] = [firstJoint, 0]
  const tapsOf = byReceiver([...reach.supplies, ...reach.mainJoins, ...reach.rows.map(({ join }) => join)])
  for (const built of reach.mains) {
    const tube = mainTube(built)
    if (!tube) continue
    const stops = mainStops(tube.path, tapsOf.get(built.part) ?? [])
    placed.push({ part: built.part, stops, path: tube.path, boreM: boreM(tube.stock), joint, pipe })
    joint += stops.length
    pipe += stops.length - 1
  }
  return placed
}

const legLinks = ({ path, stops, boreM, joint }: PlacedMain, levels: number): readonly Link[] =>
  mainLegs(path, stops).map(({ lengthMm, lossK }, i) => ({
    from: levels + joint + i,
    to: levels + joint + i + 1,
    lengthM: Math.max(SHORTEST_M, toM(lengthMm)),
    boreM,
    lossK,
  }))

/** A main that comes round to where it begins is closed there. */
const ringLink = ({ path, stops, boreM, joint }: PlacedMain, levels: number): readonly Link[] => {
  const [first, last] = [path[0], path.at(-1)]
  const isClosed = first && last && path.length > 2 && length3(first, last) <= CLOSE_MM
  const ends = { from: levels + joint + stops.length - 1, to: levels + joint }
  return isClosed ? [{ ...ends, lengthM: SHORTEST_M, boreM, lossK: 0 }] : []
}

/** What stands where, by part. */
export interface Places {
  readonly levels: number
  readonly mains: ReadonlyMap<PartId, PlacedMain>
  readonly rows: ReadonlyMap<PartId, PlacedRow>
  readonly pumps: ReadonlyMap<PartId, PlacedPump>
  readonly boxes: ReadonlyMap<PartId, PlacedBox>
  readonly joined: JoinedTubes
}

/** A node with where it is, site levels. */
interface Stand {
  readonly node: number
  readonly at: Place
}

const standAt = (main: PlacedMain, levels: number, index: number): Stand | undefined => {
  const stop = main.stops[index]
  return stop && { node: levels + main.joint + index, at: stop.at }
}

/** Where a join is made on the main that it comes to. */
const tapOf = (join: Met, { levels, mains }: Places): Stand | undefined => {
  const main = mains.get(join.to)
  return (
    main &&
    standAt(
      main,
      levels,
      main.stops.findIndex(({ by }) => by === join),
    )
  )
}

/** The end of a main that a join starts from: the nearer one, and never the very stop that it comes to. */
const endOf = (join: Met, { levels, mains }: Places): Stand | undefined => {
  const main = mains.get(join.from)
  if (!main) return undefined
  const last = main.stops.length - 1
  const gap = (stop: MainStop | undefined) =>
    stop && stop.by !== join ? distance(stop.at, join.at) : Infinity
  return standAt(main, levels, gap(main.stops[last]) <= gap(main.stops[0]) ? last : 0)
}

const rowJoint = (row: PlacedRow, levels: number, index: number): Stand => {
  const at = row.feed.joints[index] ?? { x: 0, y: 0, z: 0 }
  return { node: levels + row.joint + index, at: row.sitePlace(at) }
}

/** Where a row's water comes from: the main's stop, or the joint behind another row's valve. */
const sourceOf = ({ join }: PlacedRow, places: Places): Stand | undefined => {
  if (join.kind !== 'zone-to-zone') return tapOf(join, places)
  const giver = places.rows.get(join.to)
  return giver && rowJoint(giver, places.levels, giver.feed.shareJoint)
}

const supplyStand = (join: Met, { levels, pumps, boxes }: Places): Stand | undefined => {
  const pump = pumps.get(join.from)
  if (pump) return { node: levels + pump.joint + PUMP_JOINTS - 1, at: pump.facts.at }
  const box = boxes.get(join.from)
  return box && { node: box.level, at: box.facts.at }
}

const linked = (
  from: Stand | undefined,
  to: Stand | undefined,
  bore: number,
  part: PartId,
  joined: JoinedTubes,
): readonly Link[] =>
  from && to
    ? [{ from: from.node, to: to.node, boreM: bore, ...joinedPipe(from.at, to.at, part, joined) }]
    : []

const boreFor = (join: Met, { pumps, mains }: Places): number => {
  const pump = pumps.get(join.from)
  return pump ? pump.boreM : (mains.get(join.to)?.boreM ?? 0)
}

const rowLink = (row: PlacedRow, places: Places): readonly Link[] =>
  linked(
    sourceOf(row, places),
    rowJoint(row, places.levels, 0),
    boreM(row.feed.inletStock),
    row.built.part,
    places.joined,
  )

const joinLink = (join: Met, from: Stand | undefined, places: Places): readonly Link[] =>
  linked(from, tapOf(join, places), boreFor(join, places), join.from, places.joined)

/**
 * From the pumps to where their water leaves the pit. Each of n like pumps sends an n-th of the flow through its own
 * pipe, which so is as good as an n2-th of its length for the whole.
 */
const inPitM = ({ facts: { pumps }, tubes }: PlacedPump): number => {
  const own = tubes.filter(({ role }) => role === 'pump-pipe')
  const mm = own.reduce((sum, { path }) => sum + pathLength(path), 0)
  return own.length > 0 ? toM(mm) / own.length / (pumps * pumps) : 0
}

const pumpLink = (join: Met, places: Places): readonly Link[] => {
  const pump = places.pumps.get(join.from)
  const links = joinLink(join, supplyStand(join, places), places)
  return pump ? links.map((link) => ({ ...link, lengthM: link.lengthM + inPitM(pump) })) : links
}

/**
 * Every pipe outside the rows: the legs of the mains, main by main, then what joins mains to each other and rows to
 * mains and to rows, then what joins supplies to mains.
 */
export const linksOf = (reach: Reach, places: Places): readonly Link[] => [
  ...[...places.mains.values()].flatMap((main) => legLinks(main, places.levels)),
  ...[...places.mains.values()].flatMap((main) => ringLink(main, places.levels)),
  ...reach.mainJoins.flatMap((join) => joinLink(join, endOf(join, places), places)),
  ...[...places.rows.values()].flatMap((row) => rowLink(row, places)),
  ...reach.supplies.flatMap((join) => pumpLink(join, places)),
]
