import { onPaper } from '../../drawing/page'
import { fitScale } from '../../drawing/paper'
import { houseMarks, serviceMarks } from '../../drawing/houseMarks'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, overlaps, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { BodyRole } from '../../model/built'
import type { Mark, Pen, Wash } from '../../model/drawing'
import { discMark, shapeMark } from '../../parts/marks'
import type { Units } from '../../units/length'
import { lettered, LETTERS } from '../ink'
import type { Drawn, FigurePiece } from '../piece'
import type { StandGroup } from './stands'

/** What of a bay is drawn on a plan as small as a hand, what is lowest first. */
const DRAWN: readonly (readonly [BodyRole, Pen, Wash])[] = [
  ['canopy', 'crop', 'crop'],
  ['trench', 'drain', 'none'],
  ['pit', 'outline', 'pit'],
  ['post', 'outline', 'post'],
  ['equipment', 'outline', 'post'],
  ['keep-clear', 'keep-clear', 'none'],
  ['door', 'outline', 'paper'],
]

const floorMarks = ({ bay }: Evaluation): Mark[] => {
  const bodies = bay.built.flatMap((built) => built.bodies)
  return [
    ...houseMarks(bay.house),
    ...DRAWN.flatMap(([role, pen, wash]) =>
      bodies.filter((body) => body.role === role).map(({ outline }) => shapeMark(outline, pen, wash)),
    ),
    ...serviceMarks(bay.house).filter(({ as }) => as !== 'text'),
  ]
}

/** Radius of a numbered disc, and bare paper round the plan for those that stand at its edge, mm of paper. */
const DISC_MM = 2.4
const EDGE_MM = 3
/** No figure is taller than this, and no more places of one kind are numbered: the words say how many there are. */
const MOST_TALL_MM = 52
const MOST_SPOTS = 10

/** A number beside its place where another stands in it, shares of a disc's width. */
const BESIDE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: -1 },
  { x: 1, y: -1 },
  { x: -1, y: 1 },
]

const discBox = ({ x, y }: Point): Box => ({
  x0: x - DISC_MM,
  y0: y - DISC_MM,
  x1: x + DISC_MM,
  y1: y + DISC_MM,
})

interface Place {
  readonly at: Point
  /** Where the number may stand, shares of a disc's width from it. */
  readonly beside: readonly Point[]
}

/** Places of a group; thinned out evenly where there are many, and then numbered only where the number stands right in them. */
const placesIn = ({ hazards }: StandGroup): readonly Place[] => {
  const spots = new Map(hazards.flatMap((hazard) => hazard.spots.map((spot) => [spot.name, spot.at])))
  const step = Math.ceil(spots.size / MOST_SPOTS)
  const beside = step > 1 ? BESIDE.slice(0, 1) : BESIDE
  return [...spots.values()].filter((_, index) => index % step === 0).map((at) => ({ at, beside }))
}

/** Numbers at their places, mm of paper; one that finds no room is left out, since its like stands near. */
const numberMarks = (groups: readonly StandGroup[], paperOf: (at: Point) => Point): Mark[] => {
  const taken: Box[] = []
  return groups.flatMap((group, index) =>
    placesIn(group).flatMap(({ at: place, beside }): Mark[] => {
      const at = paperOf(place)
      const free = beside
        .map(({ x, y }) => ({
          x: at.x + 2.1 * x * DISC_MM,
          y: at.y + 2.1 * y * DISC_MM,
        }))
        .find((spot) => !taken.some((box) => overlaps(box, discBox(spot))))
      if (free === undefined) return []
      taken.push(discBox(free))
      return [
        discMark(free, DISC_MM, 'must-fix', 'paper'),
        lettered(String(index + 1), free, LETTERS.body, { anchor: 'middle' }),
      ]
    }),
  )
}

const drawn = (
  plan: Evaluation,
  groups: readonly StandGroup[],
  units: Units,
  room: { readonly widthMm: number; readonly heightMm: number },
): Drawn => {
  const house = boxOf(plan.bay.house.outline)
  const floor = { widthMm: house.x1 - house.x0, heightMm: house.y1 - house.y0 }
  const inner = {
    widthMm: room.widthMm - 2 * EDGE_MM,
    heightMm: Math.min(room.heightMm, MOST_TALL_MM) - 2 * EDGE_MM,
  }
  const { ratio, words } = fitScale(floor, inner, units)
  const placement = {
    scale: 1 / ratio,
    xMm: room.widthMm / 2 - (house.x0 + house.x1) / 2 / ratio,
    yMm: EDGE_MM - house.y0 / ratio,
  }
  const paperOf = ({ x, y }: Point): Point => ({ x: x / ratio + placement.xMm, y: y / ratio + placement.yMm })
  return {
    heightMm: floor.heightMm / ratio + 2 * EDGE_MM,
    items: [
      { marks: floorMarks(plan), placement },
      { marks: numberMarks(groups, paperOf), placement: onPaper },
    ],
    scaleWords: words,
  }
}

/** The bay from above with the numbers of the groups at their places. */
export const keyPlan = (plan: Evaluation, groups: readonly StandGroup[], units: Units): FigurePiece => ({
  as: 'figure',
  caption: 'Where it is: the numbers are those of the table; of many places alike some are numbered',
  draw: (room) => drawn(plan, groups, units, room),
})
