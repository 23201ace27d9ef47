import type { Box } from '../geometry/box'
import type { Mark } from '../model/drawing'

/** A mark with an extent on the floor; words and dimensions have theirs on paper. */
export type ShapeMark = Extract<Mark, { as: 'boxes' | 'discs' | 'path' }>

export const isShape = (mark: Mark): mark is ShapeMark =>
  mark.as === 'boxes' || mark.as === 'discs' || mark.as === 'path'

/** Bounding box of a mark, its pen's width left out, mm; one of infinities for a mark of nothing. */
export const markReach = (mark: ShapeMark): Box => {
  const reach = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity }
  const take = (x: number, y: number, by: number) => {
    reach.x0 = Math.min(reach.x0, x - by)
    reach.y0 = Math.min(reach.y0, y - by)
    reach.x1 = Math.max(reach.x1, x + by)
    reach.y1 = Math.max(reach.y1, y + by)
  }
  if (mark.as === 'discs')
    for (let i = 0; i + 2 < mark.discs.length; i += 3)
      take(mark.discs[i] ?? 0, mark.discs[i + 1] ?? 0, mark.discs[i + 2] ?? 0)
  else {
    const flat = mark.as === 'boxes' ? mark.boxes : mark.points
    for (let i = 0; i + 1 < flat.length; i += 2) take(flat[i] ?? 0, flat[i + 1] ?? 0, 0)
  }
  return reach
}
