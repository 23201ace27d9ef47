import { overlaps, type Box } from '../../geometry/box'
import { between, distance, type Point } from '../../geometry/point'
import type { Mark } from '../../model/drawing'
import { textWidth } from '../../drawing/lettering'
import { discMark } from '../../parts/marks'
import { isInside } from '../clearWords'
import { lettered, ruled, shaped } from '../ink'
import type { Pointed } from './shapes'

const LETTER_MM = 2.6
const RADIUS_MM = 2.5
const DISTANCES_MM = [6, 8, 10.5, 13.5, 17, 21, 26, 32, 40]
const WAYS = 16
const LEADER_STEP_MM = 1.5
/** A leader may cross so much of other members rather than be so much longer. */
const CROSSING_MM = 5
const AIR_MM = 0.6

const halfWidth = (mark: string): number => Math.max(RADIUS_MM, textWidth(mark, LETTER_MM) / 2 + 1)

const ringBox = ({ x, y }: Point, mark: string): Box => {
  const half = halfWidth(mark) + AIR_MM
  const tall = RADIUS_MM + AIR_MM
  return { x0: x - half, x1: x + half, y0: y - tall, y1: y + tall }
}

/** Small boxes along the leader, from its ring to where it points. */
const leaderBoxes = (ring: Point, point: Point): Box[] => {
  const lengthMm = distance(ring, point)
  const steps = Math.max(1, Math.floor((lengthMm - RADIUS_MM) / LEADER_STEP_MM))
  return Array.from({ length: steps }, (_, i) => {
    const { x, y } = between(point, ring, (i * LEADER_STEP_MM) / lengthMm)
    return { x0: x - 0.3, x1: x + 0.3, y0: y - 0.3, y1: y + 0.3 }
  })
}

interface Try {
  readonly ring: Point
  readonly point: Point
}

const triesFor = ({ points }: Pointed): readonly Try[] =>
  DISTANCES_MM.flatMap((mm) =>
    points.flatMap((point) =>
      Array.from({ length: WAYS }, (_, way) => {
        const turn = (Math.PI * (2 * way + 1)) / WAYS
        return { point, ring: { x: point.x + mm * Math.cos(turn), y: point.y + mm * Math.sin(turn) } }
      }),
    ),
  )

const crossed = (boxes: readonly Box[], bodies: readonly Box[]): number =>
  boxes.filter((box) => bodies.some((body) => overlaps(box, body))).length

/** As wide as the words ask, with round ends. */
const ringMarks = (mark: string, { ring, point }: Try): Mark[] => {
  const straight = halfWidth(mark) - RADIUS_MM
  const outline = Array.from({ length: 24 }, (_, i) => {
    const turn = (Math.PI * (2 * i + 1)) / 24
    const side = Math.cos(turn) < 0 ? -straight : straight
    return { x: ring.x + side + RADIUS_MM * Math.cos(turn), y: ring.y + RADIUS_MM * Math.sin(turn) }
  })
  return [
    ruled(ring, point, 'dimension'),
    discMark(point, 0.5, 'dimension', 'post'),
    shaped(outline, 'outline', 'paper'),
    lettered(mark, ring, LETTER_MM, { anchor: 'middle' }),
  ]
}

/**
 * Marks in rings beside their members: off all members and words, with the shortest leader that crosses least. One that finds no
 * place at all is left out: its member stands in the table.
 */
export const rings = (
  marks: readonly Pointed[],
  bodies: readonly Box[],
  words: readonly Box[],
  within: Box,
): Mark[] => {
  const taken = [...words]
  return marks.flatMap((ringed) => {
    let best: { readonly tried: Try; readonly cost: number } | undefined
    for (const tried of triesFor(ringed)) {
      const reach = distance(tried.ring, tried.point)
      if (best && reach >= best.cost) break
      const box = ringBox(tried.ring, ringed.mark)
      if (!isInside(box, within) || [...taken, ...bodies].some((other) => overlaps(box, other))) continue
      const leader = leaderBoxes(tried.ring, tried.point)
      if (crossed(leader, taken) > 0) continue
      const cost = reach + CROSSING_MM * Math.max(0, crossed(leader, bodies) - 1)
      if (!best || cost < best.cost) best = { tried, cost }
    }
    if (!best) return []
    taken.push(ringBox(best.tried.ring, ringed.mark), ...leaderBoxes(best.tried.ring, best.tried.point))
    return ringMarks(ringed.mark, best.tried)
  })
}
