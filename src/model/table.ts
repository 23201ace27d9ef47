/** What a column's numbers are: the unit of `Cell.value` in files that programs read. */
export type ValueUnit =
  | 'mm'
  | 'mm/m'
  | 'L'
  | 'L/h'
  | 'L/min'
  | 'm/s'
  | 'W'
  | 'min'
  | 'h'
  | 'cents'
  | 'count'
  | 'share'
  | 'kg'
  | 'N'
  | 'MPa'
  | 'N·mm'
  | 'ratio'
  | 'text'

/** A column of a crew's table. */
export interface Column {
  /** Name of the field in files that programs read: stable, with its unit, such as `cutMm`. */
  readonly key: string
  /** As the crew reads it, short. */
  readonly title: string
  readonly unit: ValueUnit
  /** Read first and from furthest: lettered large. */
  readonly isMain?: boolean
  /** What a row is called by where it is spoken of apart from its table; else by the first thing that it says. */
  readonly isName?: boolean
}

/** What stands in a cell: the value for programs, in the unit of its column, and the words for the reader of that sheet. */
export interface Cell {
  /** null: there is none, such as a price that nobody has asked. Never 0 for that. */
  readonly value: number | string | null
  readonly text: string
}

export interface Row {
  /** Stays the same while the row is about the same thing: ticks and change notes go by it. */
  readonly key: string
  /** One for each column. */
  readonly cells: readonly Cell[]
  /** A sum under the rows, which nobody ticks. */
  readonly isSum?: boolean
}

/** One table of a paper, in words and in numbers. */
export interface Table {
  /** Names the table in files: stable, such as `pegs`. */
  readonly id: string
  readonly title: string
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
}

/** A cell of words alone. */
export const said = (text: string): Cell => ({ value: text, text })

/** A cell of a number and how the reader reads it. */
export const counted = (value: number, text: string = String(value)): Cell => ({ value, text })

/** A cell that nothing is known for. */
export const blank = (text = ''): Cell => ({ value: null, text })

/** Sums of floats end in noise, which no program should have to compare: a millionth of a mm or of a cent is nothing. */
const SCALE = 1e6

/** A value as programs are given it. */
export const clean = (value: number): number => Math.round(value * SCALE) / SCALE + 0
