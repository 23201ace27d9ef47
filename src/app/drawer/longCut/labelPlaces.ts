import { textWidth } from '../../../drawing/lettering'

/** Words that want to stand at a place of a drawing; px. */
export interface Label {
  readonly key: string
  readonly text: string
  /** Where its middle, or its end, wants to be, and its base line. */
  readonly x: number
  readonly y: number
  readonly anchor?: 'middle' | 'end' | 'start'
  /** Which way it gives way to others: further up, further down, or not at all (it is then left out). */
  readonly gives: 'up' | 'down' | 'no'
}

export interface PlacedLabel extends Label {
  /** Left end of the words. */
  readonly left: number
  readonly baseline: number
}

export interface Rect {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
}

const LABEL_PX = 12

const LINE_PX = 14

/** Between the words of two labels. */
const GAP_PX = 5

const MOST_STEPS = 5

const isClear = (a: Rect, b: Rect): boolean =>
  a.x1 + GAP_PX <= b.x0 || b.x1 + GAP_PX <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0

const STARTS = { start: 0, middle: 0.5, end: 1 } as const

/** The room that words take. */
export const labelRect = (left: number, baseline: number, text: string): Rect => ({
  x0: left,
  y0: baseline - 11,
  x1: left + textWidth(text, LABEL_PX),
  y1: baseline + 3,
})

/** Shares of its own width by which a label may step aside before it goes a line further. */
const ASIDE = [0, -0.25, 0.25, -0.5]

interface Spot {
  readonly left: number
  readonly baseline: number
}

/** Where a label may stand, the best first, with its words inside the drawing. */
const spotsFor = ({ text, x, y, anchor = 'middle', gives }: Label, within: Rect): readonly Spot[] => {
  const width = textWidth(text, LABEL_PX)
  const wanted = x - width * STARTS[anchor]
  const inside = (left: number) => Math.max(within.x0, Math.min(left, within.x1 - width))
  if (gives === 'no') return [{ left: inside(wanted), baseline: y }]
  const step = gives === 'up' ? -LINE_PX : LINE_PX
  return Array.from({ length: MOST_STEPS }, (_, line) =>
    ASIDE.map((share) => ({ left: inside(wanted + share * width), baseline: y + line * step })),
  ).flat()
}

/**
 * Labels where they want to be, or as near as those before them leave room, inside `within` and clear of `taken`. Who finds no room
 * is left out: its words stand in the table too.
 */
export const labelPlaces = (
  labels: readonly Label[],
  within: Rect,
  taken: readonly Rect[] = [],
): readonly PlacedLabel[] => {
  const full = [...taken]
  return labels.flatMap((label) => {
    const isFree = ({ left, baseline }: Spot) => {
      const rect = labelRect(left, baseline, label.text)
      return rect.y0 >= within.y0 && rect.y1 <= within.y1 && full.every((other) => isClear(rect, other))
    }
    const spot = spotsFor(label, within).find(isFree)
    if (!spot) return []
    full.push(labelRect(spot.left, spot.baseline, label.text))
    return [{ ...label, ...spot }]
  })
}
