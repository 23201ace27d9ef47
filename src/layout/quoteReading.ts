import { knownPrice } from '../catalogue/priceBook/knownPrice'
import { rowIn } from '../catalogue/priceBook/stockPrices'
import { unguardCell } from '../model/csv'
import type { PriceLayers, PriceRow } from '../model/priceRow'
import { quoted } from './faultWords'
import { columns, type Column, KEY } from './quoteColumns'
import { dateOrderOf, type DateOrder } from './quoteDates'

/** A line of a file of prices, parted into cells, and where it begins. */
export interface SheetLine {
  readonly line: number
  readonly cells: readonly string[]
  /** What is wrong with it before any cell is read, without a full stop. */
  readonly fault?: string
}

/** The layers that a file can be taken into. */
export type OwnLayer = 'book' | 'quotes'

/** What a file would do to a layer; nothing is done yet. */
export interface BookReading {
  readonly layer: OwnLayer
  /** Rows that the layer does not have. */
  readonly added: readonly PriceChange[]
  /** Rows that it has, and would have otherwise. */
  readonly changed: readonly PriceChange[]
  /** How many lines say what stands already; they are not taken. */
  readonly same: number
  /** Lines that are left out, each with what is wrong with it, a sentence. */
  readonly refused: readonly { readonly line: number; readonly why: string }[]
  /** Headings that the price book has no column for. */
  readonly unknownColumns: readonly string[]
  /** How many of the rows had no day, and have today's. */
  readonly dated: number
  /** How many of the rows stand in the book beneath a quote of this job, which holds. */
  readonly covered: number
}

/** What stands now, of whatever layer, and what would. */
export interface PriceChange {
  readonly before: PriceRow
  readonly after: PriceRow
}

const plainName = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/\([^)]*\)/g, '')
    .replaceAll(/[\s_-]+/g, ' ')
    .trim()

const columnOf = (heading: string): Column | undefined =>
  columns.find(({ name }) => name === plainName(heading))

/** `layer` is in a file that was written with all layers, and tells only. */
const TELLS_ONLY = new Set(['layer'])

interface Heading {
  /** By place in the line; undefined for what is not read. */
  readonly columns: readonly (Column | undefined)[]
  readonly unknown: readonly string[]
}

const headingOf = (cells: readonly string[]): Heading => ({
  columns: cells.map(columnOf),
  unknown: cells.filter((cell) => cell.trim() !== '' && !columnOf(cell) && !TELLS_ONLY.has(plainName(cell))),
})

const headingFault = ({ columns: found }: Heading): string | undefined => {
  if (!found.some((column) => column?.name === KEY))
    return 'Its first line has no column “key”, which says what each price is of. Export the price book to see the columns'
  const twice = found.find((column, at) => column && found.indexOf(column) < at)
  if (twice) return `Its first line has the column “${twice.name}” twice`
  return found.some((column) => column?.read) ? undefined : 'It has no column to read besides the key'
}

type Read = { readonly change: PriceChange; readonly isDated: boolean } | { readonly why: string }

interface Context {
  readonly heading: Heading
  readonly dates: DateOrder | undefined
  /** What lies in the layer and under it. */
  readonly layers: PriceLayers
  readonly today: string
}

/** A cell without its guard and the spaces round it. */
const plainCell = (cell = ''): string => unguardCell(cell).trim()

const cellOf = ({ heading }: Context, { cells }: SheetLine, name: string): string =>
  plainCell(cells[heading.columns.findIndex((column) => column?.name === name)])

/** What all cells of a line say together, or the first thing that is wrong with one. */
const changeOf = ({ heading, dates }: Context, { cells }: SheetLine) => {
  let change: Partial<PriceRow> = {}
  for (const [at, column] of heading.columns.entries()) {
    const said = column?.read?.(plainCell(cells[at]), dates)
    if (said && 'fault' in said) return said
    change = { ...change, ...said?.change }
  }
  return { change }
}

const FIELDS = ['name', 'spec', 'group', 'unit', 'pack', 'cents', 'supplier', 'aisle', 'leadDays'] as const
const MORE_FIELDS = ['isWholePack', 'isTaxed', 'isReturnable', 'date', 'note'] as const

