import { DIMENSION_LETTER_MM, DIMENSION_TICK_MM, dimensionStrokes } from '../drawing/dimension'
import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Mark, TextMark } from '../model/drawing'
import { wordsBox } from './clearWords'
import { lettered, ruled } from './ink'

/** Marks with the boxes that their words cover, mm of paper. */
export interface Worded {
  readonly marks: readonly Mark[]
  readonly boxes: readonly Box[]
}

const SIZES = { letterMm: DIMENSION_LETTER_MM, tickMm: DIMENSION_TICK_MM }

/**
 * A dimension in mm of paper with its words given, for sheets whose tape is finer than the floor plan's: `offsetMm` shifts its line
 * to the left of from -> to.
 */
export const measured = (from: Point, to: Point, offsetMm: number, text: string): Worded => {
  const strokes = dimensionStrokes(
    { as: 'dimension', pen: 'dimension', from, to, offsetMm, note: '' },
    text,
    SIZES,
  )
  if (!strokes) return { marks: [], boxes: [] }
  const { lines, words } = strokes
  const ends = Array.from({ length: lines.length / 4 }, (_, i) => lines.subarray(4 * i, 4 * i + 4))
  return {
    marks: [
      ...ends.map(([x0 = 0, y0 = 0, x1 = 0, y1 = 0]) =>
        ruled({ x: x0, y: y0 }, { x: x1, y: y1 }, 'dimension'),
      ),
      ...words.map((word) =>
        lettered(word.text, word.at, word.heightMm, {
          anchor: word.anchor,
          upright: Math.abs(Math.sin(word.turn)) > 0.5,
        }),
      ),
    ],
    boxes: words.map(wordsBox),
  }
}

/** Dimensions end to end along a level line, mm of paper. */
export const chain = (xs: readonly number[], y: number, textOf: (index: number) => string): Worded =>
  together(xs.slice(1).map((x, index) => measured({ x: xs[index] ?? x, y }, { x, y }, 0, textOf(index))))

export const together = (parts: readonly Worded[]): Worded => ({
  marks: parts.flatMap(({ marks }) => marks),
  boxes: parts.flatMap(({ boxes }) => boxes),
})

/** Words with the box that they cover. */
export const wordsAt = (
  text: string,
  at: Point,
  paperMm: number,
  anchor: TextMark['anchor'] = 'start',
): Worded => ({
  marks: [lettered(text, at, paperMm, { anchor })],
  boxes: [wordsBox({ text, at, turn: 0, heightMm: paperMm, anchor })],
})
