import { boxOf, grown, overlaps, type Box } from '../geometry/box'
import { across, type Axis, bestFacing, type Facing, facing, high, low, pointOn } from '../geometry/facing'
import type { Point } from '../geometry/point'
import { sides, wallAhead, type WallHit } from '../geometry/wallAhead'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import { isSameList, rememberEach } from '../model/remember'
import { inches } from '../units/length'
import { type Aisle, BESIDE_CART_MM } from './aisles'
import { CLOSE_MM } from './found'
import { obstacleThings, rowBoxes, type Standing, type StandingRow, type Thing } from './standing'

/** Wider ways are floor, not aisles. */
const WIDEST_AISLE_MM = inches(120)

const isClear = (between: Box, others: readonly Standing[], a: PartId, b: PartId): boolean =>
  !others.some(({ part, box }) => part !== a && part !== b && overlaps(between, box))

/** How a row and something else look at each other, if there is an aisle between them and nothing else stands in it. */
const wayBetween = (row: Standing, other: Standing, rows: readonly Standing[]): Facing | undefined => {
  const way = bestFacing(row.box, other.box)
  return way && way.gapMm <= WIDEST_AISLE_MM && isClear(way.between, rows, row.part, other.part)
    ? way
    : undefined
}

type Needs = Pick<Aisle, 'needMm' | 'clashBelowMm'>

const alongOf = (row: StandingRow, axis: Axis): Aisle['along'] => (axis === row.runsAlong ? 'end' : 'face')

const aisleOn = (
  row: StandingRow,
  other: PartId,
  otherIs: 'row' | 'obstacle',
  { axis, sign, from, to, gapMm, lengthMm }: Facing,
  needs: Needs,
): Aisle => ({
  row: row.part,
  other,
  otherIs,
  along: alongOf(row, axis),
  out: pointOn(axis, sign, 0),
  from,
  to,
  widthMm: gapMm,
  lengthMm,
  ...needs,
})

const rowToRow = (
  row: StandingRow,
  other: StandingRow,
  rows: readonly StandingRow[],
  settings: Settings,
): Aisle | undefined => {
  const way = wayBetween(row, other, rows)
  const needMm = Math.max(settings.workAisleMm, settings.cartMm + 2 * BESIDE_CART_MM)
  return way && aisleOn(row, other.part, 'row', way, { needMm, clashBelowMm: settings.squeezeMm })
}

/** Clear way on the far side of an obstacle, seen from a row: to the next row, or to the wall. */
const farSideMm = (row: Standing, thing: Thing, way: Facing, rows: readonly Standing[]): number => {
  let nearest = thing.wallMm
  for (const other of rows) {
    const beyond = other.part === row.part ? undefined : facing(thing.box, other.box, way.axis)
    if (beyond?.sign === way.sign) nearest = Math.min(nearest, beyond.gapMm)
  }
  return nearest
}

/**
 * Nobody walks between a post and the wall it stands at, nor needs to where its far side is wide enough: there the row
 * only keeps its leaves off it.
 */
const isPassed = (
  row: Standing,
  thing: Thing,
  way: Facing,
  rows: readonly Standing[],
  { squeezeMm, workAisleMm }: Settings,
): boolean =>
  thing.wallMm >= squeezeMm - CLOSE_MM && farSideMm(row, thing, way, rows) < workAisleMm - CLOSE_MM

const rowToObstacle = (
  row: StandingRow,
  thing: Thing,
  rows: readonly StandingRow[],
  settings: Settings,
): Aisle | undefined => {
  const way = wayBetween(row, thing, rows)
  if (!way) return undefined
  const needs = isPassed(row, thing, way, rows, settings)
    ? { needMm: settings.workAisleMm, clashBelowMm: settings.squeezeMm }
    : { needMm: settings.scoutMm, clashBelowMm: 0 }
  return aisleOn(row, thing.part, 'obstacle', way, needs)
}

