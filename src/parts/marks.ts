import type { Point } from '../geometry/point'
import type { DiscsMark, PathMark, Pen, TextMark, Wash } from '../model/drawing'

/** Height of names on paper, mm: the least lettering size of ISO 3098. Source: ISO 3098-1, from memory. */
const NAME_PAPER_MM = 2.5

/** x, y, x, y ... */
export const flat = (points: readonly Point[]): Float64Array =>
  Float64Array.from({ length: points.length * 2 }, (_, index) => {
    const p = points[index >> 1]
    return (index % 2 === 0 ? p?.x : p?.y) ?? 0
  })

/** A filled outline. */
export const shapeMark = (outline: readonly Point[], pen: Pen, wash: Wash): PathMark => ({
  as: 'path',
  pen,
  wash,
  points: flat(outline),
  closed: true,
})

/** A line through points. */
export const lineMark = (points: readonly Point[], pen: Pen, arrows?: 'end' | 'middle'): PathMark => ({
  as: 'path',
  pen,
  wash: 'none',
  points: flat(points),
  closed: false,
  ...(arrows && { arrows }),
})

/** Both diagonals of a four-cornered outline. */
export const crossMarks = ([a, b, c, d]: readonly Point[], pen: Pen): PathMark[] =>
  a && b && c && d ? [lineMark([a, c], pen), lineMark([b, d], pen)] : []

export const discMark = ({ x, y }: Point, radiusMm: number, pen: Pen, wash: Wash): DiscsMark => ({
  as: 'discs',
  pen,
  wash,
  discs: Float64Array.of(x, y, radiusMm),
})

/** Words centred at a place. */
export const nameMark = (text: string, at: Point, upright = false): TextMark => ({
  as: 'text',
  pen: 'note',
  text,
  at,
  paperMm: NAME_PAPER_MM,
  anchor: 'middle',
  upright,
})

/** A part's own name; none for a part without one. */
export const nameMarks = (name: string, at: Point, upright = false): TextMark[] =>
  name === '' ? [] : [nameMark(name, at, upright)]
