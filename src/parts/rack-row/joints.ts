import { inches } from '../../units/length'
import { numberOf, rowLengthMm } from './frame'
import type { Materials } from './materials'
import type { RackRow } from './schema'

/** One stick of rail, of both lines; u in mm. */
export interface RailRun {
  /** From 0 at the high end. */
  readonly rack: number
  readonly fromU: number
  readonly toU: number
  /** Of the bigger conduit. */
  readonly isBig: boolean
}

/** Odd racks, counted from 1 at the start. `rack` counts from 0 at the high end. */
const isOdd = ({ racks, fallsTo }: RackRow, rack: number): boolean =>
  numberOf(fallsTo === 'end', rack, racks) % 2 === 0

/** J3: odd racks are railed in the bigger conduit. */
export const isBigRack = (part: RackRow, rack: number): boolean => part.joint === 'J3' && isOdd(part, rack)

/** Where racks meet they share a riser pair; racks of J2 have a pair each, so that they come apart. */
export const sharesPairs = ({ joint }: RackRow): boolean => joint !== 'J2'

/** J5: rails of odd racks lie half a rail inside the risers' middles, those of even racks half a rail outside, and so side by side. */
export const railOutMm = (part: RackRow, rack: number, { rail }: Materials): number =>
  part.joint === 'J5' ? (isOdd(part, rack) ? -rail.odMm : rail.odMm) / 2 : 0

/** Past the riser's face the double wall goes on for an inch, so that it straddles the wood. Common practice, no source. */
const STRADDLE_MM = inches(1)

/** J3: how far the small stick pushes into the big one, mm; always enough to straddle the shared riser. */
const overlapMm = (part: RackRow, { lumber }: Materials): number =>
  Math.max(part.overlapMm, part.pastRiserMm + lumber.thickMm / 2 + STRADDLE_MM)

/** How far a rack's rail runs past the line between two racks, mm; negative where it stops short. */
const pastShared = (part: RackRow, materials: Materials, rack: number): number => {
  if (part.joint === 'J5') return part.lapMm / 2
  if (part.joint !== 'J3') return -part.railGapMm / 2
  return isBigRack(part, rack) ? part.pastRiserMm : overlapMm(part, materials) - part.pastRiserMm
}

/** What a tape finds of the stick that an end rail may come from, mm: of J3's two the shorter. */
const shortestStick = ({ joint }: RackRow, { rail, big, stickOf }: Materials): number =>
  joint === 'J3' ? Math.min(stickOf(rail).measuredMm, stickOf(big).measuredMm) : stickOf(rail).measuredMm

/**
 * How far the first and the last riser pair move inward, mm, so that an end rail comes out of one uncut stick
 * instead of being a little too long for it.
 */
export const endInset = (part: RackRow, materials: Materials): number => {
  const { racks, rackLengthMm, railEndMm } = part
  const stickMm = shortestStick(part, materials)
  if (racks === 1) return Math.max(0, (rackLengthMm + 2 * railEndMm - stickMm) / 2)
  const pastMm = Math.max(pastShared(part, materials, 0), pastShared(part, materials, racks - 1))
  return Math.max(0, rackLengthMm + pastMm + railEndMm - stickMm)
}

/** The rails of one line, from the high end. They end where they do however far the end pairs are moved in under them. */
export const railRuns = (part: RackRow, materials: Materials, insetMm: number): RailRun[] => {
  const { racks, rackLengthMm, railEndMm } = part
  return Array.from({ length: racks }, (_, rack) => {
    const pastMm = pastShared(part, materials, rack)
    return {
      rack,
      fromU: rack === 0 ? insetMm - railEndMm : rack * rackLengthMm - pastMm,
      toU: rack === racks - 1 ? rowLengthMm(part) - insetMm + railEndMm : (rack + 1) * rackLengthMm + pastMm,
      isBig: isBigRack(part, rack),
    }
  })
}

/** J1 and J2: a sleeve holds both rail ends and the gap between them. A dowel of J4 is as long inside them. */
export const sleeveLengthMm = ({ insertionMm, railGapMm }: RackRow): number => 2 * insertionMm + railGapMm

/** Room past the sleeve and a riser, so that it slides home. Common practice, no source. */
const SLIDE_MM = inches(1)

/** J2: from riser to riser across the gap between two racks, middle to middle, mm: what lets the sleeve slide home, and never over half a rack. */
export const rackGapMm = (part: RackRow, { lumber }: Materials): number =>
  sharesPairs(part)
    ? 0
    : Math.max(
        sleeveLengthMm(part) + lumber.thickMm + SLIDE_MM,
        Math.min(part.rackGapMm, part.rackLengthMm / 2),
      )

/** How far what goes in goes into the conduit that takes it at a joint, mm. */
export const insertedMm = (part: RackRow, materials: Materials): number =>
  part.joint === 'J3' ? overlapMm(part, materials) : part.insertionMm

/** How far from the line between two racks a bar would no longer lie on the rail that it is hung for, mm. */
export const jointHalfMm = (part: RackRow): number => {
  switch (part.joint) {
    case 'J1':
    case 'J2':
      return sleeveLengthMm(part) / 2
    case 'J3':
      return part.pastRiserMm
    case 'J4':
      return part.railGapMm / 2
    case 'J5':
      return part.lapMm / 2
  }
}
