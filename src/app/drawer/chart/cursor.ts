import type { ChartStop } from './chartData'

/** How far a page key goes. */
const FAR_STOPS = 5

/** The stop nearest to a place along the chart, in px; undefined where there is none. */
export const nearestStop = (
  stops: readonly ChartStop[],
  xPx: number,
  toX: (value: number) => number,
): number | undefined =>
  stops.reduce<number | undefined>((best, { x }, index) => {
    const held = best === undefined ? undefined : stops[best]
    return held === undefined || Math.abs(toX(x) - xPx) < Math.abs(toX(held.x) - xPx) ? index : best
  }, undefined)

const steps: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at) => at + 1,
  ArrowUp: (at) => at + 1,
  ArrowLeft: (at) => at - 1,
  ArrowDown: (at) => at - 1,
  PageUp: (at) => at + FAR_STOPS,
  PageDown: (at) => at - FAR_STOPS,
  Home: () => 0,
  End: (_, last) => last,
}

/** The stop that a key leads to from another, undefined for a key that leads nowhere. The first press stays at the start. */
export const steppedStop = (key: string, at: number | undefined, count: number): number | undefined => {
  const step = steps[key]
  if (!step || count === 0) return undefined
  const from = at ?? (key === 'ArrowRight' || key === 'ArrowUp' ? -1 : 0)
  return Math.min(count - 1, Math.max(0, step(from, count - 1)))
}
