import type { Mark } from '../model/drawing'
import type { Column, Row, Table } from '../model/table'
import { drawnMarks, type Flow, type Taken } from './flow'
import { LEADING, lettered, panel, ruled } from './ink'
import {
  brokenInto,
  CELL_PAD_MM,
  cellLetterMm,
  type ColumnFit,
  GUTTER_MM,
  headLetterMm,
  isNumbers,
  LEAST_BESIDE,
  TICK_COLUMN_MM,
} from './tableColumns'

/** A table that begins at the foot of a page shows at least so many rows there. */
const LEAST_ROWS = 3
const TICK_MM = 4
const FOOT_PAD_MM = 1.4
/** A row is at least so many letters tall: a thumb in a glove finds the line. */
const ROW_LETTERS = 2.35
const LEAST_ROW_MM = 6.2

interface Line {
  readonly text: string
  readonly letterMm: number
}

/** A row with its cells broken into lines. */
interface LaidRow {
  readonly cells: readonly (readonly Line[])[]
  readonly heightMm: number
  readonly isSum: boolean
  /** The rest of a row that no page holds has no box of its own. */
  readonly isRest: boolean
}

/** A table as it lies on one width of paper. */
interface LaidTable {
  readonly title: string
  readonly columns: readonly Column[]
  readonly widthsMm: readonly number[]
  readonly ticksMm: number
  readonly widthMm: number
  readonly rowMm: number
  readonly head: LaidRow
  readonly beside: number
}

const stepOf = (line: Line | undefined): number => (line?.letterMm ?? 0) * LEADING

/** From the top of a row to the foot of its last line: the first line of every cell is centred on the same height. */
const cellHeight = (lines: readonly Line[], rowMm: number): number =>
  lines.length <= 1 ? rowMm : rowMm / 2 + (lines.length - 0.5) * stepOf(lines[0]) + FOOT_PAD_MM

const rowHeight = (cells: readonly (readonly Line[])[], rowMm: number): number =>
  Math.max(rowMm, ...cells.map((lines) => cellHeight(lines, rowMm)))

const linesOf = (text: string, letterMm: number, widthMm: number): readonly Line[] =>
  brokenInto(text, letterMm, widthMm - 2 * CELL_PAD_MM).map((line) => ({ text: line, letterMm }))

const laidRow = (row: Row, table: Pick<LaidTable, 'columns' | 'widthsMm' | 'rowMm'>, letterMm: number) => {
  const cells = table.columns.map((column, i) =>
    linesOf(row.cells[i]?.text ?? '', cellLetterMm(column, letterMm), table.widthsMm[i] ?? 0),
  )
  return {
    cells,
    heightMm: rowHeight(cells, table.rowMm),
    isSum: row.isSum === true,
    isRest: false,
  }
}

const laidHead = (columns: readonly Column[], { letterMm, widthsMm }: ColumnFit): LaidRow => {
  const mm = headLetterMm(letterMm)
  const cells = columns.map(({ title }, i) => linesOf(title, mm, widthsMm[i] ?? 0))
  const lines = Math.max(1, ...cells.map(({ length }) => length))
  return { cells, heightMm: lines * mm * LEADING + 2, isSum: false, isRest: false }
}

const atCell = (table: LaidTable, index: number, left: number): { x: number; anchor: 'start' | 'end' } => {
  const before = table.widthsMm.slice(0, index).reduce((sum, width) => sum + width, left + table.ticksMm)
  const column = table.columns[index]
  if (column === undefined || !isNumbers(column)) return { x: before + CELL_PAD_MM, anchor: 'start' }
  return { x: before + (table.widthsMm[index] ?? 0) - CELL_PAD_MM, anchor: 'end' }
}

const cellMarks = (
  table: LaidTable,
  row: LaidRow,
  left: number,
  firstY: (lines: readonly Line[]) => number,
) =>
  row.cells.flatMap((lines, i) => {
    const { x, anchor } = atCell(table, i, left)
    const y = firstY(lines)
    return lines.map(({ text, letterMm }, n) =>
      lettered(text, { x, y: y - n * letterMm * LEADING }, letterMm, { anchor }),
    )
  })

const across = (table: LaidTable, left: number, y: number, pen: 'outline' | 'dimension'): Mark =>
  ruled({ x: left, y }, { x: left + table.widthMm, y }, pen)

const headMarks = (table: LaidTable, left: number, top: number): Mark[] => {
  const foot = top - table.head.heightMm
  const y = (lines: readonly Line[]) => foot + 1.4 + (lines.length - 0.5) * stepOf(lines[0])
  return [...cellMarks(table, table.head, left, y), across(table, left, foot, 'outline')]
}

const tickBox = (left: number, middle: number): Mark =>
  panel(
    { x0: left + 1, y0: middle - TICK_MM / 2, x1: left + 1 + TICK_MM, y1: middle + TICK_MM / 2 },
    'outline',
    'none',
  )

const rowMarks = (table: LaidTable, row: LaidRow, left: number, top: number): Mark[] => {
  const middle = top - table.rowMm / 2
  const foot = top - row.heightMm
  return [
    ...(row.isSum ? [across(table, left, top - 0.5, 'outline')] : []),
    ...(table.ticksMm > 0 && !row.isSum && !row.isRest ? [tickBox(left, middle)] : []),
    ...cellMarks(table, row, left, () => middle),
    across(table, left, foot, row.isSum ? 'outline' : 'dimension'),
  ]
}

