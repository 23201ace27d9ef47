import type { Box } from '../geometry/box'
import type { paperFamilies, paperNames } from '../layout/papers'
import { inches, type Units } from '../units/length'

export type PaperName = (typeof paperNames)[number]
export type PaperFamily = (typeof paperFamilies)[number]
export type Orientation = 'landscape' | 'portrait'

export interface Paper {
  readonly name: PaperName
  readonly title: string
  readonly shortMm: number
  readonly longMm: number
}

/** Letter and tabloid: ASME Y14.1, sizes A and B; half of a letter sheet. A3 to A6: ISO 216. A card of 4 x 6 in, common practice, no source. */
export const papers: Readonly<Record<PaperName, Paper>> = {
  letter: { name: 'letter', title: 'Letter, 8-1/2 x 11 in', shortMm: inches(8.5), longMm: inches(11) },
  tabloid: { name: 'tabloid', title: 'Tabloid, 11 x 17 in', shortMm: inches(11), longMm: inches(17) },
  A4: { name: 'A4', title: 'A4, 210 x 297 mm', shortMm: 210, longMm: 297 },
  A3: { name: 'A3', title: 'A3, 297 x 420 mm', shortMm: 297, longMm: 420 },
  'half-letter': {
    name: 'half-letter',
    title: 'Half letter, 5-1/2 x 8-1/2 in',
    shortMm: inches(5.5),
    longMm: inches(8.5),
  },
  A5: { name: 'A5', title: 'A5, 148 x 210 mm', shortMm: 148, longMm: 210 },
  '4x6': { name: '4x6', title: 'Card, 4 x 6 in', shortMm: inches(4), longMm: inches(6) },
  A6: { name: 'A6', title: 'A6, 105 x 148 mm', shortMm: 105, longMm: 148 },
}

/** Papers that a whole plan is drawn on. */
export const planPapers: readonly PaperName[] = ['letter', 'tabloid', 'A4', 'A3']

/** A paper as it lies before the reader. */
export interface OrientedPaper {
  readonly name: PaperName
  readonly title: string
  readonly orientation: Orientation
  readonly widthMm: number
  readonly heightMm: number
}

export const orient = ({ name, title, shortMm, longMm }: Paper, orientation: Orientation): OrientedPaper =>
  orientation === 'portrait'
    ? { name, title, orientation, widthMm: shortMm, heightMm: longMm }
    : { name, title, orientation, widthMm: longMm, heightMm: shortMm }

/** A standard scale and how it is written in a title block. */
export interface Scale {
  /** Floor mm a paper mm: 48 for 1:48. */
  readonly ratio: number
  readonly words: string
}

const metricScale = (ratio: number): Scale => ({ ratio, words: `1:${ratio}` })

const inchScale = (ratio: number, paper: string, floor: string): Scale => ({
  ratio,
  words: `${paper} in = ${floor} (1:${ratio})`,
})

/**
 * Scales that stand on a builder's scale rule, largest drawing first: the architect's and engineer's rules in inches,
 * ISO 5455 and the edges of the two common triangular rules in metric, each of which serves every decade.
 */
const scales: Readonly<Record<Units, readonly Scale[]>> = {
  'feet-inches': [
    inchScale(12, '1', '1 ft'),
    inchScale(16, '3/4', '1 ft'),
    inchScale(24, '1/2', '1 ft'),
    inchScale(32, '3/8', '1 ft'),
    inchScale(48, '1/4', '1 ft'),
    inchScale(64, '3/16', '1 ft'),
    inchScale(96, '1/8', '1 ft'),
    inchScale(128, '3/32', '1 ft'),
    inchScale(192, '1/16', '1 ft'),
    inchScale(240, '1', '20 ft'),
    inchScale(360, '1', '30 ft'),
    inchScale(480, '1', '40 ft'),
    inchScale(600, '1', '50 ft'),
    inchScale(1200, '1', '100 ft'),
  ],
  metric: [10, 20, 25, 30, 40, 50, 75, 100, 125, 200, 250, 300, 400, 500, 750, 1000, 1250, 2000].map(
    metricScale,
  ),
}

export const standardScales = (units: Units): readonly Scale[] => scales[units]

/** A scale for what is larger than every standard scale allows: the next whole thousand. */
const beyond = (ratio: number): Scale => {
  const whole = Math.ceil(ratio / 1000) * 1000
  return { ratio: whole, words: `1:${whole}` }
}

/** The largest standard scale at which a piece of floor fits a piece of paper, both width by height, mm. */
export const fitScale = (
  floor: { readonly widthMm: number; readonly heightMm: number },
  room: { readonly widthMm: number; readonly heightMm: number },
  units: Units,
): Scale => {
  const least = Math.max(floor.widthMm / room.widthMm, floor.heightMm / room.heightMm)
  return scales[units].find(({ ratio }) => ratio >= least) ?? beyond(least)
}

/** Home printers leave 6 mm and more of each edge bare; ISO 5457 asks for 10. */
export const MARGIN_MM = 10

/** Rooms of a sheet, mm of paper from its lower left corner. */
export interface SheetRooms {
  readonly frame: Box
  /** The plan, with room about it for dimensions. */
  readonly drawing: Box
  /** Key, notes and title block, down the right side. */
  readonly column: Box
  /** For a bar that shows whether the printer kept the size: along the longer side of the drawing, where it can be longest. */
  readonly check: Box
  /** Words of caution, all the way across the foot. */
  readonly footer: Box
}

const COLUMN_SHARE = 0.26
const COLUMN_LEAST_MM = 58
const COLUMN_MOST_MM = 84
const CHECK_MM = 8

/** The rooms of a sheet whose footer is `footerMm` tall. */
export const roomsOf = (paper: OrientedPaper, footerMm: number): SheetRooms => {
  const frame = {
    x0: MARGIN_MM,
    y0: MARGIN_MM,
    x1: paper.widthMm - MARGIN_MM,
    y1: paper.heightMm - MARGIN_MM,
  }
  const columnMm = Math.min(COLUMN_MOST_MM, Math.max(COLUMN_LEAST_MM, paper.widthMm * COLUMN_SHARE))
  const above = { ...frame, y0: frame.y0 + footerMm }
  const split = frame.x1 - columnMm
  const [checkX, checkY] =
    paper.orientation === 'portrait' ? [above.x0 + CHECK_MM, above.y1] : [split, above.y0 + CHECK_MM]
  return {
    frame,
    footer: { ...frame, y1: above.y0 },
    column: { ...above, x0: split },
    check: { ...above, x1: checkX, y1: checkY },
    drawing:
      paper.orientation === 'portrait'
        ? { ...above, x0: checkX, x1: split }
        : { ...above, y0: checkY, x1: split },
  }
}
