import type { Place, Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import type { DiscsMark, Mark, PathMark, Wash } from '../../model/drawing'
import type { FeedEnd, FeedFacts } from '../../model/feedFacts'
import { inches } from '../../units/length'
import { flat, lineMark } from '../marks'
import type { Frame } from './frame'
import type { RackRow } from './schema'

/** Pipes and valves show where towers do; what is smaller from nearer, when it would be more than a blot. */
const PIPES_NEAR_MM = 60
const ENDS_NEAR_MM = 40
const DISCS_NEAR_MM = 30

/** Half sizes of the symbols on the floor. */
const VALVE_MM = { along: inches(5), across: inches(3) }
const FLUSH_VALVE_MM = { along: inches(3), across: inches(2) }
const CAP_MM = inches(3)
const TEE_RADIUS_MM = inches(1.5)
const SIGHT_TUBE_RADIUS_MM = inches(1.75)

/** What stands past the end of a lateral, and how far. */
const FLUSH_PAST_MM = inches(3)
const SIGHT_TUBE_ASIDE_MM = inches(4)

/** Any two points to one side and to the other of a place, along the row and across it. */
const moved = (at: Point, { along, right }: Frame, alongMm: number, rightMm: number): Point => ({
  x: at.x + along.x * alongMm + right.x * rightMm,
  y: at.y + along.y * alongMm + right.y * rightMm,
})

/** Bow-tie of ISO 10628: two triangles tip to tip, filled where the valve is shut. */
const bowTie = (
  at: Point,
  frame: Frame,
  half: { readonly along: number; readonly across: number },
  wash: Wash,
): PathMark => {
  const corner = (end: 1 | -1, side: 1 | -1) => moved(at, frame, end * half.along, side * half.across)
  const corners = [corner(-1, -1), corner(1, 1), corner(1, -1), corner(-1, 1)]
  return { as: 'path', pen: 'water', wash, points: flat(corners), closed: true, nearMm: PIPES_NEAR_MM }
}

const placesOf = ({ joints }: FeedFacts, indexes: readonly number[]): Place[] =>
  indexes.flatMap((joint) => joints[joint] ?? [])

/** Each lateral in one line from end to end; a ring is closed by its header and its cross pipe. */
const lateralLines = (feed: FeedFacts): Mark[] =>
  feed.laterals.flatMap(({ joints, alongMm }) => {
    // Only the turns of the line: where it begins, where it comes back, where it ends.
    const turns = joints.filter((_, i) => {
      const [before, here, after] = [alongMm[i - 1], alongMm[i], alongMm[i + 1]]
      if (before === undefined || here === undefined || after === undefined) return true
      return (after - here) * (here - before) <= 0
    })
    return [{ ...lineMark(placesOf(feed, turns), 'water'), nearMm: PIPES_NEAR_MM }]
  })

/** Header, sub-headers and cross pipe; microtubes are too many and too thin for a plan. */
const pipeLines = ({ tubes }: Built): Mark[] =>
  tubes
    .filter(({ role }) => role === 'header' || role === 'sub-header')
    .map(({ path }) => ({ ...lineMark(path, 'water'), nearMm: PIPES_NEAR_MM }))

const discs = (places: readonly Point[], radiusMm: number, wash: Wash): DiscsMark[] =>
  places.length === 0
    ? []
    : [
        {
          as: 'discs',
          pen: 'water',
          wash,
          nearMm: DISCS_NEAR_MM,
          discs: Float64Array.from(places.flatMap(({ x, y }) => [x, y, radiusMm])),
        },
      ]

/** Where water parts: a tee in the middle of a lateral, or at its quarter points. */
const teePlaces = (feed: FeedFacts): Place[] =>
  feed.kind === 'centre-split' || feed.kind === 'double-split'
    ? feed.laterals.flatMap(({ fedAt }) => placesOf(feed, fedAt))
    : []

/** Whether the end of a lateral is the one at the row's high end, where u is least: what stands past it stands the other way. */
const pastSign = (at: Point, { origin, along }: Frame, halfMm: number): 1 | -1 =>
  (at.x - origin.x) * along.x + (at.y - origin.y) * along.y > halfMm ? 1 : -1

const endSymbol = (end: FeedEnd, at: Point, frame: Frame, past: 1 | -1): Mark[] => {
  if (end.flush === 'none') return []
  const out = moved(at, frame, past * FLUSH_PAST_MM, 0)
  const pipe = lineMark([at, out], 'water')
  const stop =
    end.flush === 'valve'
      ? bowTie(moved(out, frame, past * FLUSH_VALVE_MM.along, 0), frame, FLUSH_VALVE_MM, 'water')
      : lineMark([moved(out, frame, 0, -CAP_MM), moved(out, frame, 0, CAP_MM)], 'water')
  return [pipe, stop].map((mark) => ({ ...mark, nearMm: ENDS_NEAR_MM }))
}

/** Caps, flush valves and sight tubes at the ends of the laterals. */
const endMarks = (feed: FeedFacts, frame: Frame, halfMm: number): Mark[] => {
  const ends = feed.laterals.flatMap((lateral) => lateral.ends)
  const placed = ends.flatMap((end) => placesOf(feed, [end.joint]).map((at) => ({ end, at })))
  const tubes = placed
    .filter(({ end }) => end.hasSightTube)
    .map(({ at }) => moved(at, frame, -pastSign(at, frame, halfMm) * SIGHT_TUBE_ASIDE_MM, 0))
  return [
    ...placed.flatMap(({ end, at }) => endSymbol(end, at, frame, pastSign(at, frame, halfMm))),
    ...discs(tubes, SIGHT_TUBE_RADIUS_MM, 'paper'),
  ]
}

/** The row's water from above: laterals, header, tees, the valve set, and what stands at the ends. */
export const feedMarks = (part: RackRow, built: Built, frame: Frame): Mark[] => {
  const { feed } = built
  if (!feed) return []
  const [inlet] = feed.joints
  return [
    ...lateralLines(feed),
    ...pipeLines(built),
    ...discs(teePlaces(feed), TEE_RADIUS_MM, 'water'),
    ...endMarks(feed, frame, (part.racks * part.rackLengthMm) / 2),
    ...(inlet && feed.valves ? [bowTie(inlet, frame, VALVE_MM, feed.valves.isOpen ? 'paper' : 'water')] : []),
    ...(inlet && !feed.valves ? discs([inlet], TEE_RADIUS_MM, 'water') : []),
  ]
}
