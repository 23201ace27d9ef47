import type { Piece } from './piece'
import { onOneLine, tableLines, widthOf, wrapped } from './textTable'

/** Letters across: what a terminal shows without breaking a line. */
export const TEXT_WIDTH = 96

const underlined = (text: string, line: string): readonly string[] => [text, line.repeat(widthOf(text))]

/** Words with a sign before their first line, and the others under the words. */
const led = (lead: string, text: string, width: number): readonly string[] =>
  wrapped(text, width - lead.length).map((line, at) => `${at === 0 ? lead : ' '.repeat(lead.length)}${line}`)

const CAUTION = '!  '

const pieceLines = (piece: Piece, width: number): readonly string[] => {
  switch (piece.as) {
    case 'heading':
      return underlined(onOneLine(piece.text), piece.level === 1 ? '=' : '-')
    case 'words':
      return led(piece.tone === 'caution' ? CAUTION : '', piece.text, width)
    case 'table':
      return [
        ...wrapped(piece.table.title, width),
        '',
        ...(piece.table.rows.length === 0 ? ['(nothing)'] : tableLines(piece.table, width, piece.hasTicks)),
      ]
    case 'steps':
      return piece.steps.flatMap(({ text, caution }) => [
        ...led('[ ] ', text, width),
        ...(caution === undefined ? [] : led(`    ${CAUTION}`, caution, width)),
      ])
    case 'figure':
      return led('', `(Drawing on the page: ${piece.caption})`, width)
    case 'blanks':
      return piece.labels.map((label) => `${onOneLine(label)}: ____________________`)
    case 'page':
      return []
  }
}

/** Pieces of a paper in plain lines, for a terminal or a message; drawings are named, since a page alone has them. */
export const piecesText = (pieces: readonly Piece[], width = TEXT_WIDTH): string =>
  pieces
    .map((piece) => pieceLines(piece, width))
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n').trimEnd()}\n`)
    .join('\n')
