import { type Box, boxOf } from './box'
import { along, type Heading, movePoint, quarterTurn } from './motion'
import type { Point } from './point'

/** A side of something, upright or level, at which a cart is to stand; `facing` is the way from it to the cart. */
export interface Face {
  readonly from: Point
  readonly to: Point
  readonly facing: Heading
}

/** A face with what the floor just before it allows. */
export interface Stand {
  /** The face as a box without depth, and the unit vector of its heading. */
  readonly side: Box
  readonly out: Point
  /** How deep the floor is clear before the whole side: no wider cart can be there, wherever it comes from. */
  readonly most: number
  /** Centres between which a cart of width `most` slides along the side and on past its ends; none if it does not fit. */
  readonly lane: Box | undefined
}

/** A floor as seen by one who looks the way that a face looks, which becomes east. */
interface View {
  readonly inside: Box
  readonly blocks: readonly Box[]
}

const turned = (box: Box, degrees: number): Box => {
  const turns = ((degrees / 90) % 4) as 0 | 1 | 2 | 3 // headings and 360 less a heading are whole quarter turns
  const turn = quarterTurn({ x: 0, y: 0 }, turns)
  return boxOf([movePoint({ x: box.x0, y: box.y0 }, turn), movePoint({ x: box.x1, y: box.y1 }, turn)])
}

const seen = (box: Box, facing: Heading): Box => turned(box, 360 - facing)

const clearDepth = (side: Box, { inside, blocks }: View): number => {
  let depth = Math.max(0, inside.x1 - side.x1)
  for (const block of blocks) {
    const isAhead = block.x1 > side.x1 && block.y0 < side.y1 && block.y1 > side.y0
    if (isAhead) depth = Math.min(depth, Math.max(0, block.x0 - side.x1))
  }
  return depth
}

/** Of a side with its clear depth before it: how far the strip of that depth goes on beyond both ends. */
const laneOf = (side: Box, depth: number, { inside, blocks }: View): Box | undefined => {
  let south = inside.y0
  let north = inside.y1
  for (const block of blocks) {
    if (block.x0 >= side.x1 + depth || block.x1 <= side.x1) continue
    if (block.y1 <= side.y0) south = Math.max(south, block.y1)
    else if (block.y0 >= side.y1) north = Math.min(north, block.y0)
  }
  const x = side.x1 + depth / 2
  return north - south < depth ? undefined : { x0: x, y0: south + depth / 2, x1: x, y1: north - depth / 2 }
}

const standOf = (side: Box, facing: Heading, view: View, most: number): Stand => {
  const seenSide = seen(side, facing)
  const depth = Math.min(most, clearDepth(seenSide, view))
  const lane = laneOf(seenSide, depth, view)
  return { side, out: along(facing), most: depth, lane: lane && turned(lane, facing) }
}

/** The stands of faces on a floor, for carts up to `most` wide; `sides` are the faces in the floor's units. */
export const standsOf = (
  sides: readonly { readonly side: Box; readonly facing: Heading }[],
  inside: Box,
  blocks: readonly Box[],
  most: number,
): Stand[] => {
  const views = new Map<Heading, View>()
  return sides.map(({ side, facing }) => {
    const view = views.get(facing) ?? {
      inside: seen(inside, facing),
      blocks: blocks.map((block) => seen(block, facing)),
    }
    views.set(facing, view)
    return standOf(side, facing, view, most)
  })
}

/** Centres, along the side, of a cart that has all of the side beside it once it has slid from the first to the last. */
const beside = (from: number, to: number, half: number): [number, number] => [
  Math.min(from + half, to - half),
  Math.max(from + half, to - half),
]

/** Centres of a cart that slides along the whole of the side, touching it. */
export const standCentres = ({ side, out }: Stand, half: number): Box => {
  const [x0, x1] =
    out.x === 0 ? beside(side.x0, side.x1, half) : [side.x0 + out.x * half, side.x1 + out.x * half]
  const [y0, y1] =
    out.y === 0 ? beside(side.y0, side.y1, half) : [side.y0 + out.y * half, side.y1 + out.y * half]
  return { x0, y0, x1, y1 }
}
