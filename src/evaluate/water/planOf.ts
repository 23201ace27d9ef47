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
import { type Reach, reachOf } from './reach'
import { rowPieceOf } from './rowPiece'

/** The pits and head boxes that feed something, each once. */
const supplyParts = ({ supplies }: Reach): readonly PartId[] => [...new Set(supplies.map(({ from }) => from))]

const placePumps = (parts: readonly PartId[], builtOf: WaterInputs['builtOf']): readonly PlacedPump[] => {
  const placed: PlacedPump[] = []
  parts.forEach((part, level) => {
    const facts = builtOf.get(part)?.pump
    const before = placed.length
    const boreM = facts ? toM(polyOf(facts.stock).idMm) : 0
    if (facts)
      placed.push({ part, facts, boreM, level, joint: before * PUMP_JOINTS, valve: before * PUMP_VALVES })
  })
  return placed
}

const placeBoxes = (parts: readonly PartId[], builtOf: WaterInputs['builtOf']): readonly PlacedBox[] =>
  parts.flatMap((part, level) => {
    const built = builtOf.get(part)
    return built?.headBox && !built.pump ? [{ part, facts: built.headBox, level }] : []
  })

interface Counts {
  joint: number
  pipe: number
  valve: number
  mouth: number
}

const placeRows = (reach: Reach, { levels, settings }: WaterInputs, count: Counts): readonly PlacedRow[] => {
  const boreOf = boresOf(settings.bucket)
  return reach.rows.map((row) => {
    const piece = rowPieceOf(row.feed, { boreOf, grade: levels.grades.get(row.built.part) })
    const placed = {
      ...row,
      piece,
      datumM: toM(row.built.zFrom === 'benchmark' ? 0 : (levels.datums.get(row.built.part) ?? 0)),
      sitePlace: (at: Place) => sitePlace(levels, row.built, at),
      joint: count.joint,
      pipe: count.pipe,
      mouth: count.mouth,
      valve: row.feed.valves ? count.valve : undefined,
    }
    count.joint += piece.joints
    count.pipe += piece.pipes.from.length
    count.mouth += piece.mouths.from.length
    if (row.feed.valves) count.valve += 1
    return placed
  })
}

const byPart = <T extends { readonly part: PartId }>(placed: readonly T[]): ReadonlyMap<PartId, T> =>
  new Map(placed.map((each) => [each.part, each]))

/** Where everything of a bay stands in its network. */
export const planOf = (inputs: WaterInputs): Plan => {
  const reach = reachOf(inputs)
  const parts = supplyParts(reach)
  const pumps = placePumps(parts, inputs.builtOf)
  const boxes = placeBoxes(parts, inputs.builtOf)
  const mains = placeMains(reach, pumps.length * PUMP_JOINTS)
  const lastMain = mains.at(-1)
  const count: Counts = {
    joint: lastMain ? lastMain.joint + lastMain.stops.length : pumps.length * PUMP_JOINTS,
    pipe: 0,
    valve: pumps.length * PUMP_VALVES,
    mouth: 0,
  }
  const rows = placeRows(reach, inputs, count)
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
    valves: count.valve,
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
