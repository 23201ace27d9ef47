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

/** Half as wide as a ring round a mark is, mm of paper. */
export const ringHalf = (mark: string, radiusMm: number = RADIUS_MM): number =>
  Math.max(radiusMm, textWidth(mark, LETTER_MM) / 2 + 1)

const ringBox = ({ x, y }: Point, mark: string, radiusMm: number): Box => {
  const half = ringHalf(mark, radiusMm) + AIR_MM
  const tall = radiusMm + AIR_MM
  return { x0: x - half, x1: x + half, y0: y - tall, y1: y + tall }
}

/** Small boxes along the leader, from its ring to where it points. */
const leaderBoxes = ({ ring, point }: Try, radiusMm: number): Box[] => {
  const lengthMm = distance(ring, point)
  const steps = Math.max(1, Math.floor((lengthMm - radiusMm) / LEADER_STEP_MM))
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
const ringMarks = ({ mark, ring, point }: Ringed): Mark[] => {
  const straight = ringHalf(mark) - RADIUS_MM
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

/** A mark in a ring, and the place on its member that its leader points at; mm of paper. */
export interface Ringed extends Try {
  readonly mark: string
}

const placed = (
  { mark, points }: Pointed,
  taken: readonly Box[],
  bodies: readonly Box[],
  within: Box,
  radiusMm: number,
): Ringed | undefined => {
  let best: { readonly tried: Try; readonly cost: number } | undefined
  for (const tried of triesFor({ mark, points })) {
    const reach = distance(tried.ring, tried.point)
    if (best && reach >= best.cost) break
    const box = ringBox(tried.ring, mark, radiusMm)
    if (!isInside(box, within) || [...taken, ...bodies].some((other) => overlaps(box, other))) continue
    const leader = leaderBoxes(tried, radiusMm)
    if (crossed(leader, taken) > 0) continue
    const cost = reach + CROSSING_MM * Math.max(0, crossed(leader, bodies) - 1)
    if (!best || cost < best.cost) best = { tried, cost }
  }
  return best && { mark, ...best.tried }
}

/**
 * Where marks stand in rings beside their members: off all members and words, with the shortest leader that crosses least. One that
 * finds no place at all is left out: its member stands in the table.
 */
export const ringPlaces = (
  marks: readonly Pointed[],
  bodies: readonly Box[],
  words: readonly Box[],
  within: Box,
  radiusMm: number = RADIUS_MM,
): readonly Ringed[] => {
  const taken = [...words]
  return marks.flatMap((pointed) => {
    const ringed = placed(pointed, taken, bodies, within, radiusMm)
    if (!ringed) return []
    taken.push(ringBox(ringed.ring, ringed.mark, radiusMm), ...leaderBoxes(ringed, radiusMm))
    return [ringed]
  })
}

/** The same, drawn. */
export const rings = (
  marks: readonly Pointed[],
  bodies: readonly Box[],
  words: readonly Box[],
  within: Box,
): Mark[] => ringPlaces(marks, bodies, words, within).flatMap(ringMarks)
