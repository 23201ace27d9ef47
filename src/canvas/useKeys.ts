import type { KeyboardEvent } from 'react'
import type { Planner } from '../store/planner'
import { usePlanner } from '../store/react'
import { toFloor, toScreen } from '../store/view'
import { perform } from './deeds'
import type { Gestures } from './gestures'
import { deedOf, type KeyDeed } from './keys'
import type { Pointer } from './tools/tool'

/** Where a part in hand is, for keys: under the pointer, else in the middle of the plan. */
const heldAt = (planner: Planner): Pointer => {
  const { pointer, view, size } = planner.store.getState()
  const at = pointer ?? toFloor(view, { x: size.width / 2, y: size.height / 2 })
  const px = toScreen(view, at)
  return { at, px, shift: false, alt: false, isFree: true, isTouch: false, clicks: 1 }
}

/** Shows the part in hand where the keys will move it from. */
export const showHeld = (planner: Planner, gestures: Gestures): void => {
  const pointer = heldAt(planner)
  planner.set({ pointer: pointer.at })
  gestures.move(pointer)
}

/** Keys while a part is in hand; undefined where the key is not about it. */
const placed = (planner: Planner, gestures: Gestures, deed: KeyDeed): string | undefined => {
  const pointer = heldAt(planner)
  if (deed.does === 'nudge') {
    planner.set({ pointer: { x: pointer.at.x + deed.dxMm, y: pointer.at.y + deed.dyMm } })
    showHeld(planner, gestures)
    return ''
  }
  if (deed.does !== 'drop') return undefined
  gestures.press(pointer)
  gestures.release(pointer)
  return planner.store.getState().history.done.at(-1)?.label ?? ''
}

/** Escape stops the gesture, then puts down the tool, then lets go of what is chosen. */
const cancelled = (planner: Planner, gestures: Gestures): string => {
  const wasBusy = gestures.cancel()
  const { tool, selection } = planner.store.getState()
  if (tool === 'place') planner.set({ tool: 'select', placing: undefined })
  else if (!wasBusy && tool !== 'select') planner.set({ tool: 'select' })
  else if (!wasBusy && selection.length > 0) planner.select([])
  return wasBusy ? 'Stopped' : ''
}

const answer = (planner: Planner, gestures: Gestures, deed: KeyDeed): string | undefined => {
  if (deed.does === 'cancel') return cancelled(planner, gestures)
  if (planner.store.getState().tool === 'place') {
    const said = placed(planner, gestures, deed)
    if (said !== undefined) return said
  }
  return gestures.isBusy() ? undefined : perform(planner, deed)
}

/** The keys of the focused plan; what they did is said. */
export const useKeys = (gestures: Gestures) => {
  const planner = usePlanner()
  return (event: KeyboardEvent<HTMLElement>) => {
    if (event.key === ' ') event.preventDefault()
    const press = {
      key: event.key,
      shift: event.shiftKey,
      ctrl: event.ctrlKey || event.metaKey,
      alt: event.altKey,
    }
    const deed = deedOf(press, planner.store.getState().units)
    const words = deed && answer(planner, gestures, deed)
    if (words === undefined) return
    event.preventDefault()
    planner.say(words)
  }
}
