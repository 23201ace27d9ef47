import { type Box, boxOf, joined, overlaps } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import { inches } from '../units/length'

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

/** Nobody's head reaches this: what hangs higher does not narrow an aisle. 29 CFR 1910.36(g)(1): 6 ft 8 in. */
const HEAD_MM = inches(80)

const MAIN_MM = inches(48)
const DOOR_HEAD_MM = inches(72)

/** The name the trade has for an aisle of this width. */
export const aisleClass = (widthMm: number, settings: Settings): AisleClass => {
  if (widthMm >= DOOR_HEAD_MM) return 'door/head'
  if (widthMm >= MAIN_MM) return 'main'
  if (widthMm >= settings.workAisleMm) return 'work'
  if (widthMm >= settings.cartMm + BESIDE_CART_MM) return 'cart'
  return widthMm >= settings.squeezeMm ? 'scouting' : 'squeeze'
}

export interface Standing {
  readonly part: PartId
  readonly box: Box
}

/** Each row as the box of its widest parts: leaves, bars, runners. */
export const rowBoxes = (built: readonly Built[]): Standing[] =>
  built.flatMap((b) => {
    const outlines = b.rack
      ? b.bodies
          .filter(({ role }) => role === 'canopy' || role === 'frame')
          .map(({ outline }) => boxOf(outline))
      : []
    return outlines.length > 0 ? [{ part: b.part, box: outlines.reduce(joined) }] : []
  })

/** Posts and equipment that narrow a way at the height of a person. */
export const obstacleBoxes = (built: readonly Built[]): Standing[] =>
  built.flatMap((b) =>
    b.bodies
      .filter(({ role, fromMm }) => (role === 'post' || role === 'equipment') && fromMm < HEAD_MM)
      .map(({ outline }) => ({ part: b.part, box: boxOf(outline) })),
  )

type Axis = 'x' | 'y'

const low = (box: Box, axis: Axis): number => (axis === 'x' ? box.x0 : box.y0)
const high = (box: Box, axis: Axis): number => (axis === 'x' ? box.x1 : box.y1)
const across = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x')
const pointOn = (axis: Axis, along: number, aside: number): Point =>
  axis === 'x' ? { x: along, y: aside } : { x: aside, y: along }

interface Facing {
  readonly axis: Axis
  readonly gapMm: number
  readonly lengthMm: number
  readonly from: Point
  readonly to: Point
  /** The floor between the two. */
  readonly between: Box
}

/** How two boxes face each other along an axis; undefined where they do not stand side by side. */
const facing = (a: Box, b: Box, axis: Axis): Facing | undefined => {
  const side = across(axis)
  const from = Math.max(low(a, side), low(b, side))
  const to = Math.min(high(a, side), high(b, side))
  if (to <= from) return undefined
  const isAhead = low(b, axis) + high(b, axis) >= low(a, axis) + high(a, axis)
  const start = isAhead ? high(a, axis) : low(a, axis)
  const end = isAhead ? low(b, axis) : high(b, axis)
  const gapMm = isAhead ? end - start : start - end
  const ends = [pointOn(axis, start, from), pointOn(axis, end, to)]
  const aside = (from + to) / 2
  return {
    axis,
    gapMm,
    lengthMm: to - from,
    from: pointOn(axis, start, aside),
    to: pointOn(axis, end, aside),
    between: boxOf(ends),
  }
}

/** The axis along which two boxes are apart; where they overlap, the one along which they overlap least. */
const bestFacing = (a: Box, b: Box): Facing | undefined => {
  const x = facing(a, b, 'x')
  const y = facing(a, b, 'y')
  if (!x || !y) return x ?? y
  return x.gapMm >= y.gapMm ? x : y
}

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
    from: way.from,
    to: way.to,
    widthMm: way.gapMm,
    lengthMm: way.lengthMm,
    needMm: Math.max(settings.workAisleMm, settings.cartMm + 2 * BESIDE_CART_MM),
    clashBelowMm: settings.squeezeMm,
  }
}

