import { fromTicks, inches, toTicks } from '../units/length'
import { type Box, boxOf } from './box'
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

/** All sums here are in whole ticks, so that a 36 in cart and a 36 in aisle are equal however each was computed. */
const ticksOf = ({ x0, y0, x1, y1 }: Box): Box => ({
  x0: toTicks(x0),
  y0: toTicks(y0),
  x1: toTicks(x1),
  y1: toTicks(y1),
})

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
 */
export const widestPassage = (
  { blocks, outline }: FreeFloor,
  doors: readonly Box[],
  faces: readonly Face[],
  { leastMm = LEAST_MM, mostMm = MOST_MM }: PassageOptions = {},
): number[] => {
  const inside = ticksOf(boxOf(outline))
  const closed = [...blocks, ...boxesAround(outline)].map(ticksOf)
  const gaps = doors.map(ticksOf)
  const sides = faces.map(({ from, to, facing }) => ({ side: ticksOf(boxOf([from, to])), facing }))
  const widestDoor = Math.max(0, ...gaps.map(doorWidth))
  const most = Math.min(toTicks(mostMm), widestDoor, inside.x1 - inside.x0, inside.y1 - inside.y0)
  const floor = cartFloorOf(inside, closed)
  const widths = criticalWidths(closed, inside, [...gaps, ...sides.map(({ side }) => side)])
  const answers = settleWidths(standsOf(sides, inside, closed, most), toTicks(leastMm), widths, (width) => {
    const starts = gaps.flatMap((gap) => doorCentres(gap, width))
    const flood = floodFrom(floor, width, starts)
    return {
      comes: (stand) => isReached(flood, standCentres(stand, width / 2)),
      meetsLane: ({ lane }) => lane !== undefined && isReached(flood, lane),
    }
  })
  return Array.from(answers, fromTicks)
}
