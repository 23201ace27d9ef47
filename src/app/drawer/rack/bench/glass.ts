import { DIMENSION_LETTER_MM } from '../../../../drawing/dimension'
import { textWidth } from '../../../../drawing/lettering'
import { LADDER_MM } from '../../../../sheets/assembly/ladder'

/** Least height of letters on a page, px. */
const LETTER_PX = 12

/** Height of all letters of the bench, mm of glass. */
export const LETTER_MM = DIMENSION_LETTER_MM

/** Px of a mm of glass: a drawing is laid out as on paper, with letters that can be read on a page. */
export const PX_PER_MM = LETTER_PX / LETTER_MM

/** From one line of words to the next, mm. */
export const LINE_MM = 3.3

/** Half as high as a mark's ring is, mm. */
export const PILL_MM = 1.9

/** How far from a drawing its ladder stands, mm. */
export const LADDER_OFF_MM = 0.8

/** How far from a drawing the words of its ladder reach, mm. */
export const ladderWidth = (texts: readonly string[]): number =>
  LADDER_OFF_MM + LADDER_MM + Math.max(0, ...texts.map((text) => textWidth(text, LETTER_MM)))
