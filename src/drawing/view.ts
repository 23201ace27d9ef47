import type { Box } from '../geometry/box'
import type { Writer } from '../units/writer'
import type { Theme } from './theme'

/** Writes the lengths of dimensions in the reader's units. */
export type LengthWriter = Pick<Writer, 'length'>

/** What a writer of marks must know of the glass or paper it writes on. `px` is the unit of that writer's surface. */
export interface View {
  readonly pxPerMm: number
  /** Size of 1 mm of paper: pens and letters keep it at every zoom. */
  readonly pxPerPaperMm: number
  readonly on: 'screen' | 'paper'
  readonly theme: Theme
  readonly writer: LengthWriter
  /** What can be seen, mm of floor; marks outside it are left out. */
  readonly within?: Box
}

/** Letters smaller than this can't be read on a screen. */
const LEAST_LETTER_PX = 12
/** Finest thing worth drawing on paper, mm. */
const LEAST_DETAIL_MM = 0.1

/** True where `nearMm` of floor are large enough to see. */
export const isNear = (nearMm: number | undefined, view: View): boolean =>
  view.on === 'screen'
    ? nearMm === undefined || nearMm * view.pxPerMm >= 1
    : isOnPaper(nearMm, view.pxPerPaperMm / view.pxPerMm)

/** The same for paper, at `ratio` floor mm a paper mm. */
export const isOnPaper = (nearMm: number | undefined, ratio: number): boolean =>
  nearMm === undefined || nearMm >= LEAST_DETAIL_MM * ratio

/** A length on the paper, in mm of floor. */
export const onFloor = (paperMm: number, view: View): number => (paperMm * view.pxPerPaperMm) / view.pxPerMm

/** Letter height as written, px. */
export const letterPx = (paperMm: number, view: View): number =>
  view.on === 'screen' ? Math.max(LEAST_LETTER_PX, paperMm * view.pxPerPaperMm) : paperMm * view.pxPerPaperMm
