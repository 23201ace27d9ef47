import { useCallback, type RefObject } from 'react'

/**
 * What a tick takes off a list can't keep the focus: the list takes it, so that the keyboard stays where the work is. To be
 * called before the tick.
 */
export const useFocusKept = (of: RefObject<HTMLElement | null>): (() => void) =>
  useCallback(() => {
    const element = of.current
    requestAnimationFrame(() => {
      const { activeElement } = document
      if (activeElement === null || activeElement === document.body) element?.focus()
    })
  }, [of])
