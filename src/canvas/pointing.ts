import type { Point } from '../geometry/point'
import { distance, between } from '../geometry/point'
import type { Planner } from '../store/planner'
import { panned, toFloor, zoomedAt, type Size, type View } from '../store/view'
import type { Gestures } from './gestures'
import type { Pointer, Tool } from './tools/tool'

/** What of a pointer event of the page is needed; a test makes one without a page. */
export interface PagePointer {
  readonly pointerId: number
  readonly pointerType: string
  /** On the canvas, px. */
  readonly px: Point
  readonly shift: boolean
  readonly ctrl: boolean
  readonly alt: boolean
  /** When it happened, ms of any clock. */
  readonly atMs: number
}

/** Two presses nearer than this in time and place are a double click. */
const DOUBLE_MS = 400
const DOUBLE_PX = 8
/** A finger comes down less surely than a mouse. */
const DOUBLE_TOUCH_PX = 28

/** Fingers on the canvas by the pointer's number. */
type Fingers = Map<number, Point>

const twoOf = (fingers: Fingers): readonly [Point, Point] | undefined => {
  const [a, b] = fingers.values()
  return a && b && [a, b]
}

/** The view that keeps the floor under both fingers where it is. */
const pinched = (view: View, before: readonly [Point, Point], after: readonly [Point, Point]): View => {
  const from = between(...before, 0.5)
  const to = between(...after, 0.5)
  const factor = distance(...after) / Math.max(1, distance(...before))
  return zoomedAt(panned(view, to.x - from.x, to.y - from.y), to, factor)
}

const within = (px: number, mostPx: number): number => Math.min(Math.max(px, 0), mostPx)

/** A place that a captured pointer has left the paper by, at the paper's edge: what is carried stays in sight. */
const onPaper = ({ x, y }: Point, { width, height }: Size): Point => ({
  x: within(x, width),
  y: within(y, height),
})

/** Turns pointers of the page into pointers on the floor: double clicks, a second finger that pinches. */
export interface Pointing {
  readonly press: (from: PagePointer, over?: Tool) => void
  readonly move: (from: PagePointer) => void
  readonly release: (from: PagePointer) => void
  /** A finger that the page took away, or a pointer that left. */
  readonly lose: (pointerId: number) => void
  readonly pointerOf: (from: PagePointer, clicks?: number) => Pointer
}

export const createPointing = (planner: Planner, gestures: Gestures): Pointing => {
  const fingers: Fingers = new Map()
  let last = { atMs: -Infinity, px: { x: 0, y: 0 } }
  /** Until all fingers are up again, one left over from a pinch draws nothing. */
  let isPinching = false

  const pointerOf = ({ px, shift, ctrl, alt, pointerType }: PagePointer, clicks = 1): Pointer => {
    const { view, size } = planner.store.getState()
    const at = toFloor(view, onPaper(px, size))
    return { at, px, shift, alt, isFree: ctrl, isTouch: pointerType === 'touch', clicks }
  }

  const clicksOf = ({ atMs, px, pointerType }: PagePointer): number => {
    const withinPx = pointerType === 'touch' ? DOUBLE_TOUCH_PX : DOUBLE_PX
    const isSecond = atMs - last.atMs < DOUBLE_MS && distance(px, last.px) < withinPx
    last = isSecond ? { atMs: -Infinity, px } : { atMs, px }
    return isSecond ? 2 : 1
  }

  const pinch = (from: PagePointer, before: readonly [Point, Point]) => {
    fingers.set(from.pointerId, from.px)
    const after = twoOf(fingers)
    if (after) planner.set({ view: pinched(planner.store.getState().view, before, after) })
  }

  const lift = (pointerId: number) => {
    fingers.delete(pointerId)
    if (fingers.size === 0) isPinching = false
  }

  return {
    pointerOf,
    press: (from, over) => {
      if (from.pointerType === 'touch') fingers.set(from.pointerId, from.px)
      if (fingers.size > 1) {
        isPinching = true
        gestures.cancel()
      } else gestures.press(pointerOf(from, clicksOf(from)), over)
    },
    move: (from) => {
      const before = twoOf(fingers)
      if (before) pinch(from, before)
      else if (!isPinching) {
        if (fingers.has(from.pointerId)) fingers.set(from.pointerId, from.px)
        const pointer = pointerOf(from)
        gestures.move(pointer)
        planner.set({ pointer: pointer.at })
      }
    },
    release: (from) => {
      const wasPinching = isPinching
      lift(from.pointerId)
      if (!wasPinching) gestures.release(pointerOf(from))
    },
    lose: (pointerId) => {
      lift(pointerId)
      gestures.cancel()
      planner.set({ pointer: undefined })
    },
  }
}
