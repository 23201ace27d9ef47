import { offset, turnHeading, type Heading } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Handle } from '../../model/partKind'
import { onFloor } from '../floor'
import { ahead, within } from '../footprint'
import { OPENING_WIDTH, type Opening } from './schema'

/** The jambs, left and right of the way in, and where each lies from the middle. */
const jambs = [
  { id: 'left', quarterTurns: 1 },
  { id: 'right', quarterTurns: 3 },
] as const

const jambAt = (part: Opening, towards: Heading): Point => offset(part.at, towards, part.widthMm / 2, 0)

export const openingHandles = (part: Opening): readonly Handle[] =>
  jambs.map(({ id, quarterTurns }) => ({
    id,
    at: jambAt(part, turnHeading(part.heading, quarterTurns)),
    does: 'Change width',
  }))

/** One jamb stays, the other follows the pointer along the wall. */
export const dragOpening = (part: Opening, handle: string, to: Point): Opening => {
  const jamb = jambs.find(({ id }) => id === handle)
  if (!jamb) return part
  const towards = turnHeading(part.heading, jamb.quarterTurns)
  const fixed = jambAt(part, turnHeading(towards, 2))
  const widthMm = within(ahead(fixed, towards, to), OPENING_WIDTH)
  return { ...part, widthMm, at: onFloor(offset(fixed, towards, widthMm / 2, 0)) }
}
