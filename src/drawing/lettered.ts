import type { DimensionMark, TextMark } from '../model/drawing'
import {
  DIMENSION_LETTER_MM,
  DIMENSION_TICK_MM,
  dimensionLength,
  dimensionStrokes,
  type DimensionStrokes,
  type Lettering,
} from './dimension'
import { letterPx, onFloor, type View } from './view'

/** Half the height of capitals, as a share of the letter height: from the middle of a line of words to its baseline. */
export const HALF_CAPITAL = 0.36
/** Width of the clear rim around words, as a share of the letter height. */
export const HALO = 0.28

/** A text mark as lettering, in the view's mm of floor. */
export const textLettering = (mark: TextMark, view: View): Lettering => ({
  text: mark.text,
  at: mark.at,
  turn: mark.upright ? Math.PI / 2 : 0,
  heightMm: letterPx(mark.paperMm, view) / view.pxPerMm,
  anchor: mark.anchor,
})

/** A dimension as strokes and lettering in the view's mm of floor, its words in the reader's units. */
export const dimensionIn = (mark: DimensionMark, view: View): DimensionStrokes | undefined =>
  dimensionStrokes(mark, view.writer.length(dimensionLength(mark)), {
    letterMm: letterPx(DIMENSION_LETTER_MM, view) / view.pxPerMm,
    tickMm: onFloor(DIMENSION_TICK_MM, view),
  })
