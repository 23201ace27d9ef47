import type { FrameStick } from '../../../../evaluate/loads/frame'
import type { Mark } from '../../../../model/drawing'
import { discMark } from '../../../../parts/marks'
import { type Laid, onSheet, type View } from '../../../../sheets/assembly/shapes'
import { ruled } from '../../../../sheets/ink'

/** A smaller hole is a smear, mm of glass. */
const LEAST_MM = 0.8

/** The lines of a hole's middle reach so many radii out. */
const CROSS = 1.7

interface HoleAt {
  readonly x: number
  readonly z: number
  readonly radiusMm: number
  /** Half as thick as the riser is where it goes through. */
  readonly halfMm: number
}

const holesOf = (risers: readonly FrameStick[], view: View): readonly HoleAt[] =>
  risers.flatMap(({ from, stick }) =>
    stick.holes.map(({ centreMm, diameterMm }) => ({
      x: view.across(from),
      z: from.z + centreMm,
      radiusMm: diameterMm / 2,
      halfMm: stick.widthMm / 2,
    })),
  )

/** From the end a hole is round, with its middle; from the side its edges are hidden in the wood: ISO 128-2, dashed. */
export const holeMarks = (risers: readonly FrameStick[], view: View, laid: Laid): readonly Mark[] => {
  const at = (x: number, y: number) => onSheet(laid, { x, y })
  return holesOf(risers, view)
    .filter(({ radiusMm }) => 2 * radiusMm * laid.scale >= LEAST_MM)
    .flatMap(({ x, z, radiusMm, halfMm }) => {
      if (view.looks === 'across')
        return [z - radiusMm, z + radiusMm].map((edge) =>
          ruled(at(x - halfMm, edge), at(x + halfMm, edge), 'hidden'),
        )
      const out = CROSS * radiusMm
      return [
        discMark(at(x, z), radiusMm * laid.scale, 'outline', 'none'),
        ruled(at(x - out, z), at(x + out, z), 'dimension'),
        ruled(at(x, z - out), at(x, z + out), 'dimension'),
      ]
    })
}
