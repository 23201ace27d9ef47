import {
  dimensionStrokes,
  DIMENSION_LETTER_MM,
  DIMENSION_TICK_MM,
  dimensionLength,
  type Lettering,
} from '../../src/drawing/dimension'
import { textWidth } from '../../src/drawing/lettering'
import type { Page, PageItem } from '../../src/drawing/page'
import { isOnPaper } from '../../src/drawing/view'
import type { Box } from '../../src/geometry/box'
import type { Mark } from '../../src/model/drawing'
import { inTrench } from '../../src/units/precision'
import { writerFor } from '../../src/units/writer'

/** One line of words as it stands on a printed page, mm of paper from its lower left corner. */
export interface PageWords {
  readonly text: string
  readonly letterMm: number
  readonly box: Box
}

const lettering = (mark: Mark, page: Page, ratio: number): readonly Lettering[] => {
  if (mark.as === 'text') {
    if (mark.pen === 'none' || !isOnPaper(mark.nearMm, ratio)) return []
    const turn = mark.upright ? Math.PI / 2 : 0
    return [{ text: mark.text, at: mark.at, turn, heightMm: mark.paperMm * ratio, anchor: mark.anchor }]
  }
  if (mark.as !== 'dimension') return []
  const length = writerFor(page.units, inTrench).onTape(dimensionLength(mark))
  const sizes = { letterMm: DIMENSION_LETTER_MM * ratio, tickMm: DIMENSION_TICK_MM * ratio }
  return dimensionStrokes(mark, length, sizes)?.words ?? []
}

/** The box of the letters themselves: capitals are 0.72 of the letter height. */
const placed = (words: Lettering, { placement: { scale, xMm, yMm } }: PageItem): PageWords => {
  const letterMm = words.heightMm * scale
  const width = textWidth(words.text, letterMm)
  const start = { start: 0, middle: -width / 2, end: -width }[words.anchor]
  const half = letterMm * 0.36
  const x = xMm + words.at.x * scale
  const y = yMm + words.at.y * scale
  const isUpright = Math.abs(Math.sin(words.turn)) > 0.5
  const box = isUpright
    ? { x0: x - half, x1: x + half, y0: y + start, y1: y + start + width }
    : { x0: x + start, x1: x + start + width, y0: y - half, y1: y + half }
  return { text: words.text, letterMm, box }
}

/** Every line of words on a page. */
export const pageWords = (page: Page): PageWords[] =>
  page.items.flatMap((item) =>
    item.marks.flatMap((mark) =>
      lettering(mark, page, 1 / item.placement.scale).map((words) => placed(words, item)),
    ),
  )

/** All words of a page, a line each. */
export const pageText = (page: Page): string =>
  pageWords(page)
    .map(({ text }) => text)
    .join('\n')
