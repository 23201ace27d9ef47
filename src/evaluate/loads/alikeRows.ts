import type { RowStrength } from '../../model/strength'
import { placeOf, type Frame } from './frame'
import { isSameAssumed, rowStrength, worstSpot, type Assumed } from './rowStrength'
import { isSameShape, shapeOf, type RowShape } from './shape'

interface Known {
  readonly shape: RowShape
  readonly assumed: Assumed
  readonly strength: RowStrength
}

/** Shapes that are remembered, the latest first: more than any bay has, and few enough to look through. */
const KEPT = 64

let known: readonly Known[] = []

/** The same strength of another row, at its own place. */
const standing = ({ strength }: Known, frame: Frame): RowStrength => ({
  ...strength,
  part: frame.built.part,
  at: placeOf(frame.axes, worstSpot(strength.screens, frame)),
})

/** Step 5 of a row; rows of one shape are reckoned once, wherever they stand: an acre has a hundred rows, and few kinds of them. */
export const strengthOfFrame = (frame: Frame, assumed: Assumed): RowStrength => {
  const shape = shapeOf(frame)
  const found = known.find((each) => isSameAssumed(each.assumed, assumed) && isSameShape(each.shape, shape))
  if (found) return standing(found, frame)
  const strength = rowStrength(frame, assumed)
  known = [{ shape, assumed, strength }, ...known].slice(0, KEPT)
  return strength
}