const isSameRow = (a: PriceRow, b: PriceRow): boolean =>
  [...FIELDS, ...MORE_FIELDS].every((field) => a[field] === b[field]) &&
  JSON.stringify([a.breaks, a.waste]) === JSON.stringify([b.breaks, b.waste])

/** Whether another price was asked for: what else changes makes no invented price a quote. */
const isRepriced = (before: PriceRow, after: PriceRow): boolean =>
  before.cents !== after.cents || JSON.stringify(before.breaks) !== JSON.stringify(after.breaks)

const cellsWords = (count: number): string => (count === 1 ? '1 cell' : `${count} cells`)

const readLine = (line: SheetLine, context: Context): Read => {
  const { heading, layers, today } = context
  if (line.fault !== undefined) return { why: line.fault }
  if (line.cells.length !== heading.columns.length)
    return {
      why: `it has ${cellsWords(line.cells.length)} where the first line has ${heading.columns.length}`,
    }
  const key = cellOf(context, line, KEY)
  const before = knownPrice(key, layers)?.row
  if (!before) return { why: key === '' ? 'it has no key' : `nothing has the key ${quoted(key)}` }
  const read = changeOf(context, line)
  if ('fault' in read) return { why: read.fault }
  const after = { ...before, ...read.change }
  // A price without a day of its own was asked for today.
  const isDated = read.change.date === undefined && isRepriced(before, after)
  return { change: { before, after: isDated ? { ...after, date: today } : after }, isDated }
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`

/** Every line, the later of two with one key refused. */
const readLines = (lines: readonly SheetLine[], context: Context) => {
  const seen = new Map<string, number>()
  return lines.map((line) => {
    const key = cellOf(context, line, KEY)
    const first = seen.get(key)
    const read: Read =
      first === undefined ? readLine(line, context) : { why: `its key stands in line ${first} already` }
    if (!('why' in read)) seen.set(key, line.line)
    return { line: line.line, read }
  })
}

/** What lies in a layer and under it: a file is read against that. */
const upTo = (layer: OwnLayer, { book, quotes }: PriceLayers): PriceLayers =>
  layer === 'book' ? { book, quotes: [] } : { book, quotes }

/** How a file is to be read. */
export interface ReadingOf {
  readonly layer: OwnLayer
  readonly layers: PriceLayers
  /** ISO date. */
  readonly today: string
}

/**
 * What a file of prices would change, line by line against what stands in the layer and under it. The first line names the columns,
 * in any order; a column that is not there and an empty cell leave what stands, but an empty price is none. A line with
 * anything wrong is left out whole and told of. A fault of the file as a whole is a sentence.
 */
export const readBook = (
  [first, ...lines]: readonly SheetLine[],
  { layer, layers, today }: ReadingOf,
): BookReading | { readonly fault: string } => {
  const heading = headingOf(first?.cells ?? [])
  const fault = first ? headingFault(heading) : 'It is empty'
  if (fault !== undefined) return { fault: `${fault}.` }
  const plain: Context = { heading, dates: undefined, layers: upTo(layer, layers), today }
  const dates = dateOrderOf(lines.map((line) => cellOf(plain, line, 'quote date')))
  const context = { ...plain, dates }
  const read = readLines(lines, context)
  const taken = read.flatMap((each) => ('why' in each.read ? [] : [each.read]))
  const differing = taken.filter(({ change }) => !isSameRow(change.before, change.after))
  const changes = differing.map(({ change }) => change)
  const isHere = ({ after }: PriceChange) => rowIn(layers[layer], after.key) !== undefined
  return {
    layer,
    added: changes.filter((change) => !isHere(change)),
    changed: changes.filter(isHere),
    same: taken.length - changes.length,
    refused: read.flatMap(({ line, read: each }) =>
      'why' in each ? [{ line, why: sentence(each.why) }] : [],
    ),
    unknownColumns: heading.unknown,
    dated: differing.filter(({ isDated }) => isDated).length,
    covered: layer === 'quotes' ? 0 : changes.filter(({ after }) => rowIn(layers.quotes, after.key)).length,
  }
}
