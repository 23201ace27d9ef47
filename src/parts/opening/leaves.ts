import { offset } from '../../geometry/motion'
import type { Point } from '../../geometry/point'
import type { Opening } from './schema'

/** One door leaf: where it hangs and the way its edge sweeps, closed to open. All mm on the floor. */
export interface Leaf {
  readonly hinge: Point
  readonly sweep: readonly Point[]
  /** The quarter disc that it passes over, anticlockwise. */
  readonly swept: readonly Point[]
}

/** Steps of the arc: its chords run within 1/1000 of the leaf's width inside it. */
const STEPS = 24

/** A leaf hung on the jamb to the left (-1) or to the right (1) of the way in. */
const leafOn = (part: Opening, side: -1 | 1, widthMm: number): Leaf => {
  const hinge = offset(part.at, part.heading, 0, (side * part.widthMm) / 2)
  const inward = part.swing === 'in' ? 1 : -1
  const sweep = Array.from({ length: STEPS + 1 }, (_, step) => {
    const angle = ((Math.PI / 2) * step) / STEPS
    return offset(hinge, part.heading, inward * widthMm * Math.sin(angle), -side * widthMm * Math.cos(angle))
  })
  return { hinge, sweep, swept: [hinge, ...(side * inward > 0 ? sweep.toReversed() : sweep)] }
}

/** Width of each leaf, mm; 0 without one. */
export const leafWidth = ({ leaves, widthMm }: Opening): number => {
  switch (leaves) {
    case 'none':
      return 0
    case 'single':
      return widthMm
    case 'double':
      return widthMm / 2
  }
}

/** Who looks from inside faces the way out, so that their left is the right of the way in. */
export const leavesOf = (part: Opening): readonly Leaf[] => {
  const widthMm = leafWidth(part)
  switch (part.leaves) {
    case 'none':
      return []
    case 'single':
      return [leafOn(part, part.hinge === 'left' ? 1 : -1, widthMm)]
    case 'double':
      return [leafOn(part, 1, widthMm), leafOn(part, -1, widthMm)]
  }
}
