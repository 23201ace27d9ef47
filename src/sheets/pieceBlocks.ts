import { textWidth } from '../drawing/lettering'
import type { Mark } from '../model/drawing'
import type { Table } from '../model/table'
import { type Block, gap, paragraph } from './block'
import { type Flow, type Flowing, NEXT_PAGE, stackFlow } from './flow'
import { figureFlow } from './figureBlock'
import { LEADING, lettered, panel, ruled, shaped } from './ink'
import type { PaperSizes } from './letterSizes'
import type { BlanksPiece, HeadingPiece, Piece, StepsPiece, WordsPiece } from './piece'
import { brokenInto, type ColumnFit } from './tableColumns'
import { tableFlow } from './tableBlock'

/** Lines longer than so many letter heights are hard to read. */
const LONGEST_LINE = 58
const APART_MM = 2.2
const SIGN_MM = 5

/** A paper's room and letters, and how its tables come out there. */
export interface Setting {
  readonly sizes: PaperSizes
  readonly widthMm: number
  readonly heightMm: number
  readonly fitOf: (table: Table, hasTicks: boolean) => ColumnFit
}

/** Each line a block of its own, so that long words run over pages. */
const linesOf = (text: string, letterMm: number, widthMm: number, left = 0): readonly Block[] =>
  brokenInto(text, letterMm, Math.min(widthMm - left, LONGEST_LINE * letterMm)).map((line) => ({
    heightMm: letterMm * LEADING,
    draw: (x, top) => [lettered(line, { x: x + left, y: top - (letterMm * LEADING) / 2 }, letterMm)],
  }))

const underlined = (text: string, letterMm: number, widthMm: number): Block => {
  const words = paragraph(text, widthMm, letterMm)
  return {
    heightMm: words.heightMm + 1,
    draw: (left, top) => {
      const y = top - words.heightMm - 0.2
      return [...words.draw(left, top), ruled({ x: left, y }, { x: left + widthMm, y }, 'outline')]
    },
  }
}

const headingFlow = ({ text, level }: HeadingPiece, { sizes, widthMm }: Setting): Flow =>
  level === 1
    ? stackFlow([underlined(text, sizes.heading, widthMm), gap(1)], {
        gapMm: 5,
        least: 'whole',
        keepsWithNext: true,
      })
    : stackFlow([paragraph(text, widthMm, sizes.part), gap(0.6)], {
        gapMm: 3.4,
        least: 'whole',
        keepsWithNext: true,
      })

/** The triangle of a warning, with its word: told by shape and word, whatever the ink. Shape after ISO 3864-1, 2011, W001. */
const mindSign = (left: number, top: number, sizeMm: number): Mark[] => {
  const foot = top - sizeMm * 0.87
  const corner = (x: number, y: number) => ({ x, y })
  const middle = left + sizeMm / 2
  return [
    shaped([corner(left, foot), corner(left + sizeMm, foot), corner(middle, top)], 'must-fix', 'none'),
    ruled(corner(middle, top - sizeMm * 0.3), corner(middle, top - sizeMm * 0.58), 'must-fix'),
    ruled(corner(middle, top - sizeMm * 0.68), corner(middle, top - sizeMm * 0.74), 'must-fix'),
  ]
}

const cautionLines = (text: string, { sizes, widthMm }: Setting, left: number): readonly Block[] => {
  const [first, ...others] = linesOf(`Mind: ${text}`, sizes.body, widthMm - 2, left + SIGN_MM + 2)
  if (first === undefined) return []
  const signed: Block = {
    heightMm: first.heightMm,
    draw: (x, top) => [...mindSign(x + left, top + 0.4, SIGN_MM), ...first.draw(x, top)],
  }
  const tall = first.heightMm * (others.length + 1)
  return [signed, ...others, ...(tall < SIGN_MM ? [gap(SIGN_MM - tall)] : [])]
}

const cautionFlow = (text: string, setting: Setting): Flow =>
  stackFlow(cautionLines(text, setting, 2), {
    gapMm: APART_MM,
    least: 'whole',
    padMm: 1.6,
    border: (left, top, heightMm) => [
      panel({ x0: left, x1: left + setting.widthMm, y0: top - heightMm, y1: top }, 'outline', 'none'),
    ],
  })

const wordsFlow = ({ text, tone, isLead }: WordsPiece, setting: Setting): Flow => {
  const { sizes, widthMm } = setting
  if (tone === 'caution') return cautionFlow(text, setting)
  const letterMm = { plain: sizes.body, big: sizes.big, note: sizes.note }[tone]
  const lines = linesOf(text, letterMm, widthMm)
  return isLead
    ? stackFlow(lines, { gapMm: APART_MM, least: 'whole', keepsWithNext: true })
    : stackFlow(lines, { gapMm: APART_MM, least: 2 })
}

