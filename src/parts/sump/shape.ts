import { offset } from '../../geometry/motion'
import { distance, type Point } from '../../geometry/point'
import { regular } from '../../geometry/polygon'
import type { Handle } from '../../model/partKind'
import { cornerHandles, dragCorner, footprintOutline, within, type Footprint } from '../footprint'
import { PIT_SIDE, type Sump } from './schema'

/** Sides of the polygon about a round pit: it is never wider than the pit by more than 1 % of the radius. */
const ROUND_SIDES = 24

/** The rectangle that holds the pit at its rim: of a round one, the square about its circle. */
export const rimOf = ({ at, heading, shape, lengthMm, widthMm }: Sump): Footprint => ({
  at,
  heading,
  lengthMm: shape === 'round' ? widthMm : lengthMm,
  widthMm,
})

/** The rectangle that holds it at its bottom, where pumps stand. */
export const bottomOf = (part: Sump): Footprint =>
  part.shape === 'sloped'
    ? { at: part.at, heading: part.heading, lengthMm: part.bottomLengthMm, widthMm: part.bottomWidthMm }
    : rimOf(part)

/** What is dug, seen from above, anticlockwise. */
export const outlineOf = (part: Sump): Point[] =>
  part.shape === 'round' ? regular(part.at, part.widthMm / 2, ROUND_SIDES) : footprintOutline(rimOf(part))

export const sumpHandles = (part: Sump): readonly Handle[] =>
  part.shape === 'round'
    ? [{ id: 'edge', at: offset(part.at, part.heading, part.widthMm / 2, 0), does: 'Change diameter' }]
    : cornerHandles(part)

/** Sides never lean in: a bottom is no wider than what is over it. */
const leaning = (part: Sump): Sump =>
  part.shape === 'sloped'
    ? {
        ...part,
        bottomLengthMm: Math.min(part.bottomLengthMm, part.lengthMm),
        bottomWidthMm: Math.min(part.bottomWidthMm, part.widthMm),
      }
    : part

/** A corner while the one across stays; of a round pit the edge, so that both sides move and its middle stays. */
export const dragSump = (part: Sump, handle: string, to: Point): Sump => {
  if (part.shape !== 'round') {
    const dragged = dragCorner(part, handle, to, PIT_SIDE)
    return dragged === part ? part : leaning(dragged)
  }
  return handle === 'edge' ? { ...part, widthMm: within(2 * distance(part.at, to), PIT_SIDE) } : part
}
