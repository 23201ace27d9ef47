import { boxOf } from '../geometry/box'
import type { Point } from '../geometry/point'
import { middleOf, otherAxis, pointOn, shared, spanOf, type Axis, type Span } from './axis'
import type { Moving } from './snapMoving'
import type { Neighbour, SnapLeg, SnapScene } from './snapScene'

/** Why something holds at a place, in words, with the lines that show it. */
export interface Guide {
  readonly reason: string
  /** `line` lies on edges or centre lines that agree; `gap` is a distance across the floor. */
  readonly as: 'line' | 'gap'
  readonly lines: readonly (readonly [Point, Point])[]
}

/** One way to line up along an axis. */
export interface Candidate {
  readonly shiftMm: number
  readonly guide: () => Guide
}

/** A distance along the axis, and where across the floor it is shown. */
interface Gap {
  readonly from: number
  readonly to: number
  readonly aside: number
}

const gapGuide = (axis: Axis, reason: string, gaps: readonly Gap[]): Guide => ({
  reason,
  as: 'gap',
  lines: gaps.map(({ from, to, aside }) => [pointOn(axis, from, aside), pointOn(axis, to, aside)]),
})

/** A neighbour beside the moving thing along an axis: on its low side (-1, west or south) or its high side (1). */
interface Beside {
  readonly name: string
  /** A row or a wall: what makes an aisle all along, where a post only stands in one. */
  readonly isLong: boolean
  readonly side: -1 | 1
  /** The neighbour's face. */
  readonly faceMm: number
  /** The moving thing's own face. */
  readonly ownMm: number
  /** Middle of the floor that the two share. */
  readonly aside: number
}

const besideOf = (
  { name, box, isRow, isWall }: Neighbour,
  moving: Moving,
  axis: Axis,
): Beside | undefined => {
  const aside = shared(spanOf(moving.box, otherAxis(axis)), spanOf(box, otherAxis(axis)))
  if (!aside) return undefined
  const own = spanOf(moving.box, axis)
  const span = spanOf(box, axis)
  const beside = { name, isLong: isRow || isWall, aside: middleOf(aside) }
  return middleOf(span) <= middleOf(own)
    ? { ...beside, side: -1, faceMm: span.high, ownMm: own.low }
    : { ...beside, side: 1, faceMm: span.low, ownMm: own.high }
}

/** How far the moving thing is from what stands beside it, mm. */
const gapTo = ({ side, faceMm, ownMm }: Beside): number => side * (faceMm - ownMm)

const nearest = (all: readonly Beside[], side: Beside['side']): Beside | undefined =>
  all
    .filter((beside) => beside.side === side)
    .reduce<Beside | undefined>(
      (near, beside) => (near && gapTo(near) <= gapTo(beside) ? near : beside),
      undefined,
    )

/** What stands next to the moving thing on each side; what stands behind that makes no aisle with it. */
const nextTo = (moving: Moving, { neighbours, walls }: SnapScene, axis: Axis): Beside[] => {
  if (!moving.isAlongAisles) return []
  const all = [...neighbours, ...walls].flatMap((neighbour) =>
    neighbour.isAlongAisles ? (besideOf(neighbour, moving, axis) ?? []) : [],
  )
  return ([-1, 1] as const).flatMap((side) => nearest(all, side) ?? [])
}

/** Aisles of a width on purpose. */
const aisleCandidates = (beside: Beside, { widths, writer }: SnapScene, axis: Axis): Candidate[] =>
  widths.map(({ widthMm, words }) => {
    const toMm = beside.faceMm - beside.side * widthMm
    const reason = `${writer.onTape(widthMm)} ${words} to ${beside.name}`
    return {
      shiftMm: toMm - beside.ownMm,
      guide: () => gapGuide(axis, reason, [{ from: beside.faceMm, to: toMm, aside: beside.aside }]),
    }
  })

/** The same way on both sides. */
const equalCandidates = ([low, high]: readonly Beside[], { writer }: SnapScene, axis: Axis): Candidate[] => {
  if (!low?.isLong || !high?.isLong || gapTo(low) + gapTo(high) <= 0) return []
  const gapMm = (gapTo(low) + gapTo(high)) / 2
  const gaps = [low, high].map(({ faceMm, side, aside }) => ({
    from: faceMm,
    to: faceMm - side * gapMm,
    aside,
  }))
  return [
    {
      shiftMm: gapMm - gapTo(low),
      guide: () => gapGuide(axis, `same aisle both sides, ${writer.onTape(gapMm)}`, gaps),
    },
  ]
}