const STEP_BOX_MM = 4.4
const STEP_TEXT_MM = 12.5

/** The box to tick and the number stand before the first line. */
const stepBlocks = (
  { text, caution }: StepsPiece['steps'][number],
  number: number,
  setting: Setting,
): readonly Block[] => {
  const { body } = setting.sizes
  const [first = gap(body * LEADING), ...others] = linesOf(text, body, setting.widthMm, STEP_TEXT_MM)
  const marked: Block = {
    heightMm: Math.max(first.heightMm, STEP_BOX_MM),
    draw: (left, top) => {
      const y = top - first.heightMm / 2
      const box = { x0: left, x1: left + STEP_BOX_MM, y0: y - STEP_BOX_MM / 2, y1: y + STEP_BOX_MM / 2 }
      return [
        panel(box, 'outline', 'none'),
        lettered(`${number}.`, { x: left + STEP_TEXT_MM - 1.6, y }, body, { anchor: 'end' }),
        ...first.draw(left, top),
      ]
    },
  }
  const minds = caution === undefined ? [] : [gap(1), ...cautionLines(caution, setting, STEP_TEXT_MM)]
  return [marked, ...others, ...minds]
}

const stepsFlows = ({ steps }: StepsPiece, setting: Setting): readonly Flow[] =>
  steps.map((step, i) =>
    stackFlow(stepBlocks(step, i + 1, setting), { gapMm: i === 0 ? 3 : 2.6, least: 'whole' }),
  )

const BLANK_MM = 9
const BLANK_LEAST_MM = 80

/** A label and a line to write on. */
const blankMarks = (label: string, letterMm: number, left: number, top: number, widthMm: number): Mark[] => {
  const y = top - BLANK_MM + 1.6
  const from = left + textWidth(label, letterMm) + 2
  return [
    lettered(label, { x: left, y: y + letterMm * 0.5 }, letterMm),
    ruled({ x: Math.min(from, left + widthMm - 20), y }, { x: left + widthMm, y }, 'dimension'),
  ]
}

const blanksFlow = ({ labels }: BlanksPiece, { sizes, widthMm }: Setting): Flow => {
  const longest = Math.max(0, ...labels.map((label) => textWidth(label, sizes.body)))
  const each = Math.max(BLANK_LEAST_MM, longest + 45)
  const beside = Math.max(1, Math.min(labels.length, Math.floor((widthMm + 6) / (each + 6))))
  const cellMm = (widthMm - (beside - 1) * 6) / beside
  const lines = Array.from({ length: Math.ceil(labels.length / beside) }, (_, row): Block => ({
    heightMm: BLANK_MM,
    draw: (left, top) =>
      labels
        .slice(row * beside, (row + 1) * beside)
        .flatMap((label, i) => blankMarks(label, sizes.body, left + i * (cellMm + 6), top, cellMm)),
  }))
  return stackFlow(lines, { gapMm: 2, least: 1 })
}

const tableFlows = (piece: Extract<Piece, { as: 'table' }>, before: Piece | undefined, setting: Setting) => {
  const { table, hasTicks } = piece
  if (table.rows.length === 0) return []
  const isHeaded = table.title === '' || before?.as === 'heading'
  const head = isHeaded ? [] : [headingFlow({ as: 'heading', text: table.title, level: 2 }, setting)]
  return [...head, tableFlow(table, hasTicks, setting.fitOf(table, hasTicks), isHeaded ? 1 : 0.5)]
}

/** How tall a heading just before a figure is, so that both find room on one page. */
const headBefore = (pieces: readonly Piece[], index: number, setting: Setting): number => {
  const before = pieces[index - 1]
  if (before?.as !== 'heading') return 0
  const { gapMm, take } = headingFlow(before, setting)
  return gapMm + (take(setting.heightMm, true)?.heightMm ?? 0) + headBefore(pieces, index - 1, setting)
}

/** Pieces as they flow over pages of one paper. */
export const flowsOf = (pieces: readonly Piece[], setting: Setting): readonly Flowing[] =>
  pieces.flatMap((piece, i): readonly Flowing[] => {
    switch (piece.as) {
      case 'heading':
        return [headingFlow(piece, setting)]
      case 'words':
        return [wordsFlow(piece, setting)]
      case 'table':
        return tableFlows(piece, pieces[i - 1], setting)
      case 'steps':
        return stepsFlows(piece, setting)
      case 'figure':
        return [figureFlow(piece, setting, headBefore(pieces, i, setting))]
      case 'blanks':
        return [blanksFlow(piece, setting)]
      case 'page':
        return [NEXT_PAGE]
    }
  })
