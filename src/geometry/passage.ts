import { inches, fromTicks, toTicks } from '../units/length'
import { boxOf, type Box } from './box'
import { boxesAround } from './boxCover'
import { cartFloorOf, floodFrom, isReached } from './cartFloor'
import { criticalWidths } from './criticalWidths'
import { along, type Heading, movePoint, quarterTurn } from './motion'
import type { Point } from './point'
import { settleWidths } from './settleWidths'

/** What a cart moves in. */
export interface FreeFloor {
  /** Boxes that block; a cart may touch them. Cover other shapes with `boxesOver`. */
  readonly blocks: readonly Box[]
  /** Inside of the house's walls. */
  readonly outline: readonly Point[]
}

/** A side of something, upright or level, at which a cart is to stand; `facing` is the way from it to the cart. */
export interface Face {
  readonly from: Point
  readonly to: Point
  readonly facing: Heading
}

export interface PassageOptions {
  /** Narrower carts count as none, mm. */
  readonly leastMm?: number
  /** Wider ones are not looked for, mm. */
  readonly mostMm?: number
}

const LEAST_MM = inches(10)
const MOST_MM = 3000

/** Everything below is in whole ticks, so that a 36 in cart and a 36 in aisle are equal however each was computed. */
const ticksOf = ({ x0, y0, x1, y1 }: Box): Box => ({
  x0: toTicks(x0),
  y0: toTicks(y0),
  x1: toTicks(x1),
  y1: toTicks(y1),
})

/** A face in ticks: a box without depth, and the unit vector of its heading. */
interface Stand {
  readonly side: Box
  readonly out: Point
  readonly facing: Heading
}

const standOf = ({ from, to, facing }: Face): Stand => ({
  side: ticksOf(boxOf([from, to])),
  out: along(facing),
  facing,
})

/** Centres, along the face, of a cart that has all of the face beside it once it has slid from the first to the last. */
const beside = (from: number, to: number, half: number): [number, number] => [
  Math.min(from + half, to - half),
  Math.max(from + half, to - half),
]

/** Centres of a cart that slides along the whole of a face, touching it. */
const standCentres = ({ side, out }: Stand, half: number): Box => {
  const [x0, x1] =
    out.x === 0 ? beside(side.x0, side.x1, half) : [side.x0 + out.x * half, side.x1 + out.x * half]
  const [y0, y1] =
    out.y === 0 ? beside(side.y0, side.y1, half) : [side.y0 + out.y * half, side.y1 + out.y * half]
  return { x0, y0, x1, y1 }
}

/** Centres of a cart that comes through a door; none if it is wider than the door. The longer side lies in the wall. */
const doorCentres = ({ x0, y0, x1, y1 }: Box, half: number): Box[] => {
  const isLevel = x1 - x0 >= y1 - y0
  if (2 * half > (isLevel ? x1 - x0 : y1 - y0)) return []
  return isLevel
    ? [{ x0: x0 + half, y0: y0 - half, x1: x1 - half, y1: y1 + half }]
    : [{ x0: x0 - half, y0: y0 + half, x1: x1 + half, y1: y1 - half }]
}

/** The box as seen by one who looks the way of the heading, which becomes east. */
const seenFrom = (box: Box, facing: Heading): Box => {
  const turns = ((4 - facing / 90) % 4) as 0 | 1 | 2 | 3 // the turn back of one of the four headings
  const back = quarterTurn({ x: 0, y: 0 }, turns)
  return boxOf([movePoint({ x: box.x0, y: box.y0 }, back), movePoint({ x: box.x1, y: box.y1 }, back)])
}

interface View {
  readonly inside: Box
  readonly blocks: readonly Box[]
}

/** How deep the floor in front of the whole side is clear, the side looking east. */
const clearDepth = (side: Box, { inside, blocks }: View): number => {
  let depth = Math.max(0, inside.x1 - side.x1)
  for (const block of blocks) {
    const isAhead = block.x1 > side.x1 && block.y0 < side.y1 && block.y1 > side.y0
    if (isAhead) depth = Math.min(depth, Math.max(0, block.x0 - side.x1))
  }
  return depth
}

/** For each stand how deep the floor before it is clear: no wider cart can be there, wherever it came from. */
const clearDepths = (stands: readonly Stand[], { inside, blocks }: View): Float64Array => {
  const views = new Map<Heading, View>()
  return Float64Array.from(stands, ({ side, facing }) => {
    const view = views.get(facing) ?? {
      inside: seenFrom(inside, facing),
      blocks: blocks.map((block) => seenFrom(block, facing)),
    }
    views.set(facing, view)
    return clearDepth(seenFrom(side, facing), view)
  })
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
  const stands = faces.map(standOf)
  const floor = cartFloorOf(inside, closed)
  const widths = criticalWidths(closed, inside, [...gaps, ...stands.map(({ side }) => side)])
  const most = clearDepths(stands, { inside, blocks: closed }).map((depth) =>
    Math.min(depth, toTicks(mostMm)),
  )
  const answers = settleWidths(stands, most, toTicks(leastMm), widths, (width) => {
    const flood = floodFrom(
      floor,
      width,
      gaps.flatMap((gap) => doorCentres(gap, width / 2)),
    )
    return (stand) => flood !== undefined && isReached(flood, standCentres(stand, width / 2))
  })
  return Array.from(answers, fromTicks)
}