/** The line at `alongMm`, over both things. */
const lineGuide = (reason: string, axis: Axis, alongMm: number, a: Span, b: Span): Guide => ({
  reason,
  as: 'line',
  lines: [[pointOn(axis, alongMm, Math.min(a.low, b.low)), pointOn(axis, alongMm, Math.max(a.high, b.high))]],
})

/** Edges in line, then centre lines. */
const lineCandidates = ({ name, box }: Neighbour, moving: Moving, axis: Axis): Candidate[] => {
  const own = spanOf(moving.box, axis)
  const span = spanOf(box, axis)
  const across = otherAxis(axis)
  const align = (alongMm: number, ownMm: number, words: string): Candidate => ({
    shiftMm: alongMm - ownMm,
    guide: () =>
      lineGuide(`${words} ${name}`, axis, alongMm, spanOf(moving.box, across), spanOf(box, across)),
  })
  return [
    align(span.low, own.low, 'in line with'),
    align(span.high, own.high, 'in line with'),
    align(middleOf(span), middleOf(own), 'centred on'),
  ]
}

/** Against a wall that runs across the axis. */
const wallCandidates = ({ name, box }: Neighbour, moving: Moving, axis: Axis): Candidate[] => {
  const wall = spanOf(box, axis)
  const across = otherAxis(axis)
  if (wall.high > wall.low) return []
  const own = spanOf(moving.box, axis)
  return [own.low, own.high].map((ownMm) => ({
    shiftMm: wall.low - ownMm,
    guide: () =>
      lineGuide(`at ${name}`, axis, wall.low, spanOf(moving.box, across), spanOf(moving.box, across)),
  }))
}

/** All outlets right over a drain that runs across the axis. */
const outletCandidates = ({ name, from, to }: SnapLeg, { outlets }: Moving, axis: Axis): Candidate[] => {
  const across = otherAxis(axis)
  const run = spanOf(boxOf([from, to]), across)
  if (from[axis] !== to[axis]) return []
  const over = outlets.filter((outlet) => outlet[across] >= run.low && outlet[across] <= run.high)
  return over.slice(0, 1).map((outlet) => ({
    shiftMm: from[axis] - outlet[axis],
    guide: () => ({ reason: `outlets over ${name}`, as: 'line', lines: [[from, to]] }),
  }))
}

/** Every way to line up with what stands there; of equally near ones the first is meant. */
export const candidates = (moving: Moving, scene: SnapScene, axis: Axis): Candidate[] => {
  const beside = nextTo(moving, scene, axis)
  const alike = scene.neighbours.filter(({ isRow }) => isRow || !moving.isRow)
  return [
    ...scene.drains.flatMap((drain) => outletCandidates(drain, moving, axis)),
    ...beside.flatMap((one) => aisleCandidates(one, scene, axis)),
    ...equalCandidates(beside, scene, axis),
    ...alike.flatMap((neighbour) => lineCandidates(neighbour, moving, axis)),
    ...scene.walls.flatMap((wall) => wallCandidates(wall, moving, axis)),
  ]
}

const STRING_NAME = { x: 'the west wall string', y: 'the south wall string' } as const

/** A whole step from a wall string, for where nothing stands to line up with. */
export const stringCandidates = (
  { anchor }: Moving,
  { strings, stepMm, writer }: SnapScene,
  axis: Axis,
): Candidate[] => {
  if (!strings) return []
  const from = strings[axis]
  const offsetMm = Math.round((anchor[axis] - from) / stepMm) * stepMm
  const reason = `${writer.length(Math.abs(offsetMm))} ${offsetMm < 0 ? 'outside' : 'from'} ${STRING_NAME[axis]}`
  return [
    {
      shiftMm: from + offsetMm - anchor[axis],
      guide: () => gapGuide(axis, reason, [{ from, to: from + offsetMm, aside: anchor[otherAxis(axis)] }]),
    },
  ]
}