/** How many rows each of the columns of rows beside each other takes at that height, in order. */
const dealt = (rows: readonly LaidRow[], table: LaidTable, heightMm: number): readonly number[] => {
  const counts: number[] = []
  let at = 0
  for (let i = 0; i < table.beside && at < rows.length; i++) {
    let left = heightMm - table.head.heightMm
    const from = at
    for (let row = rows[at]; row !== undefined && row.heightMm <= left + 1e-6; row = rows[at]) {
      left -= row.heightMm
      at++
    }
    counts.push(at - from)
  }
  return counts
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0)

/** The least height at which the rows stand in even columns beside each other. */
const evened = (rows: readonly LaidRow[], table: LaidTable, mostMm: number): number => {
  if (table.beside === 1) return mostMm
  let low = table.head.heightMm
  let high = mostMm
  while (high - low > 0.5) {
    const middle = (low + high) / 2
    if (sumOf(dealt(rows, table, middle)) === rows.length) high = middle
    else low = middle
  }
  return high
}

/** A row too tall for its page, in two: lines that still fit, and the others. */
const parted = (row: LaidRow, table: LaidTable, heightMm: number): readonly [LaidRow, LaidRow] => {
  const most = (lines: readonly Line[]) =>
    Math.max(1, Math.floor((heightMm - table.rowMm / 2 - FOOT_PAD_MM) / (stepOf(lines[0]) || 1) + 0.5))
  const some = (cells: LaidRow['cells'], isRest: boolean): LaidRow => ({
    ...row,
    cells,
    isRest,
    heightMm: rowHeight(cells, table.rowMm),
  })
  return [
    some(
      row.cells.map((lines) => lines.slice(0, most(lines))),
      row.isRest,
    ),
    some(
      row.cells.map((lines) => lines.slice(most(lines))),
      true,
    ),
  ]
}

const CONTINUED_MM = 5.4

/** Said over the head where a table goes on. */
const continuedMarks = (table: LaidTable, left: number, top: number): Mark[] => [
  lettered(`${table.title}, continued`, { x: left, y: top - 2 }, 2.5),
]

/** A sum never stands without a row that it sums. */
const withoutLoneSum = (rows: readonly LaidRow[], count: number): number =>
  count > 1 && count < rows.length && rows[count]?.isSum ? count - 1 : count

const drawnRows = (
  table: LaidTable,
  rows: readonly LaidRow[],
  heightMm: number,
): { heightMm: number; draw: (left: number, top: number) => Mark[] } => {
  const counts = dealt(rows, table, heightMm)
  const starts = counts.map((_, i) => sumOf(counts.slice(0, i)))
  const stacks = counts.map((count, i) => rows.slice(starts[i], (starts[i] ?? 0) + count))
  const tall = stacks.map((stack) => table.head.heightMm + sumOf(stack.map((row) => row.heightMm)))
  return {
    heightMm: Math.max(...tall),
    draw: (left, top) =>
      stacks.flatMap((stack, i) => {
        const x = left + i * (table.widthMm + GUTTER_MM)
        let at = top - table.head.heightMm
        const marks = stack.flatMap((row) => {
          const drawn = rowMarks(table, row, x, at)
          at -= row.heightMm
          return drawn
        })
        return [...headMarks(table, x, top), ...marks]
      }),
  }
}

const rowsFlow = (table: LaidTable, rows: readonly LaidRow[], gapMm: number, isContinued: boolean): Flow => {
  const aboveMm = isContinued && table.title !== '' ? CONTINUED_MM : 0
  const take = (heightMm: number, isForced: boolean): Taken | undefined => {
    const roomMm = heightMm - aboveMm
    const fits = sumOf(dealt(rows, table, roomMm))
    const count = withoutLoneSum(rows, fits)
    if (count < Math.min(LEAST_ROWS, rows.length) && !isForced) return undefined
    if (count === 0) return takeParted(roomMm)
    const shown = rows.slice(0, count)
    const atMm = count === rows.length ? evened(shown, table, roomMm) : roomMm
    return taken(drawnRows(table, shown, atMm), rows.slice(count))
  }
  const takeParted = (roomMm: number): Taken | undefined => {
    const [tall, ...others] = rows
    if (tall === undefined) return undefined
    const [now, later] = parted(tall, table, roomMm - table.head.heightMm)
    const rest = later.cells.some(({ length }) => length > 0) ? [later, ...others] : others
    return taken(drawnRows({ ...table, beside: 1 }, [now], Infinity), rest)
  }
  const taken = ({ heightMm, draw }: ReturnType<typeof drawnRows>, rest: readonly LaidRow[]): Taken => ({
    heightMm: heightMm + aboveMm,
    draw: (left, top) =>
      drawnMarks([...(aboveMm > 0 ? continuedMarks(table, left, top) : []), ...draw(left, top - aboveMm)]),
    ...(rest.length > 0 ? { rest: rowsFlow(table, rest, gapMm, true) } : {}),
  })
  return { gapMm, take }
}

/** A table as it runs over pages, its head on each. */
export const tableFlow = (table: Table, hasTicks: boolean, fit: ColumnFit, gapMm: number): Flow => {
  const ticksMm = hasTicks ? TICK_COLUMN_MM : 0
  const laid: LaidTable = {
    title: table.title,
    columns: table.columns,
    widthsMm: fit.widthsMm,
    ticksMm,
    widthMm: ticksMm + sumOf(fit.widthsMm),
    rowMm: Math.max(LEAST_ROW_MM, fit.letterMm * ROW_LETTERS),
    head: laidHead(table.columns, fit),
    beside: table.rows.length < LEAST_BESIDE ? 1 : fit.beside,
  }
  const rows = table.rows.map((row) => laidRow(row, laid, fit.letterMm))
  return rowsFlow(laid, rows, gapMm, false)
}
