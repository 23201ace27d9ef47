import { createGestures, type Gestures } from '../../src/canvas/gestures'
import type { Pointer } from '../../src/canvas/tools/tool'
import type { Layout } from '../../src/layout/schema'
import { createPlanner, type Planner } from '../../src/store/planner'
import { toScreen } from '../../src/store/view'
import { inches } from '../../src/units/length'

type Held = Partial<Pick<Pointer, 'shift' | 'alt' | 'isFree' | 'isTouch' | 'clicks'>>
type Spot = readonly [xIn: number, yIn: number]

/** A planner with a mouse over it that thinks in inches. */
export interface Desk {
  readonly planner: Planner
  readonly gestures: Gestures
  readonly press: (at: Spot, held?: Held) => void
  readonly move: (at: Spot, held?: Held) => void
  readonly release: (at: Spot, held?: Held) => void
  readonly click: (at: Spot, held?: Held) => void
  /** Press, several moves on the way, release. */
  readonly drag: (from: Spot, to: Spot, held?: Held) => void
  readonly reasons: () => readonly string[]
}

/** `pxPerInch` is how far the plan is zoomed in. */
export const desk = (layout: Layout, pxPerInch = 4): Desk => {
  const planner = createPlanner(layout)
  planner.set({ view: { x: 0, y: inches(1200), pxPerMm: pxPerInch / inches(1) } })
  const gestures = createGestures(planner)
  const pointer = ([x, y]: Spot, held: Held = {}): Pointer => {
    const at = { x: inches(x), y: inches(y) }
    const px = toScreen(planner.store.getState().view, at)
    return { at, px, shift: false, alt: false, isFree: false, isTouch: false, clicks: 1, ...held }
  }
  const press: Desk['press'] = (at, held) => gestures.press(pointer(at, held))
  const move: Desk['move'] = (at, held) => gestures.move(pointer(at, held))
  const release: Desk['release'] = (at, held) => gestures.release(pointer(at, held))
  return {
    planner,
    gestures,
    press,
    move,
    release,
    click: (at, held) => {
      press(at, held)
      release(at, held)
    },
    drag: (from, to, held) => {
      press(from, held)
      for (const share of [0.3, 0.7, 1])
        move([from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share], held)
      release(to, held)
    },
    reasons: () => (gestures.shown.getState().overlay.guides ?? []).map(({ reason }) => reason),
  }
}
