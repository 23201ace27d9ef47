/**
 * Comma-separated text as RFC 4180 has it, with cells that no sheet takes for a formula. Cells that begin with = + - @, a tab or
 * a line break, or have one of these behind a separator, would be run by a sheet that opens them; an apostrophe before it makes
 * the cell text. Source: OWASP, CSV Injection. Reading takes just that apostrophe off again, so that what was written comes back.
 */

/** What a sheet may take for the start of a formula, its wide forms too; at the start of a cell it may skip white space before it. */
const RUN = '=+\\-@＝＋－＠'
const SKIPPED = '\\t\\r\\n'

/** Where a cell begins, or would for a sheet that parts at another sign, before what would be run there. */
const UNGUARDED = new RegExp(`^(?='*[${RUN}${SKIPPED}])|(?<=[,;${SKIPPED}])(?='*[${RUN}])`, 'g')
const GUARDED = new RegExp(`^'(?='*[${RUN}${SKIPPED}])|(?<=[,;${SKIPPED}])'(?='*[${RUN}])`, 'g')

/** The cell with an apostrophe before whatever could be run. */
export const guardCell = (text: string): string => text.replace(UNGUARDED, "'")

/** A cell as it was before it was guarded; any other as it is. */
export const unguardCell = (text: string): string => text.replace(GUARDED, '')

/** What parts the cells: a comma, or a semicolon where the comma is the decimal sign. */
export type Separator = ',' | ';'

const NEEDS_QUOTES = /[",;\t\r\n]|^\s|\s$/

const cellText = (text: string | number): string => {
  // A number alone is no formula, whatever its sign; with an apostrophe it would be no number any more.
  if (typeof text === 'number') return String(text)
  // One kind of line break in a cell, whatever was pasted into it: readers that turn one kind into another change nothing then.
  const guarded = guardCell(text.replaceAll(/\r\n?/g, '\n'))
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}

/** Tells a sheet that the text is UTF-8. */
const BYTE_ORDER_MARK = '\uFEFF'

/** Lines of cells as a file: UTF-8 with its mark, lines ended by CR LF, line breaks in cells by LF, every cell of words guarded. */
export const csvText = (
  lines: readonly (readonly (string | number)[])[],
  separator: Separator = ',',
): string =>
  `${BYTE_ORDER_MARK}${lines.map((cells) => `${cells.map(cellText).join(separator)}\r\n`).join('')}`
