import { overlaps, type Box } from '../geometry/box'
import {
  DIMENSION_LETTER_MM,
  DIMENSION_TICK_MM,
  dimensionStrokes,
  type Lettering,
} from '../drawing/dimension'
import { textWidth } from '../drawing/lettering'
import type { DimensionMark, TextMark } from '../model/drawing'

/** Air above and below words, and before and after them, as shares of their height. */
const AIR = { above: 0.15, beside: 0.5 } as const

/** The box that a line of words covers, in the unit of its place and height. Words lean by quarter turns only. */
export const wordsBox = ({ text, at, turn, heightMm, anchor }: Lettering): Box => {
  const width = textWidth(text, heightMm)
  const air = heightMm * AIR.beside
  const start = { start: 0, middle: -width / 2, end: -width }[anchor] - air
  const end = start + width + 2 * air
  const half = heightMm * (0.5 + AIR.above)
  const isUpright = Math.abs(Math.sin(turn)) > 0.5
  return isUpright
    ? { x0: at.x - half, y0: at.y + start, x1: at.x + half, y1: at.y + end }
    : { x0: at.x + start, y0: at.y - half, x1: at.x + end, y1: at.y + half }
}

export const isInside = (inner: Box, outer: Box): boolean =>
  inner.x0 >= outer.x0 && inner.x1 <= outer.x1 && inner.y0 >= outer.y0 && inner.y1 <= outer.y1

/** The box of a text mark drawn at `ratio` floor mm a paper mm, mm of floor. */
export const textBox = (mark: TextMark, ratio: number): Box =>
  wordsBox({
    text: mark.text,
    at: mark.at,
    turn: mark.upright ? Math.PI / 2 : 0,
    heightMm: mark.paperMm * ratio,
    anchor: mark.anchor,
  })

/** The boxes of a dimension's words, mm of floor. */
export const dimensionBoxes = (mark: DimensionMark, length: string, ratio: number): Box[] => {
  const sizes = { letterMm: DIMENSION_LETTER_MM * ratio, tickMm: DIMENSION_TICK_MM * ratio }
  return (dimensionStrokes(mark, length, sizes)?.words ?? []).map(wordsBox)
}

/** Keeps words off each other: what came first keeps its place. */
export interface ClearWords {
  /** True, and the place is taken, where nothing else covers any of the boxes. */
  readonly take: (boxes: readonly Box[]) => boolean
  /** Takes the first of the tries that is clear of words and of shunned lines. */
  readonly firstOffLines: <T>(tries: readonly T[], boxesOf: (item: T) => readonly Box[]) => T | undefined
  /** The same, or else the first that is clear of words. */
  readonly first: <T>(tries: readonly T[], boxesOf: (item: T) => readonly Box[]) => T | undefined
  /** Lines and hatches that words stand on only where they find no other place. */
  readonly shun: (boxes: readonly Box[]) => void
}

export const clearWords = (taken: readonly Box[], within: Box): ClearWords => {
  const covered = [...taken]
  const shunned: Box[] = []
  const isOffLines = (box: Box) => !shunned.some((line) => overlaps(box, line))
  const isClear = (box: Box) => isInside(box, within) && !covered.some((other) => overlaps(box, other))
  const take = (boxes: readonly Box[]): boolean => {
    if (!boxes.every(isClear)) return false
    covered.push(...boxes)
    return true
  }
  const firstOffLines: ClearWords['firstOffLines'] = (tries, boxesOf) =>
    tries.find((item) => boxesOf(item).every(isOffLines) && take(boxesOf(item)))
  return {
    take,
    firstOffLines,
    first: (tries, boxesOf) => firstOffLines(tries, boxesOf) ?? tries.find((item) => take(boxesOf(item))),
    shun: (boxes) => shunned.push(...boxes),
  }
}
