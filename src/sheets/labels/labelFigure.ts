import type { Words } from '../../checks/context'
import { textWidth } from '../../drawing/lettering'
import { onPaper } from '../../drawing/page'
import type { Box } from '../../geometry/box'
import type { Mark } from '../../model/drawing'
import { paragraph } from '../block'
import { lettered, LETTERS, panel } from '../ink'
import type { FigurePiece } from '../piece'
import { type Bundle, type BundlePiece, countOf } from './bundles'

/** So many labels in one figure; a page holds one figure. */
export const LABELS_A_PAGE = 8

const TALLEST_MM = 52
/** Narrower than this a label stands alone in its line. */
const PAIR_MM = 130
const INSET_MM = 3
const NAME_LETTERS = [6, 5, 4.2, 3.6] as const
const LEAST_NAME_MM = 3
const HEAD_MM = 10
const LINE_LETTERS = [2.8, 2.5, 2.2, 2] as const

export const bundleName = ({ part, rack }: Bundle, { name }: Words): string =>
  rack === undefined ? name(part) : `${name(part)}, rack ${rack}`

export const pieceWords = ({ count, mark, lengthMm }: BundlePiece, { onTape }: Words): string =>
  `${count} x ${mark} ${onTape(lengthMm)}`

interface Fit {
  readonly letterMm: number
  readonly aColumn: number
}

/** The largest letters in which all lines find room, in two columns. */
const fitOf = (lines: readonly string[], widthMm: number, heightMm: number): Fit => {
  const fits = LINE_LETTERS.map((letterMm) => ({
    letterMm,
    aColumn: Math.floor(heightMm / (letterMm * 1.4)),
  }))
  const isRoomy = ({ letterMm, aColumn }: Fit): boolean =>
    lines.length <= 2 * aColumn && lines.every((line) => textWidth(line, letterMm) <= widthMm / 2 - 1)
  const least = { letterMm: LETTERS.least, aColumn: Math.ceil(lines.length / 2) }
  return fits.find(isRoomy) ?? least
}

const lineMarks = (lines: readonly string[], { x0, x1, y0, y1 }: Box): Mark[] => {
  const { letterMm, aColumn } = fitOf(lines, x1 - x0, y1 - y0)
  return lines.map((line, i) => {
    const column = Math.floor(i / aColumn)
    const at = {
      x: x0 + (column * (x1 - x0)) / 2,
      y: y1 - ((i % aColumn) + 0.5) * letterMm * 1.4,
    }
    return lettered(line, at, letterMm)
  })
}

const nameMarks = (name: string, left: number, top: number, widthMm: number): Mark[] => {
  const letterMm = NAME_LETTERS.find((mm) => textWidth(name, mm) <= widthMm) ?? LEAST_NAME_MM
  return paragraph(name, widthMm, letterMm).draw(left, top)
}

const labelMarks = (bundle: Bundle, box: Box, write: Words): Mark[] => {
  const count = countOf(bundle)
  const sum = `${count} ${count === 1 ? 'piece' : 'pieces'}`
  const inside = { x0: box.x0 + INSET_MM, x1: box.x1 - INSET_MM, y0: box.y0 + 2, y1: box.y1 - 2 }
  const sumMm = textWidth(sum, LETTERS.heading)
  const lines = bundle.pieces.map((piece) => pieceWords(piece, write))
  return [
    panel(box, 'outline', 'none'),
    ...nameMarks(bundleName(bundle, write), inside.x0, inside.y1, inside.x1 - inside.x0 - sumMm - 3),
    lettered(sum, { x: inside.x1, y: inside.y1 - 4 }, LETTERS.heading, { anchor: 'end' }),
    ...lineMarks(lines, { ...inside, y1: inside.y1 - HEAD_MM }),
  ]
}

/** A page of labels, to be cut out along their lines. */
export const labelFigure = (bundles: readonly Bundle[], caption: string, write: Words): FigurePiece => ({
  as: 'figure',
  caption,
  draw: ({ widthMm, heightMm }) => {
    const columns = widthMm >= PAIR_MM ? 2 : 1
    const mostRows = LABELS_A_PAGE / columns
    const rows = Math.ceil(bundles.length / columns)
    const tallMm = Math.min(TALLEST_MM, heightMm / mostRows)
    const wideMm = widthMm / columns
    const marks = bundles.flatMap((bundle, i) => {
      const [row, column] = [Math.floor(i / columns), i % columns]
      const y1 = (rows - row) * tallMm
      const x0 = column * wideMm
      return labelMarks(bundle, { x0, x1: x0 + wideMm, y0: y1 - tallMm, y1 }, write)
    })
    return {
      heightMm: rows * tallMm,
      items: [{ marks, placement: onPaper }],
      scaleWords: 'not to scale',
    }
  },
})
