import { useSyncExternalStore } from 'react'
import { nightTheme, paperTheme, type Theme } from '../drawing/theme'

const night = () => window.matchMedia('(prefers-color-scheme: dark)')

const subscribe = (changed: () => void) => {
  const query = night()
  query.addEventListener('change', changed)
  return () => query.removeEventListener('change', changed)
}

/** Paper by day, night paper where the device asks for it. */
export const useTheme = (): Theme =>
  useSyncExternalStore(subscribe, () => night().matches) ? nightTheme : paperTheme
