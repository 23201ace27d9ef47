import { polyOf } from '../../catalogue/pipe'
import type { Place } from '../../geometry/point'
import type { PartId } from '../../model/ids'
import { sitePlace } from '../../model/levels'
import { boresOf } from './bores'
import { joinedTubesOf } from './joinedPipe'
import { linksOf, placeMains } from './links'
import { toM } from './metres'
import {
  type Plan,
  type PlacedBox,
  type PlacedPump,
  type PlacedRow,
  PUMP_JOINTS,
  PUMP_VALVES,
  type WaterInputs,
} from './plan'
import { type FedRow, type Reach, reachOf } from './reach'
import { rowPieceOf } from './rowPiece'

/** The pits and head boxes that feed something, each once. */
const supplyParts = ({ supplies }: Reach): readonly PartId[] => [...new Set(supplies.map(({ from }) => from))]

const placePumps = (
  parts: readonly PartId[],
  builtOf: WaterInputs['builtOf'],
  groupOf: Reach['groupOf'],
): readonly PlacedPump[] => {
  const placed: PlacedPump[] = []
  parts.forEach((part, level) => {
    const pit = builtOf.get(part)
    if (!pit?.pump) return
    const before = placed.length
    placed.push({
      part,
      facts: pit.pump,
      tubes: pit.tubes,
      boreM: toM(polyOf(pit.pump.stock).idMm),
      group: groupOf.get(part),
      level,
      joint: before * PUMP_JOINTS,
      valve: before * PUMP_VALVES,
    })
  })
  return placed
}

const placeBoxes = (parts: readonly PartId[], builtOf: WaterInputs['builtOf']): readonly PlacedBox[] =>
  parts.flatMap((part, level) => {
    const built = builtOf.get(part)
    return built?.headBox && !built.pump ? [{ part, facts: built.headBox, level }] : []
  })

/** Numbers of the valves, by the row that has them. */
const numberValves = (rows: readonly FedRow[], first: number): ReadonlyMap<PartId, number> => {
  const valved = rows.filter(({ feed }) => feed.valves !== undefined)
  return new Map(valved.map(({ built }, i) => [built.part, first + i]))
}

const placeRows = (
  reach: Reach,
  { levels, settings }: WaterInputs,
  valves: ReadonlyMap<PartId, number>,
  firstJoint: number,
): readonly PlacedRow[] => {
  const boreOf = boresOf(settings.bucket)
  let [joint, pipe, mouth] = [firstJoint, 0, 0]
  return reach.rows.map((row): PlacedRow => {
    const { built, feed, join, zone, group } = row
    const { part } = built
    const piece = rowPieceOf(feed, { boreOf, grade: levels.grades.get(part) })
    const datumM = built.zFrom === 'benchmark' ? 0 : toM(levels.datums.get(part) ?? 0)
    const own = { valve: valves.get(part), zoneValve: valves.get(zone) }
    const place = (at: Place) => sitePlace(levels, built, at)
    const placed = {
      built,
      feed,
      join,
      zone,
      group,
      piece,
      datumM,
      sitePlace: place,
      joint,
      pipe,
      mouth,
      ...own,
    }
    joint += piece.joints
    pipe += piece.pipes.from.length
    mouth += piece.mouths.from.length
    return placed
  })
}

/** How many joints, pipes and tubes there are with the last row's. */
const countsOf = (rows: readonly PlacedRow[], firstJoint: number) => {
  const last = rows.at(-1)
  if (!last) return { joint: firstJoint, pipe: 0, mouth: 0 }
  const { piece, joint, pipe, mouth } = last
  return {
    joint: joint + piece.joints,
    pipe: pipe + piece.pipes.from.length,
    mouth: mouth + piece.mouths.from.length,
  }
}

const byPart = <T extends { readonly part: PartId }>(placed: readonly T[]): ReadonlyMap<PartId, T> =>
  new Map(placed.map((each) => [each.part, each]))

/** Where everything of a bay stands in its network. */
export const planOf = (inputs: WaterInputs): Plan => {
  const reach = reachOf(inputs)
  const parts = supplyParts(reach)
  const pumps = placePumps(parts, inputs.builtOf, reach.groupOf)
  const boxes = placeBoxes(parts, inputs.builtOf)
  const mains = placeMains(reach, pumps.length * PUMP_JOINTS)
  const lastMain = mains.at(-1)
  const firstJoint = lastMain ? lastMain.joint + lastMain.stops.length : pumps.length * PUMP_JOINTS
  const valves = numberValves(reach.rows, pumps.length * PUMP_VALVES)
  const rows = placeRows(reach, inputs, valves, firstJoint)
  const count = countsOf(rows, firstJoint)
  const links = linksOf(reach, {
    levels: parts.length,
    mains: byPart(mains),
    rows: new Map(rows.map((row) => [row.built.part, row])),
    pumps: byPart(pumps),
    boxes: byPart(boxes),
    joined: joinedTubesOf(inputs.joinedPipes),
  })
  return {
    levels: parts.length,
    joints: count.joint,
    pipes: links.length + count.pipe,
    valves: pumps.length * PUMP_VALVES + valves.size,
    mouths: count.mouth,
    links,
    pumps,
    boxes,
    mains,
    rows,
    dry: reach.dry,
    settings: inputs.settings,
  }
}
