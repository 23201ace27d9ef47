import { useSyncExternalStore } from 'react'

const coarse = '(pointer: coarse)'
const watchCoarse = (hear: () => void) => {
  const query = matchMedia(coarse)
  query.addEventListener('change', hear)
  return () => query.removeEventListener('change', hear)
}

/** How large what is pressed must be, px: larger for fingers. */
export const useTargetPx = (): number =>
  useSyncExternalStore(watchCoarse, () => matchMedia(coarse).matches) ? 44 : 28
