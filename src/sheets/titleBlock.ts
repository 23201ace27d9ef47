import { clipped, textWidth } from '../drawing/lettering'
import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Mark } from '../model/drawing'
import { lettered, LETTERS, panel, ruled } from './ink'

/** A cell of the title block: what it is, and what stands there. */
export interface Cell {
  readonly label: string
  readonly text: string
}

const HEAD_MM = 18
const CELL_MM = 8.6
const INSET_MM = 2

/** Height of a title block with so many rows of cells, mm of paper. */
export const titleBlockHeight = (rows: number): number => HEAD_MM + rows * CELL_MM

const cellMarks = ({ label, text }: Cell, box: Box): Mark[] => {
  const room = box.x1 - box.x0 - 2 * INSET_MM
  return [
    panel(box, 'dimension', 'none'),
    lettered(label, { x: box.x0 + INSET_MM, y: box.y1 - 2.2 }, LETTERS.small, { pen: 'dimension' }),
    lettered(clipped(text, LETTERS.body, room), { x: box.x0 + INSET_MM, y: box.y0 + 2.5 }, LETTERS.body),
  ]
}

const rowMarks = (cells: readonly Cell[], box: Box): Mark[] => {
  const width = (box.x1 - box.x0) / cells.length
  return cells.flatMap((cell, i) =>
    cellMarks(cell, { ...box, x0: box.x0 + i * width, x1: box.x0 + (i + 1) * width }),
  )
}

/** As large as it fits in one line, within reason. */
const titleMark = (text: string, at: Point, room: number): Mark => {
  const letterMm = Math.min(LETTERS.title, Math.max(LETTERS.small, room / textWidth(text, 1)))
  return lettered(clipped(text, letterMm, room), at, letterMm)
}

/** Bay, place and sheet over rows of cells, at the foot of a column. In mm of paper. */
export const titleBlock = (
  names: { readonly title: string; readonly place: string; readonly sheet: string },
  rows: readonly (readonly Cell[])[],
  column: Box,
): Mark[] => {
  const top = column.y0 + titleBlockHeight(rows.length)
  const left = column.x0 + INSET_MM
  const room = column.x1 - column.x0 - 2 * INSET_MM
  return [
    ruled({ x: column.x0, y: top }, { x: column.x1, y: top }, 'outline'),
    titleMark(names.title, { x: left, y: top - 4 }, room),
    lettered(clipped(names.place, LETTERS.body, room), { x: left, y: top - 9 }, LETTERS.body),
    lettered(clipped(names.sheet, LETTERS.heading, room), { x: left, y: top - 14 }, LETTERS.heading),
    ...rows.flatMap((cells, i) => {
      const y1 = top - HEAD_MM - i * CELL_MM
      return rowMarks(cells, { x0: column.x0, x1: column.x1, y0: y1 - CELL_MM, y1 })
    }),
  ]
}
