import { boxOf, type Box } from '../geometry/box'
import { type Heading, turnHeading } from '../geometry/motion'
import { widestPassage } from '../geometry/passage'
import type { Point } from '../geometry/point'
import type { Body, Built } from '../model/built'
import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'
import { obstacleThings, rowBoxes } from './standing'
import type { Bay, CartReach } from './context'
import { doorsOf } from './doors'
import { EXIT_ACCESS_MM } from './exitAccess'

interface Side {
  readonly from: Point
  readonly to: Point
  readonly facing: Heading
}

/** The side of a box that faces a heading. */
const sideOf = ({ x0, y0, x1, y1 }: Box, facing: Heading): Side => {
  switch (facing) {
    case 0:
      return { from: { x: x1, y: y0 }, to: { x: x1, y: y1 }, facing }
    case 90:
      return { from: { x: x0, y: y1 }, to: { x: x1, y: y1 }, facing }
    case 180:
      return { from: { x: x0, y: y0 }, to: { x: x0, y: y1 }, facing }
    case 270:
      return { from: { x: x0, y: y0 }, to: { x: x1, y: y0 }, facing }
  }
}

const pitsIn = rememberEach<Built, null, readonly Box[]>(({ bodies }) =>
  bodies.filter(({ role }) => role === 'pit').map(({ outline }) => boxOf(outline)),
)

const boxesOf = (doors: readonly Body[]): Box[] => doors.map(({ outline }) => boxOf(outline))

/** Left and right of a row, seen along it, and its start and end where they are asked for. */
const sidesOf = (box: Box, left: Heading, areEndsAsked: boolean): Side[] =>
  (areEndsAsked ? [0, 2, 1, 3] : [0, 2]).map((turns) => sideOf(box, turnHeading(left, turns)))

/** Widest ways alongside the sides of every row, as `each` numbers a row. */
type Ways = (doors: readonly Box[]) => readonly number[]

/** The wider of left and right for each row. */
const better = (widths: readonly number[], each: number): number[] =>
  widths.flatMap((left, index) => (index % each === 0 ? [Math.max(left, widths[index + 1] ?? 0)] : []))

/** Ways out on foot. Where carts' doors are near enough for every row, nobody asks about the others. */
const waysOut = (
  cart: readonly number[],
  each: number,
  all: readonly Box[],
  isAll: boolean,
  ways: Ways,
): number[] => {
  const out = better(cart, each)
  return isAll || out.every((width) => width >= EXIT_ACCESS_MM) ? out : better(ways(all), each)
}

/**
 * The widest cart that can come from a door alongside each side of each row, from any door where no door is for carts.
 * A pit blocks: its lid bears a person, not a cart. The ends of the rows are looked at only for a wheelchair, which
 * must turn there.
 */
const reachOf = ({ built, house: { outline }, settings }: Bay): ReadonlyMap<PartId, CartReach> => {
  const areEndsAsked = settings.wheelchair
  const rows = rowBoxes(built)
  const things = obstacleThings(built, outline)
  const blocks = [...[...rows, ...things].map(({ box }) => box), ...built.flatMap((b) => pitsIn(b, null))]
  const leftOf = new Map(built.map((b) => [b.part, b.rack?.leftFace.facing ?? 180]))
  const sides = rows.flatMap(({ part, box }) => sidesOf(box, leftOf.get(part) ?? 180, areEndsAsked))
  const ways: Ways = (doors) => widestPassage({ blocks, outline }, doors, sides)

  const doors = doorsOf(built)
  const forCarts = boxesOf(doors.filter(({ role }) => role === 'door'))
  const all = boxesOf(doors)
  const isAll = forCarts.length === 0 || forCarts.length === all.length
  const cart = ways(isAll ? all : forCarts)
  const each = areEndsAsked ? 4 : 2
  const out = waysOut(cart, each, all, isAll, ways)
  return new Map(
    rows.map(({ part }, index) => {
      const [leftMm = 0, rightMm = 0, startMm = 0, endMm = 0] = cart.slice(each * index, each * (index + 1))
      return [part, { leftMm, rightMm, startMm, endMm, outMm: out[index] ?? 0 }]
    }),
  )
}

const ofBay = rememberEach<Bay, undefined, ReadonlyMap<PartId, CartReach>>(reachOf)

/**
 * The widest cart that comes alongside each row from a door that carts use. Asked for apart from the evaluation, by rules and readouts, and
 * remembered for the bay.
 */
export const cartsOf = (bay: Bay): ReadonlyMap<PartId, CartReach> => ofBay(bay, undefined)
