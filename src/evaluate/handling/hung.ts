import { spotAt, type Frame } from '../loads/frame'
import { isWorked } from '../../checks/rackSides'
import type { Bay } from '../../checks/context'
import type { BodyRole } from '../../model/built'

/** Looking from the row's start to its end. */
export type Side = 'left' | 'right'

/** Which way v grows out of the row on a side. */
export const outOf = (side: Side): 1 | -1 => (side === 'left' ? -1 : 1)

/** A line of towers: mm to the right of the row's centreline. */
export interface HungLine {
  readonly line: number
  readonly v: number
}

/** A long side of a row as a person meets it; mm to the right of the centreline. */
export interface RowSide {
  readonly side: Side
  /** Whether a person can stand along it. */
  readonly isOpen: boolean
  /** What sticks out most, leaves pushed aside. */
  readonly hardV: number
  /** Where ankles stand. */
  readonly standV: number
}

/** Lines that have a tower at all, from left to right. */
export const linesOf = ({ towers }: Frame): readonly HungLine[] =>
  [...new Map(towers.map(({ line, v }) => [line, { line, v }])).values()].sort((a, b) => a.v - b.v)

const HARD: ReadonlySet<BodyRole> = new Set<BodyRole>(['frame', 'foot', 'trough'])

/** How far timber, bars, gutters, foot plates and the bodies of towers stick out on a side, mm from the centreline. */
const hardOf = (frame: Frame, lines: readonly HungLine[], sign: 1 | -1): number => {
  const { built, axes, rack } = frame
  const bodies = built.bodies
    .filter(({ role }) => HARD.has(role))
    .flatMap(({ outline }) => outline.map(({ x, y }) => sign * spotAt(axes, { x, y, z: 0 }).v))
  const towers = lines.map(({ v }) => sign * v + rack.bodyMm / 2)
  return Math.max(...bodies, ...towers)
}

export const rowSide = (frame: Frame, lines: readonly HungLine[], side: Side, bay: Bay): RowSide => {
  const { built, rack } = frame
  const sign = outOf(side)
  const hardMm = hardOf(frame, lines, sign)
  return {
    side,
    isOpen: isWorked(built.part, side === 'left' ? rack.leftFace : rack.rightFace, bay),
    hardV: sign * hardMm,
    standV: sign * (hardMm + bay.settings.shinMm),
  }
}
