import { offset, turnHeading } from '../../geometry/motion'
import { inches } from '../../units/length'
import { MOST_RACKS } from './ends'
import { onFloor } from '../floor'
import { ahead } from '../footprint'
import { isFedInMiddle } from './feedSizes'
import { rowEnd, rowLengthMm } from './frame'
import type { RackRow } from './schema'

/** Two centrelines nearer than this are meant to be one, and two ends nearer than that to meet. */
const SAME_LINE_MM = inches(1)
const MEETING_MM = inches(12)

/** What may differ between two rows that are chained. */
const OWN_FIELDS: ReadonlySet<string> = new Set([
  'id',
  'name',
  'locked',
  'racks',
  'at',
  'takenOut',
  'riserSide',
  'waterFrom',
  'valve',
  'trimTurns',
])

/** Places for towers, hung or not. */
const towersOf = ({ racks, barsPerRack, lines }: RackRow): number => racks * barsPerRack * lines

/** The same racks on the same floor, told from the other end. */
const fromOtherEnd = (part: RackRow): RackRow => ({
  ...part,
  at: rowEnd(part),
  heading: turnHeading(part.heading, 2),
  fallsTo: part.fallsTo === 'end' ? 'start' : 'end',
  inlet: part.inlet === 'end' ? 'start' : 'end',
  riserSide: part.riserSide === 'left' ? 'right' : 'left',
  // A straight feed tells its rise from the inlet, a split one from the start.
  lateralRiseMm: isFedInMiddle(part) ? -part.lateralRiseMm + 0 : part.lateralRiseMm,
  takenOut: part.takenOut
    .map((tower) => towersOf(part) - 1 - tower)
    .filter((tower) => tower >= 0)
    .reverse(),
})

/** Lists are compared by what they hold. */
const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)

const isAlike = (a: RackRow, b: RackRow): boolean => {
  const other = new Map<string, unknown>(Object.entries(b))
  return Object.entries(a).every(([field, value]) => OWN_FIELDS.has(field) || isSame(other.get(field), value))
}

/** Towers taken out of the row further along come after all of the first one's. */
const takenOutOf = (first: RackRow, next: RackRow): number[] => {
  const towers = towersOf(first)
  return [
    ...first.takenOut.filter((tower) => tower < towers),
    ...next.takenOut.map((tower) => tower + towers),
  ]
}

/** Which end of `onto` the row stands against, if it does. */
const meetingEnd = (onto: RackRow, part: RackRow): 'start' | 'end' | undefined => {
  const aheadMm = ahead(onto.at, onto.heading, part.at)
  const asideMm = ahead(onto.at, turnHeading(onto.heading, 3), part.at)
  if (Math.abs(asideMm) > SAME_LINE_MM) return undefined
  if (Math.abs(aheadMm - rowLengthMm(onto)) <= MEETING_MM) return 'end'
  return Math.abs(aheadMm + rowLengthMm(part)) <= MEETING_MM ? 'start' : undefined
}

/**
 * One longer row in place of two that stand end to end and are built alike; undefined where they are not. `onto`
 * stays where it is, and the other row closes up to it.
 */
export const chainRows = (onto: RackRow, dropped: RackRow): RackRow | undefined => {
  const part = dropped.heading === onto.heading ? dropped : fromOtherEnd(dropped)
  const end = meetingEnd(onto, part)
  const racks = onto.racks + part.racks
  if (end === undefined || onto.locked || racks > MOST_RACKS || !isAlike(onto, part)) return undefined
  if (end === 'end') return { ...onto, racks, takenOut: takenOutOf(onto, part) }
  return {
    ...onto,
    racks,
    takenOut: takenOutOf(part, onto),
    at: onFloor(offset(onto.at, onto.heading, -rowLengthMm(part), 0)),
  }
}
