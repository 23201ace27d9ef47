import { boxOf, grown, overlaps, type Box } from '../geometry/box'
import { across, type Axis, bestFacing, type Facing, facing, high, low, pointOn } from '../geometry/facing'
import type { Point } from '../geometry/point'
import { sides, wallAhead } from '../geometry/wallAhead'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import { isSameList, rememberEach } from '../model/remember'
import { inches } from '../units/length'
import { CLOSE_MM, stateFor } from './found'
import { obstacleThings, rowBoxes, type Standing, type Thing } from './standing'

/** Widths that the trade gives names to, narrowest first. Common practice, no source. */
export type AisleClass = 'squeeze' | 'scouting' | 'cart' | 'work' | 'main' | 'door/head'

/** A clear way between two things, measured leaf to leaf: between the widest parts of each, runner ends and bars included. */
export interface Aisle {
  readonly row: PartId
  /** What stands across the way; undefined is the wall. */
  readonly other: PartId | undefined
  readonly otherIs: 'row' | 'obstacle' | 'wall'
  /** Along a face of the row, where towers are worked, or past its end. */
  readonly along: 'face' | 'end'
  /** Out of the row, one unit long; from `from` to `to` unless the two run into each other. */
  readonly out: Point
  readonly from: Point
  readonly to: Point
  /** Negative where the two run into each other. */
  readonly widthMm: number
  /** How long the two stand side by side, mm. */
  readonly lengthMm: number
  readonly needMm: number
  /** Narrower than this nobody passes. */
  readonly clashBelowMm: number
}

/** Room on each side of a cart: hands, leaves and a crooked wheel. Common practice, no source. */
const BESIDE_CART_MM = inches(6)

/** Wider ways are floor, not aisles. */
const WIDEST_AISLE_MM = inches(120)

const MAIN_MM = inches(48)
const DOOR_HEAD_MM = inches(72)

/** The name the trade has for an aisle of this width. */
export const aisleClass = (widthMm: number, settings: Settings): AisleClass => {
  const isAtLeast = (leastMm: number): boolean => widthMm >= leastMm - CLOSE_MM
  if (isAtLeast(DOOR_HEAD_MM)) return 'door/head'
  if (isAtLeast(MAIN_MM)) return 'main'
  if (isAtLeast(settings.workAisleMm)) return 'work'
  if (isAtLeast(settings.cartMm + BESIDE_CART_MM)) return 'cart'
  return isAtLeast(settings.squeezeMm) ? 'scouting' : 'squeeze'
}

/** The state word of an aisle. */
export const aisleState = ({ widthMm, needMm, clashBelowMm }: Aisle): StateWord =>
  stateFor('fit', widthMm, needMm, clashBelowMm)

const isClear = (between: Box, others: readonly Standing[], a: PartId, b: PartId): boolean =>
  !others.some(({ part, box }) => part !== a && part !== b && overlaps(between, box))

const runsAlong = (box: Box): Axis => (box.x1 - box.x0 >= box.y1 - box.y0 ? 'x' : 'y')

const rowToRow = (
  a: Standing,
  b: Standing,
  rows: readonly Standing[],
  settings: Settings,
): Aisle | undefined => {
  const way = bestFacing(a.box, b.box)
  if (!way || way.gapMm > WIDEST_AISLE_MM || !isClear(way.between, rows, a.part, b.part)) return undefined
  return {
    row: a.part,
    other: b.part,
    otherIs: 'row',
    along: way.axis === runsAlong(a.box) ? 'end' : 'face',
    out: pointOn(way.axis, way.sign, 0),
    from: way.from,
    to: way.to,
    widthMm: way.gapMm,
    lengthMm: way.lengthMm,
    needMm: Math.max(settings.workAisleMm, settings.cartMm + 2 * BESIDE_CART_MM),
    clashBelowMm: settings.squeezeMm,
  }
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

const rowToObstacle = (
  row: Standing,
  thing: Thing,
  rows: readonly Standing[],
  settings: Settings,
): Aisle | undefined => {
  const way = bestFacing(row.box, thing.box)
  if (!way || way.gapMm > WIDEST_AISLE_MM || !isClear(way.between, rows, row.part, thing.part))
    return undefined
  // Nobody walks between a post and the wall it stands at, nor needs to where its far side is wide enough:
  // there the row only keeps its leaves off it.
  const isAtWall = thing.wallMm < settings.squeezeMm - CLOSE_MM
  const isPassedBeyond = farSideMm(row, thing, way, rows) >= settings.workAisleMm - CLOSE_MM
  const isWay = !isAtWall && !isPassedBeyond
  return {
    row: row.part,
    other: thing.part,
    otherIs: 'obstacle',
    along: way.axis === runsAlong(row.box) ? 'end' : 'face',
    out: pointOn(way.axis, way.sign, 0),
    from: way.from,
    to: way.to,
    widthMm: way.gapMm,
    lengthMm: way.lengthMm,
    needMm: isWay ? settings.workAisleMm : settings.scoutMm,
    clashBelowMm: isWay ? settings.squeezeMm : 0,
  }
}

const rowToWall = (
  row: Standing,
  rows: readonly Standing[],
  outline: readonly Point[],
  settings: Settings,
): Aisle[] =>
  sides.flatMap(([axis, sign]) => {
    const hit = wallAhead(row.box, outline, axis, sign)
    if (!hit || hit.gapMm > WIDEST_AISLE_MM) return []
    const edge = sign > 0 ? high(row.box, axis) : low(row.box, axis)
    const side = across(axis)
    const from = pointOn(axis, edge, hit.aside)
    const to = pointOn(axis, edge + sign * hit.gapMm, hit.aside)
    const middle = (low(row.box, side) + high(row.box, side)) / 2
    if (
      !isClear(
        boxOf([pointOn(axis, edge, middle - 1), pointOn(axis, edge + sign * hit.gapMm, middle + 1)]),
        rows,
        row.part,
        row.part,
      )
    )
      return []
    const along = axis === runsAlong(row.box) ? 'end' : 'face'
    return [
      {
        row: row.part,
        other: undefined,
        otherIs: 'wall',
        along,
        out: pointOn(axis, sign, 0),
        from,
        to,
        widthMm: hit.gapMm,
        lengthMm: high(row.box, side) - low(row.box, side),
        needMm: along === 'end' ? settings.workAisleMm : settings.scoutMm,
        clashBelowMm: 0,
      } satisfies Aisle,
    ]
  })

/** What decides the aisles of one row, beside the row itself. */
interface Surroundings {
  /** Rows near enough for an aisle; `ahead` are those of them whose aisle with this row is not told yet. */
  readonly rows: readonly Standing[]
  readonly ahead: readonly Standing[]
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

const aislesOfRow = rememberEach<Standing, Surroundings, readonly Aisle[]>(
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

/** The aisles at each row, seen from either side. */
export const aislesByRow = (aisles: readonly Aisle[]): ReadonlyMap<PartId, readonly Aisle[]> => {
  const at = new Map<PartId, Aisle[]>()
  const add = (part: PartId, aisle: Aisle) => {
    const known = at.get(part)
    if (known) known.push(aisle)
    else at.set(part, [aisle])
  }
  for (const aisle of aisles) {
    add(aisle.row, aisle)
    if (aisle.otherIs === 'row' && aisle.other !== undefined) add(aisle.other, aisle)
  }
  return at
}
