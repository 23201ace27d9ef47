import { useCallback, useEffect, useRef, type RefObject } from 'react'

/**
 * What a deed takes off the page can't keep the focus: what it stood in takes it, so that the keyboard stays where the work is.
 * To be called before the deed, by what is drawn anew with it. The page may drop the line some frames later, so that every
 * drawing looks, until the focus was lost or went elsewhere.
 */
export const useFocusKept = (of: RefObject<HTMLElement | null>): (() => void) => {
  const isAwaited = useRef(false)
  useEffect(() => {
    if (!isAwaited.current) return
    const { activeElement } = document
    const isLost = activeElement === null || activeElement === document.body
    if (isLost) of.current?.focus()
    if (isLost || !of.current?.contains(activeElement)) isAwaited.current = false
  })
  return useCallback(() => {
    isAwaited.current = true
  }, [])
}
