import { offset } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Handle } from '../../model/partKind'
import { onFloor } from '../floor'
import { ahead } from '../footprint'
import { rowEnd, rowLengthMm } from './frame'
import type { RackRow } from './schema'

export const MOST_RACKS = 20

type End = 'start' | 'end'

const isEnd = (handle: string): handle is End => handle === 'start' || handle === 'end'

export const rowHandles = (part: RackRow): readonly Handle[] => [
  { id: 'start', at: part.at, does: 'Add or take away racks at the start' },
  { id: 'end', at: rowEnd(part), does: 'Add or take away racks at the end' },
]

/** How many whole racks come nearest to a length, mm. */
const racksIn = (lengthMm: number, { rackLengthMm }: RackRow): number =>
  Math.min(Math.max(Math.round(lengthMm / rackLengthMm), 1), MOST_RACKS)

/** Towers taken out keep their places on the floor: stations are counted from the start, which may have moved. */
const restationed = (part: RackRow, racks: number, moved: End): number[] => {
  const towersARack = part.barsPerRack * part.lines
  const shift = moved === 'start' ? (racks - part.racks) * towersARack : 0
  return part.takenOut
    .map((tower) => tower + shift)
    .filter((tower) => tower >= 0 && tower < racks * towersARack)
}

/** The row with one end dragged to a place, rack by rack, while the other end stays. */
export const dragRow = (part: RackRow, handle: string, to: Point): RackRow => {
  if (!isEnd(handle)) return part
  const toMm = ahead(part.at, part.heading, to)
  const lengthMm = rowLengthMm(part)
  const racks = racksIn(handle === 'end' ? toMm : lengthMm - toMm, part)
  if (racks === part.racks) return part
  const longer = { ...part, racks, takenOut: restationed(part, racks, handle) }
  if (handle === 'end') return longer
  return { ...longer, at: onFloor(offset(rowEnd(part), part.heading, -rowLengthMm(longer), 0)) }
}
