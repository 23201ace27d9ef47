import type { Column, Row, Table } from '../model/table'

/** Between two columns. */
const GAP = '  '
/** A column of words is broken into lines rather than made narrower than this. */
const LEAST_WORDS = 12

/** What a terminal would obey instead of showing, and what would break a line. */
const UNSHOWN = /[\p{Cc}\p{Cf}\u2028\u2029]/gu

/** Words as they can stand on one line of a terminal. */
export const onOneLine = (text: string): string => text.replace(UNSHOWN, ' ').trim()

/** Code points: what a terminal gives a cell of its own, but for marks and pictures that a plan seldom has. */
const lettersIn = (text: string): readonly string[] => Array.from(text)

export const widthOf = (text: string): number => lettersIn(text).length

const pieceFrom = (word: string, width: number): string[] => {
  const letters = lettersIn(word)
  const pieces: string[] = []
  for (let at = 0; at < letters.length; at += width) pieces.push(letters.slice(at, at + width).join(''))
  return pieces
}

/** Words in lines of at most `width` letters, broken between words; a longer word is broken where it must be. */
export const wrapped = (text: string, width: number): readonly string[] => {
  const lines: string[] = []
  let line = ''
  for (const word of onOneLine(text)
    .split(/ +/)
    .flatMap((long) => pieceFrom(long, width))) {
    if (line !== '' && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}

interface Laid {
  readonly column: Column
  readonly heads: string
  readonly texts: readonly string[]
  readonly widest: number
}

const laidOut = ({ columns, rows }: Table): readonly Laid[] =>
  columns.map((column, index) => {
    const heads = onOneLine(column.title)
    const texts = rows.map(({ cells }) => onOneLine(cells[index]?.text ?? ''))
    const widest = texts.reduce((most, text) => Math.max(most, widthOf(text)), widthOf(heads))
    return { column, heads, texts, widest }
  })

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0)

/** Widths that fit `most` together: the widest column of words gives way first. Undefined where they can't. */
const fitted = (laid: readonly Laid[], most: number): readonly number[] | undefined => {
  const widths = laid.map(({ widest }) => widest)
  const least = laid.map(({ column, widest }) =>
    column.unit === 'text' ? Math.min(widest, LEAST_WORDS) : widest,
  )
  const room = most - GAP.length * (laid.length - 1)
  if (sum(least) > room) return undefined
  for (let over = sum(widths) - room; over > 0; over -= 1) {
    let widest = -1
    for (const [index, width] of widths.entries())
      if (width > (least[index] ?? 0) && (widest < 0 || width > (widths[widest] ?? 0))) widest = index
    if (widest < 0) return undefined
    widths[widest] = (widths[widest] ?? 0) - 1
  }
  return widths
}

const padded = (text: string, width: number, isNumber: boolean): string => {
  const blank = ' '.repeat(Math.max(0, width - widthOf(text)))
  return isNumber ? `${blank}${text}` : `${text}${blank}`
}

/** One row over as many lines as its longest cell takes. */
const rowLines = (
  texts: readonly string[],
  laid: readonly Laid[],
  widths: readonly number[],
  lead: string,
): readonly string[] => {
  const cells = texts.map((text, index) => wrapped(text, widths[index] ?? 1))
  const tall = cells.reduce((most, { length }) => Math.max(most, length), 1)
  return Array.from({ length: tall }, (_, line) => {
    const across = cells.map((lines, index) =>
      padded(lines[line] ?? '', widths[index] ?? 1, laid[index]?.column.unit !== 'text'),
    )
    return `${line === 0 ? lead : ' '.repeat(lead.length)}${across.join(GAP)}`.trimEnd()
  })
}

const leadOf = ({ isSum }: Pick<Row, 'isSum'>, hasTicks: boolean): string =>
  hasTicks ? (isSum ? '    ' : '[ ] ') : ''

/** A row under its first cell, one line a cell: for a table that is too wide for its columns to stand side by side. */
const stacked = ({ columns, rows }: Table, width: number, hasTicks: boolean): readonly string[] => {
  const names = columns.reduce((most, { title }) => Math.max(most, widthOf(title)), 0)
  return rows.flatMap((row) => {
    const lead = leadOf(row, hasTicks)
    const lines = columns.flatMap(({ title }, index) => {
      const text = onOneLine(row.cells[index]?.text ?? '')
      const name = padded(onOneLine(title), names, false)
      const room = Math.max(LEAST_WORDS, width - lead.length - names - GAP.length)
      return text === ''
        ? []
        : wrapped(text, room).map((line, at) => `${at === 0 ? name : ' '.repeat(names)}${GAP}${line}`)
    })
    return [...lines.map((line, at) => `${at === 0 ? lead : ' '.repeat(lead.length)}${line}`), '']
  })
}

/** A table in lines of at most `width` letters: numbers to the right, words to the left and broken where they must be. */
export const tableLines = (table: Table, width: number, hasTicks = false): readonly string[] => {
  const laid = laidOut(table)
  const lead = hasTicks ? '    ' : ''
  const widths = fitted(laid, width - lead.length)
  if (widths === undefined) return stacked(table, width, hasTicks)
  return [
    ...rowLines(
      laid.map(({ heads }) => heads),
      laid,
      widths,
      lead,
    ),
    `${lead}${widths.map((each) => '-'.repeat(each)).join(GAP)}`,
    ...table.rows.flatMap((row, at) =>
      rowLines(
        laid.map(({ texts }) => texts[at] ?? ''),
        laid,
        widths,
        leadOf(row, hasTicks),
      ),
    ),
  ]
}