/** Half the width of the strip in which another row would stand between the middle of a row's side and the wall, mm. */
const HALF_SIGHT_MM = 1

const wallOn = (
  row: StandingRow,
  [axis, sign]: (typeof sides)[number],
  { gapMm, aside }: WallHit,
  settings: Settings,
): Aisle => {
  const edge = sign > 0 ? high(row.box, axis) : low(row.box, axis)
  const side = across(axis)
  const along = alongOf(row, axis)
  return {
    row: row.part,
    other: undefined,
    otherIs: 'wall',
    along,
    out: pointOn(axis, sign, 0),
    from: pointOn(axis, edge, aside),
    to: pointOn(axis, edge + sign * gapMm, aside),
    widthMm: gapMm,
    lengthMm: high(row.box, side) - low(row.box, side),
    needMm: along === 'end' ? settings.workAisleMm : settings.scoutMm,
    clashBelowMm: 0,
  }
}

/** Whether the wall is seen from the middle of the row's side, past all other rows. */
const isWallSeen = (row: Standing, { out, from, to }: Aisle, rows: readonly Standing[]): boolean => {
  const axis = out.x === 0 ? 'y' : 'x'
  const side = across(axis)
  const middle = (low(row.box, side) + high(row.box, side)) / 2
  const sight = boxOf([
    pointOn(axis, from[axis], middle - HALF_SIGHT_MM),
    pointOn(axis, to[axis], middle + HALF_SIGHT_MM),
  ])
  return isClear(sight, rows, row.part, row.part)
}

const rowToWall = (
  row: StandingRow,
  rows: readonly StandingRow[],
  outline: readonly Point[],
  settings: Settings,
): Aisle[] =>
  sides.flatMap((way) => {
    const [axis, sign] = way
    const hit = wallAhead(row.box, outline, axis, sign)
    if (!hit || hit.gapMm > WIDEST_AISLE_MM) return []
    const aisle = wallOn(row, way, hit, settings)
    return isWallSeen(row, aisle, rows) ? [aisle] : []
  })

/** What decides the aisles of one row, beside the row itself. */
interface Surroundings {
  /** Rows near enough for an aisle; `ahead` are those of them whose aisle with this row is not told yet. */
  readonly rows: readonly StandingRow[]
  readonly ahead: readonly StandingRow[]
  readonly things: readonly Thing[]
  readonly outline: readonly Point[]
  readonly settings: Settings
}

const isSame = (a: Surroundings, b: Surroundings): boolean =>
  a.outline === b.outline &&
  a.settings === b.settings &&
  isSameList(a.rows, b.rows) &&
  isSameList(a.ahead, b.ahead) &&
  isSameList(a.things, b.things)

const isPresent = (aisle: Aisle | undefined): aisle is Aisle => aisle !== undefined

const aislesOfRow = rememberEach<StandingRow, Surroundings, readonly Aisle[]>(
  (row, { rows, ahead, things, outline, settings }) => [
    ...ahead.map((other) => rowToRow(row, other, rows, settings)).filter(isPresent),
    ...things.map((thing) => rowToObstacle(row, thing, rows, settings)).filter(isPresent),
    ...rowToWall(row, rows, outline, settings),
  ],
  isSame,
)

/** Every aisle of the bay: row to row, row to obstacle, row to wall. */
export const aislesOf = (
  built: readonly Built[],
  outline: readonly Point[],
  settings: Settings,
): readonly Aisle[] => {
  const all = rowBoxes(built)
  const obstacles = obstacleThings(built, outline)
  return all.flatMap((row, index) => {
    const zone = grown(row.box, WIDEST_AISLE_MM)
    const isNear = ({ box }: Standing) => overlaps(zone, box)
    const rows = all.filter(isNear)
    const ahead = all.filter((other, at) => at > index && isNear(other))
    return aislesOfRow(row, { rows, ahead, things: obstacles.filter(isNear), outline, settings })
  })
}
