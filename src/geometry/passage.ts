import { fromTicks, inches, toTicks } from '../units/length'
import { type Box, boxOf, overlaps } from './box'
import { boxesAround } from './boxCover'
import { cartFloorOf, floodFrom, isReached } from './cartFloor'
import { type Face, standCentres, standsOf } from './cartStand'
import { criticalWidths } from './criticalWidths'
import type { Point } from './point'
import { settleWidths } from './settleWidths'

/** What a cart moves in. */
export interface FreeFloor {
  /** Boxes that block; a cart may touch them. Cover other shapes with `boxesOver`. */
  readonly blocks: readonly Box[]
  /** Inside of the house's walls. */
  readonly outline: readonly Point[]
}

export interface PassageOptions {
  /** Narrower carts count as none, mm. */
  readonly leastMm?: number
  /** Wider ones are not looked for, mm. */
  readonly mostMm?: number
}

const LEAST_MM = inches(10)
const MOST_MM = 3000

/** A floor with more different sides of boxes than this along an axis is looked at in coarser units: its memory grows with their square. */
const MOST_LINES = 2000

/** What all sums here are counted in, and back to mm. */
interface Scale {
  readonly toUnits: (mm: number) => number
  readonly fromUnits: (units: number) => number
}

/** Whole ticks, so that a 36 in cart and a 36 in aisle are equal however each was computed. */
const ticks: Scale = { toUnits: toTicks, fromUnits: fromTicks }

const scaleFor = (blocks: readonly Box[], { x0, y0, x1, y1 }: Box): Scale => {
  const lines = Math.max(
    new Set(blocks.flatMap((b) => [b.x0, b.x1])).size,
    new Set(blocks.flatMap((b) => [b.y0, b.y1])).size,
  )
  if (lines <= MOST_LINES) return ticks
  const unitMm = Math.max(x1 - x0, y1 - y0) / MOST_LINES
  return { toUnits: (mm) => Math.round(mm / unitMm), fromUnits: (units) => units * unitMm }
}

const inUnits =
  ({ toUnits }: Scale) =>
  ({ x0, y0, x1, y1 }: Box): Box => ({ x0: toUnits(x0), y0: toUnits(y0), x1: toUnits(x1), y1: toUnits(y1) })

/** The longer side of a door's box lies in the wall. */
const doorWidth = ({ x0, y0, x1, y1 }: Box): number => Math.max(x1 - x0, y1 - y0)

/** Centres of a cart between the jambs that touches the door's box; none if it is wider than the door. */
const doorCentres = (door: Box, width: number): Box[] => {
  if (width > doorWidth(door)) return []
  const half = width / 2
  const { x0, y0, x1, y1 } = door
  return x1 - x0 >= y1 - y0
    ? [{ x0: x0 + half, y0: y0 - half, x1: x1 - half, y1: y1 + half }]
    : [{ x0: x0 - half, y0: y0 + half, x1: x1 + half, y1: y1 - half }]
}

/**
 * For every face the width, mm, of the widest cart that comes from any door and stands alongside the whole of the face, touching
 * it and sliding along it (a cart wider than the face need only cover it); at most `mostMm`, and 0 where not even one of
 * `leastMm` can. `doors` are the gaps in the walls as boxes: the longer side lies in the wall, a wider cart does not come
 * through, and every other starts where it touches the box from inside the house.
 *
 * The cart is a square with sides along x and y that slides and never turns: the free floor eroded by half its width in the
 * maximum norm. It needs more room round a corner than a round cart of that width, and says nothing of a long cart's turning.
 * Touching is allowed: a 36 in cart passes a 36 in aisle. Exact to the tick (1/320 mm) among boxes and walls along x and y;
 * slanted walls stand in by up to `STAIR_MM`, and what lies outside of the outline's bounding box is closed.
 * A floor with over `MOST_LINES` different sides of boxes is only as fine as that share of its length.
 */
export const widestPassage = (
  { blocks, outline }: FreeFloor,
  doors: readonly Box[],
  faces: readonly Face[],
  { leastMm = LEAST_MM, mostMm = MOST_MM }: PassageOptions = {},
): number[] => {
  const house = boxOf(outline)
  const inTheWay = [...blocks.filter((block) => overlaps(block, house)), ...boxesAround(outline)]
  const scale = scaleFor(inTheWay, house)
  const { toUnits, fromUnits } = scale
  const scaled = inUnits(scale)
  const inside = scaled(house)
  const closed = inTheWay.map(scaled)
  const gaps = doors.map(scaled)
  const sides = faces.map(({ from, to, facing }) => ({ side: scaled(boxOf([from, to])), facing }))
  const widestDoor = Math.max(0, ...gaps.map(doorWidth))
  const most = Math.min(toUnits(mostMm), widestDoor, inside.x1 - inside.x0, inside.y1 - inside.y0)
  const floor = cartFloorOf(inside, closed)
  const widths = criticalWidths(closed, inside, [...gaps, ...sides.map(({ side }) => side)])
  const answers = settleWidths(standsOf(sides, inside, closed, most), toUnits(leastMm), widths, (width) => {
    const starts = gaps.flatMap((gap) => doorCentres(gap, width))
    const flood = floodFrom(floor, width, starts)
    return {
      comes: (stand) => isReached(flood, standCentres(stand, width / 2)),
      meetsLane: ({ lane }) => lane !== undefined && isReached(flood, lane),
    }
  })
  return Array.from(answers, fromUnits)
}
