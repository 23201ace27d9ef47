import { distance } from '../geometry/point'
import type { Planner } from '../store/planner'
import { toFloor, toScreen } from '../store/view'
import { writerFor } from '../units/writer'
import { perform } from './deeds'
import type { Gestures } from './gestures'
import { deedOf, type KeyDeed, type KeyPress } from './keys'
import type { Pointer } from './tools/tool'

/** Where the keys point on the floor: where the pointer was last, else in the middle of the plan. */
const pointedAt = (planner: Planner, shift = false): Pointer => {
  const { pointer, view, size } = planner.store.getState()
  const at = pointer ?? toFloor(view, { x: size.width / 2, y: size.height / 2 })
  const px = toScreen(view, at)
  return { at, px, shift, alt: false, isFree: true, isTouch: false, clicks: 1 }
}

/** Shows the part in hand where the keys will move it from. */
export const showHeld = (planner: Planner, gestures: Gestures): void => {
  const pointer = pointedAt(planner)
  planner.set({ pointer: pointer.at })
  gestures.move(pointer)
}

/** How long the tape is that lies on the floor, if one does. */
const tapeWords = ({ store }: Planner, gestures: Gestures): string => {
  const { measure } = gestures.shown.getState().overlay
  const { units } = store.getState()
  return measure ? writerFor(units).length(distance(measure.from, measure.to)) : ''
}

/** What a press of Enter did: dropped the part in hand, or hooked the tape or let it go. */
const pressedWords = (planner: Planner, gestures: Gestures, revision: number): string => {
  const { store } = planner
  if (store.getState().revision !== revision) return store.getState().history.done.at(-1)?.label ?? ''
  return tapeWords(planner, gestures) || 'Hooked'
}

/** Keys that move the pointer and press it, for a part in hand or the tape; undefined where the key is not about that. */
const pointed = (
  planner: Planner,
  gestures: Gestures,
  deed: KeyDeed,
  { shift }: KeyPress,
): string | undefined => {
  const pointer = pointedAt(planner, shift)
  if (deed.does === 'nudge') {
    planner.set({ pointer: { x: pointer.at.x + deed.dxMm, y: pointer.at.y + deed.dyMm } })
    showHeld(planner, gestures)
    return tapeWords(planner, gestures)
  }
  if (deed.does !== 'drop') return undefined
  const { revision } = planner.store.getState()
  gestures.press(pointer)
  gestures.release(pointer)
  return pressedWords(planner, gestures, revision)
}

/** Escape stops the gesture, then what is pointed out, then puts down the tool, then lets go of what is chosen. */
export const cancelled = (planner: Planner, gestures: Gestures): string => {
  const wasBusy = gestures.cancel()
  const { tool, selection, pointedOut } = planner.store.getState()
  if (!wasBusy && pointedOut !== undefined) {
    planner.set({ pointedOut: undefined })
    return 'Nothing is pointed out any more'
  }
  if (tool === 'place') planner.set({ tool: 'select', placing: undefined })
  else if (!wasBusy && tool !== 'select') planner.set({ tool: 'select' })
  else if (!wasBusy && selection.length > 0) planner.select([])
  return wasBusy ? 'Stopped' : ''
}

/** Keys that change nothing of the bay, and so may come in the middle of a gesture. */
const isLooking = ({ does }: KeyDeed): boolean => ['pan', 'zoom', 'fit', 'tool'].includes(does)

/** Does what a key asks for on the plan, and gives the words for it; undefined where the key is the page's own. */
export const answerKey = (planner: Planner, gestures: Gestures, press: KeyPress): string | undefined => {
  const { units, tool } = planner.store.getState()
  const deed = deedOf(press, units)
  if (!deed) return undefined
  if (deed.does === 'cancel') return cancelled(planner, gestures)
  if (tool === 'place' || tool === 'tape') {
    const said = pointed(planner, gestures, deed, press)
    if (said !== undefined) return said
  }
  return gestures.isBusy() && !isLooking(deed) ? undefined : perform(planner, deed)
}
