import { isShape, markReach } from '../drawing/markReach'
import type { Placement } from '../drawing/page'
import {
  fitScale,
  orient,
  papers,
  roomsOf,
  standardScales,
  type OrientedPaper,
  type Scale,
  type SheetRooms,
} from '../drawing/paper'
import type { Evaluation } from '../evaluate/evaluation'
import { boxOf, joined, type Box } from '../geometry/box'
import type { SheetOptions } from './sheet'

/** Paper kept beside the plan: running dimensions to the west and south, grid marks to the north and east, mm. */
const BESIDE = { west: 21, south: 20, north: 10.5, east: 10.5 } as const

/** How the floor lies on a sheet. */
export interface Plan {
  readonly paper: OrientedPaper
  readonly rooms: SheetRooms
  readonly scale: Scale
  readonly placement: Placement
  /** Everything that stands or swings, mm of floor. */
  readonly reach: Box
  /** Inside of the walls, mm of floor. */
  readonly house: Box
  /** The drawing room in mm of floor. */
  readonly window: Box
  /** Not all of the floor fits on the paper at the scale asked for. */
  readonly isCut: boolean
}

/** The house and everything drawn in or about it, door leaves included. */
const reachOf = ({ marksOf }: Evaluation, house: Box): Box =>
  [...marksOf.values()].flat().filter(isShape).map(markReach).reduce(joined, house)

const scaleFor = (reach: Box, room: { widthMm: number; heightMm: number }, options: SheetOptions): Scale => {
  const { scale, units } = options
  const floor = { widthMm: reach.x1 - reach.x0, heightMm: reach.y1 - reach.y0 }
  if (scale === 'fit') return fitScale(floor, room, units)
  return standardScales(units).find(({ ratio }) => ratio === scale) ?? { ratio: scale, words: `1:${scale}` }
}

const placed = (reach: Box, drawing: Box, ratio: number): Placement => {
  const x0 = drawing.x0 + BESIDE.west
  const x1 = drawing.x1 - BESIDE.east
  const y0 = drawing.y0 + BESIDE.south
  const y1 = drawing.y1 - BESIDE.north
  return {
    scale: 1 / ratio,
    xMm: (x0 + x1) / 2 - (reach.x0 + reach.x1) / 2 / ratio,
    yMm: (y0 + y1) / 2 - (reach.y0 + reach.y1) / 2 / ratio,
  }
}

const onFloor = (box: Box, { scale, xMm, yMm }: Placement): Box => ({
  x0: (box.x0 - xMm) / scale,
  y0: (box.y0 - yMm) / scale,
  x1: (box.x1 - xMm) / scale,
  y1: (box.y1 - yMm) / scale,
})

const planOn = (
  evaluation: Evaluation,
  options: SheetOptions,
  paper: OrientedPaper,
  footerMm: number,
): Plan => {
  const rooms = roomsOf(paper, footerMm)
  const house = boxOf(evaluation.bay.house.outline)
  const reach = reachOf(evaluation, house)
  const room = {
    widthMm: rooms.drawing.x1 - rooms.drawing.x0 - BESIDE.west - BESIDE.east,
    heightMm: rooms.drawing.y1 - rooms.drawing.y0 - BESIDE.south - BESIDE.north,
  }
  const scale = scaleFor(reach, room, options)
  const placement = placed(reach, rooms.drawing, scale.ratio)
  const isCut =
    (reach.x1 - reach.x0) / scale.ratio > room.widthMm || (reach.y1 - reach.y0) / scale.ratio > room.heightMm
  return { paper, rooms, scale, placement, reach, house, window: onFloor(rooms.drawing, placement), isCut }
}

/** The floor on the chosen paper; with `auto`, the way round that gives the larger drawing, else landscape. */
export const planOf = (
  evaluation: Evaluation,
  options: SheetOptions,
  footerMm: (paper: OrientedPaper) => number,
): Plan => {
  const ways = options.orientation === 'auto' ? (['landscape', 'portrait'] as const) : [options.orientation]
  const plans = ways.map((way) => {
    const paper = orient(papers[options.paper], way)
    return planOn(evaluation, options, paper, footerMm(paper))
  })
  // The list of ways is never empty, and of equals the first is kept.
  return plans.reduce((best, plan) => (isBetter(plan, best) ? plan : best))
}

const isBetter = (a: Plan, b: Plan): boolean =>
  a.isCut === b.isCut ? a.scale.ratio < b.scale.ratio : !a.isCut