const rowToObstacle = (
  row: Standing,
  thing: Standing,
  rows: readonly Standing[],
  wallMm: number,
  settings: Settings,
): Aisle | undefined => {
  const way = bestFacing(row.box, thing.box)
  if (!way || way.gapMm > WIDEST_AISLE_MM || !isClear(way.between, rows, row.part, thing.part))
    return undefined
  // Nobody walks between a post and the wall it stands at, so there the row only keeps its leaves off.
  const isAtWall = wallMm < settings.squeezeMm
  return {
    row: row.part,
    other: thing.part,
    otherIs: 'obstacle',
    along: way.axis === runsAlong(row.box) ? 'end' : 'face',
    from: way.from,
    to: way.to,
    widthMm: way.gapMm,
    lengthMm: way.lengthMm,
    needMm: isAtWall ? settings.scoutMm : settings.workAisleMm,
    clashBelowMm: isAtWall ? 0 : settings.squeezeMm,
  }
}

interface WallHit {
  readonly gapMm: number
  readonly aside: number
}

/** The part of wall a-b that lies beside the span lo..hi, as its nearest approach to `edge` in direction `sign` along the axis. */
const wallBeside = (
  a: Point,
  b: Point,
  axis: Axis,
  edge: number,
  sign: 1 | -1,
  lo: number,
  hi: number,
): WallHit | undefined => {
  const side = across(axis)
  const d = b[side] - a[side]
  const clip = (v: number) => (d === 0 ? 0 : Math.min(1, Math.max(0, (v - a[side]) / d)))
  if (Math.max(a[side], b[side]) <= lo || Math.min(a[side], b[side]) >= hi) return undefined
  const hits = [clip(lo), clip(hi)].map((t) => ({
    gapMm: sign * (a[axis] + (b[axis] - a[axis]) * t - edge),
    aside: a[side] + d * t,
  }))
  return hits.reduce((near, hit) => (hit.gapMm < near.gapMm ? hit : near))
}

/** How far a row's side is from the wall that it faces, and where that is nearest. */
const wallAhead = (box: Box, outline: readonly Point[], axis: Axis, sign: 1 | -1): WallHit | undefined => {
  const side = across(axis)
  const edge = sign > 0 ? high(box, axis) : low(box, axis)
  const size = high(box, axis) - low(box, axis)
  let best: WallHit | undefined
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a
    const hit = wallBeside(a, b, axis, edge, sign, low(box, side), high(box, side))
    // A wall behind the far side of the row belongs to the other direction.
    if (hit && hit.gapMm > -size && (!best || hit.gapMm < best.gapMm)) best = hit
  })
  return best
}

const SIDES = [
  ['x', 1],
  ['x', -1],
  ['y', 1],
  ['y', -1],
] as const

const rowToWall = (
  row: Standing,
  rows: readonly Standing[],
  outline: readonly Point[],
  settings: Settings,
): Aisle[] =>
  SIDES.flatMap(([axis, sign]) => {
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
        from,
        to,
        widthMm: hit.gapMm,
        lengthMm: high(row.box, side) - low(row.box, side),
        needMm: along === 'end' ? settings.workAisleMm : settings.scoutMm,
        clashBelowMm: 0,
      } satisfies Aisle,
    ]
  })

/** How far an obstacle stands from the nearest wall, along either axis. */
const toWallMm = (box: Box, outline: readonly Point[]): number =>
  Math.min(...SIDES.map(([axis, sign]) => Math.abs(wallAhead(box, outline, axis, sign)?.gapMm ?? Infinity)))

/** Every aisle of the bay: row to row, row to obstacle, row to wall. */
export const aislesOf = (built: readonly Built[], outline: readonly Point[], settings: Settings): Aisle[] => {
  const rows = rowBoxes(built)
  const things = obstacleBoxes(built).map((thing) => ({ ...thing, wallMm: toWallMm(thing.box, outline) }))
  const aisles: Aisle[] = []
  rows.forEach((a, index) => {
    for (const b of rows.slice(index + 1)) {
      const aisle = rowToRow(a, b, rows, settings)
      if (aisle) aisles.push(aisle)
    }
    for (const thing of things) {
      const aisle = rowToObstacle(a, thing, rows, thing.wallMm, settings)
      if (aisle) aisles.push(aisle)
    }
    aisles.push(...rowToWall(a, rows, outline, settings))
  })
  return aisles
}
