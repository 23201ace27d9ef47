import { lumbers } from '../catalogue/lumber'
import { stockOf } from '../catalogue/stock'
import type { Board, CutLine, CutList, StockCount } from '../model/cutList'
import { inches, type Units } from '../units/length'
import { money } from '../units/money'
import { NO_VALUE } from '../units/writeLength'
import { writerFor } from '../units/writer'
import { writeStock } from '../units/writeStock'

const lumberKeys: ReadonlySet<string> = new Set(lumbers.map(({ key }) => key))

/** What one length of a material is called at the yard. */
export const unitOfStock = (stock: string): string => {
  if (lumberKeys.has(stock)) return 'board'
  return stockOf(stock).form === 'coil' ? 'coil' : 'stick'
}

export const isCoil = (stock: string): boolean => unitOfStock(stock) === 'coil'

/** Longer than any bench: measured off a coil by the long tape, in feet. Common practice, no source. */
const LONG_MM = inches(144)

/** Lengths of a material as they are measured off: along the saw's tape, in inches, but the long ones of a coil in feet. */
export const lengthWriter = (stock: string, units: Units): ((mm: number) => string) => {
  const { length, onTape } = writerFor(units)
  return isCoil(stock) ? (mm) => (mm > LONG_MM ? length(mm) : onTape(mm)) : onTape
}

/** How the saw hand makes a piece of a line: `halve a 12 ft board`, `whole 10 ft stick`, `measure`. */
export const howCut = ({ cut }: CutLine, stock: string, units: Units): string => {
  if (cut.kind === 'exact') return 'measure'
  const of = `${writeStock(cut.stockMm, units)} ${unitOfStock(stock)}`
  if (cut.kind === 'uncut') return `whole ${of}`
  return cut.parts === 2 ? `halve a ${of}` : `${cut.parts} equal parts of a ${of}`
}

/** `119 x 12 ft + 80 x 10 ft`, longest first. */
const countWords = (counts: readonly StockCount[], units: Units): string =>
  counts.map(({ stockMm, count }) => `${count} x ${writeStock(stockMm, units)}`).join(' + ')

export const boughtWords = ({ bought }: CutList, units: Units): string => countWords(bought, units)

/** What the boards to buy cost; a dash where one of their lengths has no price. */
export const costWords = ({ cents }: CutList, currency: string): string =>
  cents === undefined ? NO_VALUE : money(cents, currency)

/** What beside the boards to buy there is to say: leftovers used, what is sawn and cut already, joints of runs. */
export const besideWords = (list: CutList, units: Units): string[] => {
  const { leftovers, sawn, cutAlready, joints } = list
  const cut = cutAlready.reduce((sum, { count }) => sum + count, 0)
  return [
    ...(leftovers.length > 0 ? [`From leftovers: ${countWords(leftovers, units)}.`] : []),
    ...(sawn.length > 0 ? [`Bought and sawn already: ${countWords(sawn, units)}.`] : []),
    ...(cut > 0 ? [`${cut} ${cut === 1 ? 'piece is' : 'pieces are'} cut already.`] : []),
    ...(joints > 0 ? [`${joints} ${joints === 1 ? 'joint' : 'joints'} within runs.`] : []),
  ]
}

/** What of the stock is not in a piece: saw dust, offcuts and the ends of coils, per cent. */
const wastePercent = ({ netMm, boughtMm }: CutList): number =>
  boughtMm > 0 ? (1 - netMm / boughtMm) * 100 : 0

/** What is left on a coil is not wasted: it is for the next job. */
export const wasteWords = (list: CutList): string =>
  `${isCoil(list.stock) ? 'Left on coils' : 'Waste'} ${wastePercent(list).toFixed(1)} %`

/** A share in per cent, rounded up to a tenth, so that what is said to be within it is. */
const percentUp = (share: number): string => `${(Math.ceil(share * 1000 - 1e-9) / 10).toFixed(1)} %`

/** How near the plan is known to be to the cheapest there can be, without claiming more than is proved. */
export const standingWords = ({ standing }: Pick<CutList, 'standing'>): string => {
  if (standing.kind === 'proven') return 'Proven: no plan costs less.'
  return Number.isFinite(standing.share)
    ? `Within ${percentUp(standing.share)} of a bound that no plan can beat.`
    : 'No bound is known that would tell how near this plan is to the cheapest.'
}

/** Why no board makes these pieces. */
export const tooLongWords = (stock: string): string => `longer than any ${unitOfStock(stock)}`

export const ranOutWords = (stock: string): string =>
  `there is not enough of the ${unitOfStock(stock)} that makes them`

/** More like pieces than this on one board are written as a number and a length. */
const MOST_SPELLED = 3

const pieceWords = (length: string, count: number): string =>
  count > MOST_SPELLED ? `${count} x ${length}` : Array(count).fill(length).join(' | ')

/** Offcuts shorter than a piece of chalk are not worth a word. */
const LEAST_OFFCUT_MM = 25

export const boardWords = (board: Board, stock: string, units: Units): string => {
  const { stockMm, isLeftover, count, pieces, offcutMm } = board
  const write = lengthWriter(stock, units)
  const cuts = pieces.map((piece) => pieceWords(write(piece.lengthMm), piece.count)).join(' | ')
  const offcut =
    offcutMm >= LEAST_OFFCUT_MM ? `, ${isCoil(stock) ? 'left on the coil' : 'offcut'} ${write(offcutMm)}` : ''
  const name = `${writeStock(stockMm, units)}${isLeftover ? ' leftover' : ''}`
  return `${count} x ${name}: ${cuts}${offcut}`
}

const lineText = (line: CutLine, stock: string, units: Units): string =>
  [
    String(line.count).padStart(5),
    lengthWriter(stock, units)(line.lengthMm).padStart(12),
    ` ${line.marks.join(', ')}`,
    ` (${howCut(line, stock, units)})`,
  ].join(' ')

/** One material's list as plain text, to paste into a message. */
const listText = (list: CutList, units: Units): string =>
  [
    `${list.title}: buy ${boughtWords(list, units) || 'nothing'}`,
    ...besideWords(list, units),
    ...list.lines.map((line) => lineText(line, list.stock, units)),
    ...list.tooLong.map((line) => `${lineText(line, list.stock, units)} - ${tooLongWords(list.stock)}`),
    ...list.ranOut.map((line) => `${lineText(line, list.stock, units)} - ${ranOutWords(list.stock)}`),
    ...list.boards.map((board) => `  ${boardWords(board, list.stock, units)}`),
  ].join('\n')

/** All cut lists as plain text. */
export const cutText = (lists: readonly CutList[], units: Units): string =>
  lists.map((list) => listText(list, units)).join('\n\n')
