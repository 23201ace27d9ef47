import type { Box } from '../../geometry/box'
import type { Room } from '../pour'

/** A way to share the drawing room of a sheet between the plan and words. */
export interface Aside {
  /** What the plan keeps. */
  readonly drawing: Box
  /** Columns of words. */
  readonly spare: readonly Room[]
}

/** Words in a narrower column break at every other word; in a wider one the eye loses the line. */
const NARROWEST_MM = 46
const WIDEST_MM = 80
const LEAST_HEIGHT_MM = 20
const INSET_MM = 3

interface Size {
  readonly widthMm: number
  readonly heightMm: number
}

const columnsIn = (box: Box, count: number): Room[] => {
  const stepMm = (box.x1 - box.x0) / count
  return Array.from({ length: count }, (_, i) => ({
    left: box.x0 + i * stepMm + INSET_MM,
    top: box.y1 - INSET_MM,
    widthMm: stepMm - 2 * INSET_MM,
    heightMm: box.y1 - box.y0 - 2 * INSET_MM,
  }))
}

/** The plan to the west, words to its east: in one column, two and so on. */
const eastward = (drawing: Box, spareMm: number): Aside[] => {
  const most = Math.floor(spareMm / NARROWEST_MM)
  return Array.from({ length: Math.max(0, most) }, (_, i) => {
    const split = drawing.x1 - Math.min(spareMm, (i + 1) * WIDEST_MM)
    return { drawing: { ...drawing, x1: split }, spare: columnsIn({ ...drawing, x0: split }, i + 1) }
  })
}

/** The plan to the north, words to its south. */
const southward = (drawing: Box, spareMm: number): Aside[] => {
  if (spareMm < LEAST_HEIGHT_MM) return []
  const count = Math.max(1, Math.round((drawing.x1 - drawing.x0) / WIDEST_MM))
  const split = drawing.y0 + spareMm
  return [{ drawing: { ...drawing, y0: split }, spare: columnsIn({ ...drawing, y1: split }, count) }]
}

/** All ways to set a plan of this size aside in its room, mm of paper, the one that takes least first. */
export const asides = (drawing: Box, plan: Size): Aside[] => [
  ...eastward(drawing, drawing.x1 - drawing.x0 - plan.widthMm),
  ...southward(drawing, drawing.y1 - drawing.y0 - plan.heightMm),
]
