import { offset, turnHeading } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Handle } from '../../model/partKind'
import { onFloor } from '../floor'
import { ahead, within } from '../footprint'
import { runOf } from './derive'
import { TROUGH_LENGTH, type Trough } from './schema'

const lowEnd = (part: Trough): Point => offset(part.at, part.heading, runOf(part), 0)

export const troughHandles = (part: Trough): readonly Handle[] => [
  { id: 'high', at: part.at, does: 'Move the high end' },
  { id: 'low', at: lowEnd(part), does: 'Move the low end' },
]

/** Length of a trough of this fall that reaches so far over the floor, mm. */
const lengthOver = (part: Trough, runMm: number): number =>
  within((runMm * part.lengthMm) / runOf(part), TROUGH_LENGTH)

/** One end stays, the other follows the pointer along the trough. */
export const dragTrough = (part: Trough, handle: string, to: Point): Trough => {
  const { at, heading } = part
  if (handle === 'low') return { ...part, lengthMm: lengthOver(part, ahead(at, heading, to)) }
  if (handle !== 'high') return part
  const low = lowEnd(part)
  const uphill = turnHeading(heading, 2)
  const longer = { ...part, lengthMm: lengthOver(part, ahead(low, uphill, to)) }
  return { ...longer, at: onFloor(offset(low, uphill, runOf(longer), 0)) }
}
