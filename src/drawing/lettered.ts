import type { DimensionMark, HeightMark, TextMark } from '../model/drawing'
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

/** Letter height of a height over the floor, and how far it stands off its place, mm of paper. */
const HEIGHT_PAPER_MM = 2
const HEIGHT_OFF_MM = 1.5

/** A height over the floor, to the right of its place, in the reader's units. */
export const heightLettering = ({ at, heightMm }: HeightMark, view: View): Lettering => ({
  text: `at ${view.writer.length(heightMm)}`,
  at: { x: at.x + onFloor(HEIGHT_OFF_MM, view), y: at.y + onFloor(HEIGHT_OFF_MM, view) },
  turn: 0,
  heightMm: letterPx(HEIGHT_PAPER_MM, view) / view.pxPerMm,
  anchor: 'start',
})

/** A dimension as strokes and lettering in the view's mm of floor, its words in the reader's units. */
export const dimensionIn = (mark: DimensionMark, view: View): DimensionStrokes | undefined =>
  dimensionStrokes(mark, view.writer.length(dimensionLength(mark)), {
    letterMm: letterPx(DIMENSION_LETTER_MM, view) / view.pxPerMm,
    tickMm: onFloor(DIMENSION_TICK_MM, view),
  })
