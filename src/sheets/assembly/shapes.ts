import { type Box, boxOf, holds } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Mark, Pen, Wash } from '../../model/drawing'
import { discMark } from '../../parts/marks'
import { shaped } from '../ink'
import type { RowPlace } from '../rowAxes'
import type { Member } from './members'

/** From which side a rack is looked at. */
export interface View {
  /** Across the drawing, to the right. */
  readonly across: (at: RowPlace) => number
  /** Towards the reader. */
  readonly near: (at: RowPlace) => number
  readonly looks: 'across' | 'along'
}

/** From the right side looking downhill: the high end stands at the left. */
export const FROM_SIDE: View = { across: ({ u }) => u, near: ({ v }) => v, looks: 'across' }

/** From the high end, looking downhill. */
export const FROM_HIGH_END: View = { across: ({ v }) => v, near: ({ u }) => -u, looks: 'along' }

/** A member as it is seen, mm of the rack. */
export type Seen =
  | { readonly as: 'disc'; readonly at: Point; readonly radiusMm: number }
  | { readonly as: 'shape'; readonly corners: readonly Point[] }

/** Less than this is no way to the side, mm. */
const STRAIGHT_MM = 1

const boxAt = ({ x, y }: Point, halfX: number, halfY: number): Point[] => [
  { x: x - halfX, y: y - halfY },
  { x: x + halfX, y: y - halfY },
  { x: x + halfX, y: y + halfY },
  { x: x - halfX, y: y + halfY },
]

const isRound = ({ stick }: Member): boolean => stick.stock.startsWith('conduit')

/** Across its own length, as wide as it is seen; mm. */
const breadth = ({ stick, from, to }: Member, { looks }: View, isUpright: boolean): number => {
  if (!isUpright) return stick.heightMm
  // Risers are laid out by their width along the row and their height across it; any other upright is a brace on its edge.
  const isRiser = Math.hypot(to.u - from.u, to.v - from.v) < STRAIGHT_MM
  return isRiser && looks === 'along' ? stick.heightMm : stick.widthMm
}

export const seenAs = (member: Member, view: View): Seen => {
  const a = { x: view.across(member.from), y: member.from.z }
  const b = { x: view.across(member.to), y: member.to.z }
  const lengthMm = Math.hypot(b.x - a.x, b.y - a.y)
  if (lengthMm < STRAIGHT_MM) {
    const { widthMm, heightMm } = member.stick
    return isRound(member)
      ? { as: 'disc', at: a, radiusMm: widthMm / 2 }
      : { as: 'shape', corners: boxAt(a, widthMm / 2, heightMm / 2) }
  }
  const halfMm = breadth(member, view, Math.abs(b.x - a.x) < STRAIGHT_MM) / 2
  const aside = { x: (-(b.y - a.y) / lengthMm) * halfMm, y: ((b.x - a.x) / lengthMm) * halfMm }
  return {
    as: 'shape',
    corners: [
      { x: a.x - aside.x, y: a.y - aside.y },
      { x: b.x - aside.x, y: b.y - aside.y },
      { x: b.x + aside.x, y: b.y + aside.y },
      { x: a.x + aside.x, y: a.y + aside.y },
    ],
  }
}

/** Where a rack lies on the paper: paper = rack * scale + shift, mm. */
export interface Laid {
  readonly scale: number
  readonly x: number
  readonly y: number
}

export const onSheet = ({ scale, x, y }: Laid, p: Point): Point => ({
  x: p.x * scale + x,
  y: p.y * scale + y,
})

const inkOf = (member: Member): { pen: Pen; wash: Wash } =>
  isRound(member) ? { pen: 'steel', wash: 'steel' } : { pen: 'timber', wash: 'timber' }

export const seenMark = (seen: Seen, laid: Laid, pen: Pen, wash: Wash): Mark =>
  seen.as === 'disc'
    ? discMark(onSheet(laid, seen.at), seen.radiusMm * laid.scale, pen, wash)
    : shaped(
        seen.corners.map((p) => onSheet(laid, p)),
        pen,
        wash,
      )

/** From the furthest to the nearest, so that what stands in front hides what is behind. */
const fromBehind = (members: readonly Member[], { near }: View): readonly Member[] => {
  const nearest = ({ from, to }: Member) => Math.max(near(from), near(to))
  return members.toSorted((a, b) => nearest(a) - nearest(b))
}

export const memberMarks = (members: readonly Member[], view: View, laid: Laid): Mark[] =>
  fromBehind(members, view).map((member) => {
    const { pen, wash } = inkOf(member)
    return seenMark(seenAs(member, view), laid, pen, wash)
  })

/** So many boxes along a leaning member cover it closely. */
const SLICES = 16

/** What a member covers on the paper, mm. */
export const coverOf = (member: Member, view: View, laid: Laid): Box[] => {
  const seen = seenAs(member, view)
  if (seen.as === 'disc') {
    const { x, y } = onSheet(laid, seen.at)
    return [boxOf(boxAt({ x, y }, seen.radiusMm * laid.scale, seen.radiusMm * laid.scale))]
  }
  const corners = seen.corners.map((p) => onSheet(laid, p))
  const [a, b, c, d] = corners
  const leans = a && b && Math.abs(a.x - b.x) > 0.1 && Math.abs(a.y - b.y) > 0.1
  if (!leans || !c || !d) return [boxOf(corners)]
  const between = (p: Point, q: Point, t: number) => ({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t })
  return Array.from({ length: SLICES }, (_, i) =>
    boxOf([i, i + 1].flatMap((at) => [between(a, b, at / SLICES), between(d, c, at / SLICES)])),
  )
}

/** Along a member, those in its middle first. */
const SHARES = [0.5, 0.28, 0.72, 0.12, 0.88]

export interface Pointed {
  readonly mark: string
  readonly points: readonly Point[]
}

/**
 * Where each mark can be pointed at on the paper: places on its members that no nearer member hides, those in the middle of the
 * drawing first; none where all of them are hidden.
 */
export const pointedAt = (
  members: readonly Member[],
  view: View,
  laid: Laid,
  middle: number,
): readonly Pointed[] => {
  const points = new Map<string, Point[]>()
  let nearer: Box[] = []
  for (const member of fromBehind(members, view).toReversed()) {
    const { from, to, stick } = member
    const seen = SHARES.map((t) =>
      onSheet(laid, {
        x: view.across(from) + (view.across(to) - view.across(from)) * t,
        y: from.z + (to.z - from.z) * t,
      }),
    ).filter((p) => !nearer.some((box) => holds(box, p)))
    points.set(stick.mark, [...(points.get(stick.mark) ?? []), ...seen])
    nearer = [...nearer, ...coverOf(member, view, laid)]
  }
  const x = laid.x + middle * laid.scale
  return [...points].map(([mark, all]) => ({
    mark,
    points: all.toSorted((a, b) => Math.abs(a.x - x) - Math.abs(b.x - x)).slice(0, MOST_POINTS),
  }))
}

/** More would not find a better place. */
const MOST_POINTS = 12
