import { corners, type Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Mark, Pen, TextMark, Wash } from '../model/drawing'
import { flat } from '../parts/marks'

/** Letter heights of a sheet, mm of paper. None under 2 mm: a sheet is read at arm's length in wet gloves. */
export const LETTERS = { title: 4.4, heading: 3.2, body: 2.5, small: 2.2, least: 2 } as const

/** From one line of words to the next, as a share of the letter height. */
export const LEADING = 1.32

interface Style {
  readonly pen?: Exclude<Pen, 'none'>
  readonly anchor?: TextMark['anchor']
  readonly upright?: boolean
}

/** Words whose capitals are centred on `at`. */
export const lettered = (text: string, at: Point, paperMm: number, style: Style = {}): TextMark => ({
  as: 'text',
  pen: style.pen ?? 'note',
  text,
  at,
  paperMm,
  anchor: style.anchor ?? 'start',
  upright: style.upright ?? false,
})

/** A straight line. */
export const ruled = (from: Point, to: Point, pen: Pen): Mark => ({
  as: 'path',
  pen,
  wash: 'none',
  points: flat([from, to]),
  closed: false,
})

/** A filled or outlined rectangle. */
export const panel = (box: Box, pen: Pen, wash: Wash): Mark => ({
  as: 'path',
  pen,
  wash,
  points: flat(corners(box)),
  closed: true,
})

/** A closed shape. */
export const shaped = (points: readonly Point[], pen: Pen, wash: Wash): Mark => ({
  as: 'path',
  pen,
  wash,
  points: flat(points),
  closed: true,
})
