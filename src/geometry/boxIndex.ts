import Flatbush from 'flatbush'
import type { Box } from './box'

/** Finds which of many boxes meet a box. */
export interface BoxIndex {
  /** Numbers, in the order built, ascending, of the boxes that share floor with `box` or touch it. */
  readonly search: (box: Box) => number[]
}

const EMPTY: BoxIndex = { search: () => [] }

/** An index over boxes, which do not change afterwards; without boxes it finds nothing. */
export const boxIndexOf = (boxes: readonly Box[]): BoxIndex => {
  if (boxes.length === 0) return EMPTY
  const tree = new Flatbush(boxes.length)
  for (const { x0, y0, x1, y1 } of boxes) tree.add(x0, y0, x1, y1)
  tree.finish()
  return { search: ({ x0, y0, x1, y1 }) => tree.search(x0, y0, x1, y1).sort((a, b) => a - b) }
}
