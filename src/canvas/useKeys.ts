import { useEffect, type KeyboardEvent, type RefObject } from 'react'
import { usePlanner } from '../store/react'
import type { Gestures } from './gestures'
import { answerKey, cancelled } from './keyboard'

/** Where Escape has a meaning of its own. */
const OWN_ESCAPE = 'dialog, input, select, textarea'

/** Escape stops what is under way also where the focus lies elsewhere, as on the tool's own button. */
const useEscape = (paper: RefObject<HTMLElement | null>, gestures: Gestures): void => {
  const planner = usePlanner()
  useEffect(() => {
    const escape = ({ key, target }: globalThis.KeyboardEvent) => {
      const isOwn =
        target instanceof Element && (paper.current?.contains(target) || target.closest(OWN_ESCAPE))
      if (key === 'Escape' && !isOwn) planner.say(cancelled(planner, gestures))
    }
    window.addEventListener('keydown', escape)
    return () => window.removeEventListener('keydown', escape)
  }, [paper, planner, gestures])
}

/** The keys of the focused plan; what they did is said. */
export const useKeys = (paper: RefObject<HTMLElement | null>, gestures: Gestures) => {
  const planner = usePlanner()
  useEscape(paper, gestures)
  return (event: KeyboardEvent<HTMLElement>) => {
    if (event.key === ' ') event.preventDefault()
    const words = answerKey(planner, gestures, {
      key: event.key,
      shift: event.shiftKey,
      ctrl: event.ctrlKey || event.metaKey,
      alt: event.altKey,
    })
    if (words === undefined) return
    event.preventDefault()
    planner.say(words)
  }
}
