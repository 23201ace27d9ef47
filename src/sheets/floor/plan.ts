import { isShape, markReach } from '../../drawing/markReach'
import type { Placement } from '../../drawing/page'
import {
  fitScale,
  orient,
  papers,
  roomsOf,
  standardScales,
  type OrientedPaper,
  type Scale,
  type SheetRooms,
} from '../../drawing/paper'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, joined, type Box } from '../../geometry/box'
import type { Units } from '../../units/length'
import { asides, type Aside } from './asides'
import type { Room } from '../pour'
import type { SheetOptions } from '../sheet'

/** Paper kept to the north and east of the plan for grid marks, mm. */
const GRID_MM = 10.5

/** Paper kept on each side of the plan, mm. */
export interface Beside {
  readonly west: number
  readonly south: number
  readonly north: number
  readonly east: number
}

/** Paper that words need, whatever the scale, mm. */
export interface Kept {
  /** Running dimensions. */
  readonly westMm: number
  readonly southMm: number
  /** Words of caution across the foot. */
  readonly footerMm: (paper: OrientedPaper) => number
}

/** How the floor lies on a sheet. */
export interface Plan {
  readonly paper: OrientedPaper
  readonly rooms: SheetRooms
  readonly scale: Scale
  readonly placement: Placement
  readonly beside: Beside
  /** Everything that stands or swings, mm of floor. */
  readonly reach: Box
  /** Inside of the walls, mm of floor. */
  readonly house: Box
  /** What the drawing has to itself, mm of paper. */
  readonly drawing: Box
  /** The same in mm of floor. */
  readonly window: Box
  /** Paper beside the plan that words may have. */
  readonly spare: readonly Room[]
  /** Not all of the floor fits on the paper at the scale asked for. */
  readonly isCut: boolean
}

/** The house and everything drawn in or about it, door leaves included. */
const reachOf = ({ marksOf }: Evaluation, house: Box): Box =>
  [...marksOf.values()].flat().filter(isShape).map(markReach).reduce(joined, house)

/** A plan of this reach with the paper kept beside it, mm of paper. */
const sizeOf = ({ reach, beside }: Pick<Plan, 'reach' | 'beside'>, ratio: number) => ({
  widthMm: (reach.x1 - reach.x0) / ratio + beside.west + beside.east,
  heightMm: (reach.y1 - reach.y0) / ratio + beside.south + beside.north,
})

const scaleFor = (reach: Box, drawing: Box, beside: Beside, { scale, units }: SheetOptions): Scale => {
  const floor = { widthMm: reach.x1 - reach.x0, heightMm: reach.y1 - reach.y0 }
  const room = {
    widthMm: drawing.x1 - drawing.x0 - beside.west - beside.east,
    heightMm: drawing.y1 - drawing.y0 - beside.south - beside.north,
  }
  if (scale === 'fit') return fitScale(floor, room, units)
  return standardScales(units).find(({ ratio }) => ratio === scale) ?? { ratio: scale, words: `1:${scale}` }
}

const placed = (reach: Box, drawing: Box, beside: Beside, ratio: number): Placement => {
  const x0 = drawing.x0 + beside.west
  const x1 = drawing.x1 - beside.east
  const y0 = drawing.y0 + beside.south
  const y1 = drawing.y1 - beside.north
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

/** The plan at a scale, moved over for what stands beside it. */
const laid = (
  plan: Pick<Plan, 'paper' | 'rooms' | 'reach' | 'house' | 'beside'>,
  scale: Scale,
  aside: Aside,
): Plan => {
  const { drawing, spare } = aside
  const placement = placed(plan.reach, drawing, plan.beside, scale.ratio)
  const { widthMm, heightMm } = sizeOf(plan, scale.ratio)
  const isCut = widthMm > drawing.x1 - drawing.x0 + CLOSE_MM || heightMm > drawing.y1 - drawing.y0 + CLOSE_MM
  return { ...plan, scale, placement, drawing, window: onFloor(drawing, placement), spare, isCut }
}

/** A plan that fits to a hair still fits: sums of lengths round. */
const CLOSE_MM = 1e-6

const planOn = (evaluation: Evaluation, options: SheetOptions, paper: OrientedPaper, kept: Kept): Plan => {
  const rooms = roomsOf(paper, kept.footerMm(paper))
  const beside = { west: kept.westMm, south: kept.southMm, north: GRID_MM, east: GRID_MM }
  const house = boxOf(evaluation.bay.house.outline)
  const reach = reachOf(evaluation, house)
  const scale = scaleFor(reach, rooms.drawing, beside, options)
  return laid({ paper, rooms, reach, house, beside }, scale, { drawing: rooms.drawing, spare: [] })
}

/** The floor on the chosen paper; with `auto`, the way round that gives the larger drawing, else landscape. */
export const planOf = (evaluation: Evaluation, options: SheetOptions, kept: Kept): Plan => {
  const ways = options.orientation === 'auto' ? (['landscape', 'portrait'] as const) : [options.orientation]
  const plans = ways.map((way) => {
    return planOn(evaluation, options, orient(papers[options.paper], way), kept)
  })
  // The list of ways is never empty, and of equals the first is kept.
  return plans.reduce((best, plan) => (isBetter(plan, best) ? plan : best))
}

const isBetter = (a: Plan, b: Plan): boolean =>
  a.isCut === b.isCut ? a.scale.ratio < b.scale.ratio : !a.isCut

/** The same plan set aside in each way that leaves paper for words, the least first. */
export const withSpare = (plan: Plan, scale: Scale = plan.scale): Plan[] =>
  asides(plan.rooms.drawing, sizeOf(plan, scale.ratio)).map((aside) => laid(plan, scale, aside))

/** So many scales smaller a plan may be drawn for the sake of its words. */
const STEPS_DOWN = 2

/** The next smaller standard scales. */
export const smallerScales = ({ scale }: Plan, units: Units): Scale[] =>
  standardScales(units)
    .filter(({ ratio }) => ratio > scale.ratio)
    .slice(0, STEPS_DOWN)
