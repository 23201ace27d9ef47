import type { Evaluation } from '../../evaluate/evaluation'
import { isShape, markReach } from '../../drawing/markReach'
import { boxOf, grown, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import { segmentsOf } from '../../geometry/polyline'
import { rowBoxes } from '../../checks/standing'
import type { Mark } from '../../model/drawing'

/** Words this near a line seem struck through, mm of paper. */
const NEAR_MM = 0.5
/** A line that leans is kept off in pieces of this length, mm of paper: one box about all of it would keep off half the floor. */
const PIECE_MM = 5

/** Boxes about a line of points, mm of floor. */
export const lineBoxes = (points: readonly Point[], ratio: number): Box[] =>
  segmentsOf(points).flatMap(({ from, to, lengthMm }) => {
    const leans = from.x !== to.x && from.y !== to.y
    const count = leans ? Math.max(1, Math.ceil(lengthMm / (PIECE_MM * ratio))) : 1
    const at = (i: number): Point => ({
      x: from.x + ((to.x - from.x) * i) / count,
      y: from.y + ((to.y - from.y) * i) / count,
    })
    return Array.from({ length: count }, (_, i) => grown(boxOf([at(i), at(i + 1)]), NEAR_MM * ratio))
  })

/** Boxes about the thin lines of dimensions, mm of floor. */
export const stringBoxes = (marks: readonly Mark[], ratio: number): Box[] =>
  marks.filter(isShape).flatMap((mark) => {
    if (mark.as !== 'path' || mark.pen !== 'dimension') return []
    return [grown(markReach(mark), NEAR_MM * ratio)]
  })

const closed = (points: readonly Point[]): readonly Point[] => [...points, ...points.slice(0, 1)]

/** Boxes about the walls, mm of floor. */
export const wallBoxes = ({ bay: { house } }: Evaluation, ratio: number): Box[] =>
  lineBoxes(closed(house.outline), ratio)

/** What words would hide or be struck through by: walls, pipes, rows, hatches and door leaves. In mm of floor. */
export const shunnedBoxes = (evaluation: Evaluation, ratio: number): Box[] => {
  const { bay } = evaluation
  const { services } = bay.house
  const pipes = bay.built.filter(({ rack }) => rack === undefined).flatMap(({ tubes }) => tubes)
  const trenches = bay.built.flatMap(({ bodies }) => bodies).filter(({ role }) => role === 'trench')
  const areas = bay.built
    .flatMap(({ bodies }) => bodies)
    .filter(({ role }) => role === 'keep-clear' || role === 'door')
  return [
    ...wallBoxes(evaluation, ratio),
    ...trenches.flatMap(({ outline }) => lineBoxes(closed(outline), ratio)),
    ...[...services.map(({ points }) => points), ...pipes.map(({ path }) => path)].flatMap((points) =>
      lineBoxes(points, ratio),
    ),
    ...areas.map((area) => boxOf(area.outline)),
    ...rowBoxes(bay.built).map(({ box }) => box),
  ]
}
