/** How much of the window's height the drawer takes, as shares of it. */
export const DRAWER_SHARE = { start: 0.42, least: 0.22, most: 0.75 }

const KEY_STEP = 0.03

/** The nearest share that leaves something to see of both. */
export const heldShare = (share: number): number =>
  Math.min(DRAWER_SHARE.most, Math.max(DRAWER_SHARE.least, share))

const byKey: Readonly<Record<string, (share: number) => number>> = {
  ArrowUp: (share) => share + KEY_STEP,
  ArrowDown: (share) => share - KEY_STEP,
  PageUp: (share) => share + 4 * KEY_STEP,
  PageDown: (share) => share - 4 * KEY_STEP,
  Home: () => DRAWER_SHARE.least,
  End: () => DRAWER_SHARE.most,
}

/** The share after a key on the drawer's edge, undefined for a key that does nothing there. */
export const shareByKey = (key: string, share: number): number | undefined => {
  const next = byKey[key]?.(share)
  return next === undefined ? undefined : heldShare(next)
}

/** The share at which the drawer's edge lies under a pointer, px from the window's top. */
export const shareAt = (pointerPx: number, windowPx: number): number =>
  heldShare((windowPx - pointerPx) / windowPx)
