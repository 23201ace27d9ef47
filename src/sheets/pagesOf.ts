import { onPaper, type Page } from '../drawing/page'
import {
  orient,
  type Orientation,
  type OrientedPaper,
  papers,
  type PaperFamily,
  type PaperName,
} from '../drawing/paper'
import type { Table } from '../model/table'
import { flowOver, NEXT_PAGE } from './flow'
import { type Furniture, furnitureOf, type Identity, scaleOf } from './furniture'
import { type Lettering, type PaperSizes, sizesOn, TIGHT_LETTERS } from './letterSizes'
import type { Piece } from './piece'
import { flowsOf } from './pieceBlocks'
import type { PlanOnPaper, Sheet, SheetOptions, SheetSize } from './sheet'
import {
  type ColumnFit,
  easyFit,
  isTightEnough,
  kindOf,
  measuredTogether,
  type MeasuredTable,
  tightFit,
} from './tableColumns'

const sizes: Readonly<Record<PaperFamily, Readonly<Record<SheetSize, PaperName>>>> = {
  inch: { small: 'letter', large: 'tabloid', half: 'half-letter', tag: '4x6' },
  metric: { small: 'A4', large: 'A3', half: 'A5', tag: 'A6' },
}

/** The paper that a sheet is made for, of one family. */
export const paperFor = ({ size }: Pick<Sheet, 'size'>, family: PaperFamily): PaperName => sizes[family][size]

const lettersOn = ({ upright, lying }: PaperSizes, orientation: Orientation): readonly Lettering[] =>
  orientation === 'portrait' ? upright : lying

const firstEasy = (table: MeasuredTable, widthMm: number, letters: readonly Lettering[]) => {
  for (const lettering of letters) {
    const fit = easyFit(table, widthMm, lettering)
    if (fit !== undefined) return fit
  }
  return undefined
}

/** In the largest letters in which its columns read well, else with cells broken into lines, at last in the smallest letters. */
const fitted = (table: MeasuredTable, widthMm: number, letters: readonly Lettering[]): ColumnFit => {
  const easy = firstEasy(table, widthMm, letters)
  if (easy !== undefined) return easy
  const letterMm = TIGHT_LETTERS.find((mm) => isTightEnough(table, widthMm, mm)) ?? TIGHT_LETTERS[3]
  return tightFit(table, widthMm, letterMm)
}

interface Laid {
  readonly paper: OrientedPaper
  readonly furniture: Furniture
}

const laidOn = (identity: Identity, name: PaperName, orientation: Orientation): Laid => {
  const paper = orient(papers[name], orientation)
  return { paper, furniture: furnitureOf(identity, paper) }
}

const widthOf = ({ room }: Furniture): number => room.x1 - room.x0

type Kinds = ReadonlyMap<string, MeasuredTable>

/** The tables among pieces, those of the same columns together. */
const kindsIn = (pieces: readonly Piece[]): Kinds => {
  const kinds = new Map<string, { hasTicks: boolean; tables: Table[] }>()
  for (const piece of pieces)
    if (piece.as === 'table' && piece.table.rows.length > 0) {
      const kind = kindOf(piece.table, piece.hasTicks)
      const { tables } = kinds.get(kind) ?? { tables: [] }
      kinds.set(kind, { hasTicks: piece.hasTicks, tables: [...tables, piece.table] })
    }
  return new Map([...kinds].map(([kind, { tables, hasTicks }]) => [kind, measuredTogether(tables, hasTicks)]))
}

/** Upright unless a table reads better lying. */
const wayRound = (kinds: Kinds, identity: Identity, { paper, orientation }: SheetOptions): Laid => {
  if (orientation !== 'auto') return laidOn(identity, paper, orientation)
  const upright = laidOn(identity, paper, 'portrait')
  const letters = lettersOn(sizesOn(paper), 'portrait')
  const isTooWide = [...kinds.values()].some(
    (tables) => firstEasy(tables, widthOf(upright.furniture), letters) === undefined,
  )
  return isTooWide ? laidOn(identity, paper, 'landscape') : upright
}

/** How a table of those kinds comes out on a width of paper. */
const fitter = (kinds: Kinds, widthMm: number, letters: readonly Lettering[]) => {
  const fits = new Map([...kinds].map(([kind, tables]) => [kind, fitted(tables, widthMm, letters)]))
  return (table: Table, hasTicks: boolean): ColumnFit => {
    const fit = fits.get(kindOf(table, hasTicks))
    if (fit === undefined) throw new Error(`table ${table.id} is none of the ${fits.size} kinds of its paper`)
    return fit
  }
}

const identityOf = (sheet: Sheet, { now }: PlanOnPaper, options: SheetOptions): Identity => ({
  bay: now.layout.title,
  place: now.layout.settings.place,
  sheet: `${sheet.title} (${sheet.code})`,
  reader: sheet.reader,
  issue: options.issue,
  dateText: options.dateText,
  units: options.units,
})

/** The pieces of a sheet over as many pages as they need. */
const flowedPages = (sheet: Sheet, plan: PlanOnPaper, options: SheetOptions): readonly Page[] => {
  const pieces = sheet.pieces(plan, options)
  if (pieces.length === 0) return []
  const identity = identityOf(sheet, plan, options)
  const kinds = kindsIn(pieces)
  const { paper, furniture } = wayRound(kinds, identity, options)
  const { room, draw } = furniture
  const letters = lettersOn(sizesOn(paper.name), paper.orientation)
  const flows = flowsOf(pieces, {
    sizes: sizesOn(paper.name),
    widthMm: widthOf(furniture),
    heightMm: room.y1 - room.y0,
    fitOf: fitter(kinds, widthOf(furniture), letters),
  })
  if (flows.every((flow) => flow === NEXT_PAGE)) return []
  const leaves = flowOver(flows, room)
  return leaves.map(({ items, scales }, i) => ({
    title: `${identity.bay}: ${sheet.title}, issue ${options.issue}, page ${i + 1} of ${leaves.length}`,
    paper,
    units: options.units,
    items: [
      {
        marks: draw({ number: i + 1, count: leaves.length, scaleWords: scaleOf(scales) }),
        placement: onPaper,
        isPlain: true,
      },
      ...items,
    ],
  }))
}

/** Every page of a sheet; none where this plan needs no such sheet. */
export const pagesOf = (sheet: Sheet, plan: PlanOnPaper, options: SheetOptions): readonly Page[] =>
  sheet.pages ? sheet.pages(plan, options) : flowedPages(sheet, plan, options)
