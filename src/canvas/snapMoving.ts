import { joined, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Built } from '../model/built'
import { isAlongAisles, standBoxOf } from './standing'

/** What is moved, where it would be without snapping. */
export interface Moving {
  /** Of all its parts together, leaf to leaf. */
  readonly box: Box
  /** The place that the crew measures from the wall strings. */
  readonly anchor: Point
  readonly isAlongAisles: boolean
  /** Rows line up with rows; other things with anything. */
  readonly isRow: boolean
  /** Where its troughs let their water out. */
  readonly outlets: readonly Point[]
}

/** A single place, such as the hook of a tape. */
export const movingPoint = (at: Point): Moving => ({
  box: { x0: at.x, y0: at.y, x1: at.x, y1: at.y },
  anchor: at,
  isAlongAisles: false,
  isRow: false,
  outlets: [],
})

/** Parts that are moved together; undefined where nothing of them stands on the floor. */
export const movingOf = (built: readonly Built[], anchor: Point | undefined): Moving | undefined => {
  const boxes = built.flatMap((b) => standBoxOf(b, null) ?? [])
  if (!anchor || boxes.length === 0) return undefined
  return {
    box: boxes.reduce(joined),
    anchor,
    isAlongAisles: built.some(isAlongAisles),
    isRow: built.some(({ rack }) => rack),
    outlets: built.flatMap(({ mouths }) =>
      mouths.filter(({ role }) => role === 'trough-outlet').map(({ at }) => at),
    ),
  }
}

export const movedBy = (moving: Moving, dx: number, dy: number): Moving => {
  const { box, anchor, outlets } = moving
  const by = ({ x, y }: Point): Point => ({ x: x + dx, y: y + dy })
  return {
    ...moving,
    box: { x0: box.x0 + dx, y0: box.y0 + dy, x1: box.x1 + dx, y1: box.y1 + dy },
    anchor: by(anchor),
    outlets: outlets.map(by),
  }
}
