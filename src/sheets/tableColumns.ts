import { textWidth, wrapped } from '../drawing/lettering'
import type { Column, Table } from '../model/table'
import { LETTERS } from './ink'
import type { Lettering } from './letterSizes'

/** Main columns are lettered this much larger than the rest, so that they are read from further. */
export const MAIN_LARGER = 1.35
/** Bare paper at either side of a cell. */
export const CELL_PAD_MM = 1.6
/** Width of the column of boxes to tick. */
export const TICK_COLUMN_MM = 7.5
/** A table is spread at most this much, so that the eye finds its line. */
const MOST_SPREAD = 1.3

/** Between tables that stand beside each other. */
export const GUTTER_MM = 8
const MOST_BESIDE = 3
/** Fewer rows than these are one table however narrow. */
export const LEAST_BESIDE = 12

/** How a table comes out on a width of paper, mm. */
export interface ColumnFit {
  readonly letterMm: number
  readonly widthsMm: readonly number[]
  /** How many runs of its rows stand beside each other, so that a narrow table does not waste the paper. */
  readonly beside: number
}

interface ColumnNeed {
  /** The longest word. */
  readonly leastMm: number
  /** Reads well. */
  readonly easyMm: number
  /** Every cell in one line. */
  readonly wholeMm: number
}

export const headLetterMm = (letterMm: number): number => Math.max(LETTERS.least, letterMm * 0.85)

export const cellLetterMm = (column: Column, letterMm: number): number =>
  column.isMain ? letterMm * MAIN_LARGER : letterMm

/** Numbers stand under each other by their last digit. */
export const isNumbers = ({ unit }: Column): boolean => unit !== 'text'

const widestWord = (text: string, letterMm: number): number =>
  Math.max(0, ...wrapped(text, letterMm, 0).map((word) => textWidth(word, letterMm)))

const widest = (texts: Iterable<string>, width: (text: string) => number): number => {
  let most = 0
  for (const text of texts) most = Math.max(most, width(text))
  return most
}

const needOf = (
  column: Column,
  texts: ReadonlySet<string>,
  { letterMm, wordsEms }: Lettering,
): ColumnNeed => {
  const cellMm = cellLetterMm(column, letterMm)
  const headMm = headLetterMm(letterMm)
  const pad = 2 * CELL_PAD_MM
  const wholeMm = widest(texts, (text) => textWidth(text, cellMm))
  const wordMm = Math.max(
    widestWord(column.title, headMm),
    widest(texts, (text) => widestWord(text, cellMm)),
  )
  const readMm = isNumbers(column) ? wholeMm : Math.min(wholeMm, wordsEms * letterMm)
  const easyMm = Math.max(wordMm, readMm, textWidth(column.title, headMm) * 0.55)
  return { leastMm: wordMm + pad, easyMm: easyMm + pad, wholeMm: Math.max(wholeMm, easyMm) + pad }
}

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0)

/** Shares out `spareMm` by how much each could use, never more than it could. */
const given = (widths: readonly number[], wants: readonly number[], spareMm: number): number[] => {
  const wanted = sumOf(wants)
  const share = wanted > 0 ? Math.min(1, spareMm / wanted) : 0
  return widths.map((width, i) => width + (wants[i] ?? 0) * share)
}

const spread = (widths: readonly number[], roomMm: number): number[] => {
  const factor = Math.max(1, Math.min(MOST_SPREAD, roomMm / sumOf(widths)))
  return widths.map((width) => width * factor)
}

/** A table with every text of each of its columns, measured once whatever the paper. */
export interface MeasuredTable {
  readonly table: Table
  readonly ticksMm: number
  readonly texts: readonly ReadonlySet<string>[]
}

const measured = (table: Table, hasTicks: boolean): MeasuredTable => ({
  table,
  ticksMm: hasTicks ? TICK_COLUMN_MM : 0,
  texts: table.columns.map((_, i) => new Set(table.rows.map(({ cells }) => cells[i]?.text ?? ''))),
})

/** Tables of the same columns stand in the same widths wherever they are on a paper. */
export const kindOf = ({ columns }: Table, hasTicks: boolean): string =>
  [hasTicks, ...columns.map(({ key, title }) => `${key} ${title}`)].join('|')

/** All tables of one kind as one. */
export const measuredTogether = (tables: readonly Table[], hasTicks: boolean): MeasuredTable =>
  measured(
    {
      id: '',
      title: '',
      columns: tables[0]?.columns ?? [],
      rows: tables.flatMap(({ rows }) => rows),
    },
    hasTicks,
  )

const needsOf = ({ table, texts }: MeasuredTable, lettering: Lettering): readonly ColumnNeed[] =>
  table.columns.map((column, i) => needOf(column, texts[i] ?? new Set(), lettering))

const besideOf = (rows: number, tableMm: number, widthMm: number): number =>
  rows < LEAST_BESIDE
    ? 1
    : Math.max(1, Math.min(MOST_BESIDE, Math.floor((widthMm + GUTTER_MM) / (tableMm + GUTTER_MM))))

/** Widths at which every column reads well, so lettered; undefined where the paper is too narrow for them. */
export const easyFit = (
  table: MeasuredTable,
  widthMm: number,
  lettering: Lettering,
): ColumnFit | undefined => {
  const needs = needsOf(table, lettering)
  const easy = needs.map(({ easyMm }) => easyMm)
  const beside = besideOf(table.table.rows.length, sumOf(easy) + table.ticksMm, widthMm)
  const roomMm = (widthMm - (beside - 1) * GUTTER_MM) / beside - table.ticksMm
  const spareMm = roomMm - sumOf(easy)
  if (spareMm < 0) return undefined
  const wants = needs.map(({ wholeMm, easyMm }) => wholeMm - easyMm)
  return { letterMm: lettering.letterMm, widthsMm: spread(given(easy, wants, spareMm), roomMm), beside }
}

const tight = (letterMm: number): Lettering => ({ letterMm, wordsEms: 14 })

/** Widths for which cells break between words, or where even that is too wide, within them. */
export const tightFit = (table: MeasuredTable, widthMm: number, letterMm: number): ColumnFit => {
  const needs = needsOf(table, tight(letterMm))
  const roomMm = widthMm - table.ticksMm
  const least = needs.map(({ leastMm }) => leastMm)
  const spareMm = roomMm - sumOf(least)
  if (spareMm < 0)
    return { letterMm, widthsMm: least.map((width) => (width * roomMm) / sumOf(least)), beside: 1 }
  const wants = needs.map(({ easyMm, leastMm }) => easyMm - leastMm)
  return { letterMm, widthsMm: given(least, wants, spareMm), beside: 1 }
}

/** True where no word is broken at those letters. */
export const isTightEnough = (table: MeasuredTable, widthMm: number, letterMm: number): boolean =>
  sumOf(needsOf(table, tight(letterMm)).map(({ leastMm }) => leastMm)) <= widthMm - table.ticksMm

/** Words in lines of a width; a word that is wider is broken between letters, never clipped. */
export const brokenInto = (text: string, letterMm: number, widthMm: number): readonly string[] =>
  wrapped(text, letterMm, widthMm).flatMap((line) => {
    const parts: string[] = []
    let part = ''
    for (const letter of line) {
      if (part !== '' && textWidth(part + letter, letterMm) > widthMm + 1e-6) {
        parts.push(part)
        part = letter
      } else part += letter
    }
    return [...parts, part]
  })
