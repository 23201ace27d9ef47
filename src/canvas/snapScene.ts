import { boxOf, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Evaluation } from '../evaluate/evaluation'
import type { Layout } from '../layout/schema'
import type { PartId } from '../model/ids'
import { inches, type Units } from '../units/length'
import { writerFor, type Writer } from '../units/writer'
import { segmentsOf } from '../geometry/polyline'
import { aisleWidths, type AisleWidth } from './aisleWidths'
import { nameOf } from '../store/partNames'
import { isAlongAisles, standBoxOf } from './standing'

/** Something that stands still while another thing is moved. */
export interface Neighbour {
  readonly name: string
  readonly box: Box
  /** Whether people walk between it and what is moved. */
  readonly isAlongAisles: boolean
  readonly isRow: boolean
  readonly isWall: boolean
}

/** A straight stretch of a drain, for outlets to stand over. */
export interface SnapLeg {
  readonly name: string
  readonly from: Point
  readonly to: Point
}

/** All that a moving thing may be lined up with. */
export interface SnapScene {
  readonly neighbours: readonly Neighbour[]
  readonly walls: readonly Neighbour[]
  readonly drains: readonly SnapLeg[]
  /** Where the west and the south wall string cross; undefined where nothing is laid out from them. */
  readonly strings: Point | undefined
  /** Offsets from the strings are laid out in whole steps. */
  readonly stepMm: number
  readonly widths: readonly AisleWidth[]
  readonly writer: Writer
}

/** Whole inches, or whole centimetres of the metric tape. */
const stepOf = (units: Units): number => (units === 'metric' ? 10 : inches(1))

const wallName = (from: Point, to: Point): string => {
  if (from.x === to.x) return to.y > from.y ? 'the east wall' : 'the west wall'
  return to.x > from.x ? 'the south wall' : 'the north wall'
}

/** Walls along an axis; a slanted wall lines nothing up. The outline runs anticlockwise. */
const wallsOf = (outline: readonly Point[]): Neighbour[] =>
  outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from
    const isStraight = from.x === to.x || from.y === to.y
    return isStraight
      ? [
          {
            name: wallName(from, to),
            box: boxOf([from, to]),
            isAlongAisles: true,
            isRow: false,
            isWall: true,
          },
        ]
      : []
  })

const neighboursOf = ({ layout, bay }: Evaluation, moving: ReadonlySet<PartId>): Neighbour[] =>
  layout.parts.flatMap((part) => {
    const built = moving.has(part.id) ? undefined : bay.builtOf.get(part.id)
    const box = built && standBoxOf(built, null)
    return built && box
      ? [
          {
            name: nameOf(part),
            box,
            isAlongAisles: isAlongAisles(built),
            isRow: built.rack !== undefined,
            isWall: false,
          },
        ]
      : []
  })

const drainsOf = ({ layout, bay }: Evaluation, moving: ReadonlySet<PartId>): SnapLeg[] =>
  layout.parts.flatMap((part) => {
    const tube = bay.builtOf.get(part.id)?.tubes.find(({ role }) => role === 'drain')
    if (!tube || moving.has(part.id)) return []
    return segmentsOf(tube.path).map(({ from, to }) => ({ name: nameOf(part), from, to }))
  })

const stringsOf = ({ house }: Layout): Point => {
  const { x0, y0 } = boxOf(house.outline)
  return { x: x0, y: y0 }
}

/** What stands still while `moving` is moved. */
export const sceneOf = (evaluation: Evaluation, moving: readonly PartId[], units: Units): SnapScene => ({
  neighbours: neighboursOf(evaluation, new Set(moving)),
  drains: drainsOf(evaluation, new Set(moving)),
  walls: wallsOf(evaluation.layout.house.outline),
  strings: stringsOf(evaluation.layout),
  stepMm: stepOf(units),
  widths: aisleWidths(evaluation.layout.settings),
  writer: writerFor(units),
})
