import { lumbers } from '../catalogue/lumber'
import { stockOf } from '../catalogue/stock'
import type { Board, CutLine, CutList } from '../model/cutList'
import type { Units } from '../units/length'
import { type Writer, writerFor } from '../units/writer'
import { writeStock } from '../units/writeStock'

const lumberKeys: ReadonlySet<string> = new Set(lumbers.map(({ key }) => key))

/** What one length of a material is called at the yard. */
export const unitOfStock = (stock: string): string => {
  if (lumberKeys.has(stock)) return 'board'
  return stockOf(stock).form === 'coil' ? 'coil' : 'stick'
}

/** How the saw hand makes a piece of a line: `halve a 12 ft board`, `whole 10 ft stick`, `measure`. */
export const howCut = ({ cut }: CutLine, stock: string, units: Units): string => {
  if (cut.kind === 'exact') return 'measure'
  const of = `${writeStock(cut.stockMm, units)} ${unitOfStock(stock)}`
  if (cut.kind === 'uncut') return `whole ${of}`
  return cut.parts === 2 ? `halve a ${of}` : `${cut.parts} equal parts of a ${of}`
}

/** `119 x 12 ft + 80 x 10 ft`, longest first. */
export const boughtWords = ({ bought }: CutList, units: Units): string =>
  bought.map(({ stockMm, count }) => `${count} x ${writeStock(stockMm, units)}`).join(' + ')

/** What of the stock is not in a piece: saw dust, offcuts and the ends of coils, per cent. */
const wastePercent = ({ netMm, boughtMm }: CutList): number =>
  boughtMm > 0 ? (1 - netMm / boughtMm) * 100 : 0

/** What is left on a coil is not wasted: it is for the next job. */
export const wasteWords = (list: CutList): string =>
  `${unitOfStock(list.stock) === 'coil' ? 'left on coils' : 'waste'} ${wastePercent(list).toFixed(1)} %`

/** Under half a tick: sums of whole boards differ by less only through rounding. */
const SAME_MM = 1 / 640

/** How near the plan is to the best there can be, without claiming more than is proved. */
export const boundWords = ({ boughtMm, boundMm }: CutList, units: Units): string =>
  boughtMm <= boundMm + SAME_MM
    ? 'No plan buys less.'
    : `A first good plan: it buys ${writeStock(boughtMm, units)}, and no plan can buy less than ${writeStock(boundMm, units)}.`

/** More like pieces than this on one board are written as a number and a length. */
const MOST_SPELLED = 3

const pieceWords = (lengthMm: number, count: number, { onTape }: Writer): string =>
  count > MOST_SPELLED ? `${count} x ${onTape(lengthMm)}` : Array(count).fill(onTape(lengthMm)).join(' | ')

/** Offcuts shorter than a piece of chalk are not worth a word. */
const LEAST_OFFCUT_MM = 25

export const boardWords = ({ stockMm, count, pieces, offcutMm }: Board, units: Units): string => {
  const writer = writerFor(units)
  const cuts = pieces.map((piece) => pieceWords(piece.lengthMm, piece.count, writer)).join(' | ')
  const offcut = offcutMm >= LEAST_OFFCUT_MM ? `, offcut ${writer.onTape(offcutMm)}` : ''
  return `${count} x ${writeStock(stockMm, units)}: ${cuts}${offcut}`
}

const lineText = (line: CutLine, stock: string, units: Units): string =>
  [
    String(line.count).padStart(5),
    writerFor(units).onTape(line.lengthMm).padStart(12),
    ` ${line.marks.join(', ')}`,
    ` (${howCut(line, stock, units)})`,
  ].join(' ')

/** One material's list as plain text, to paste into a message. */
const listText = (list: CutList, units: Units): string =>
  [
    `${list.title}: buy ${boughtWords(list, units)}`,
    ...list.lines.map((line) => lineText(line, list.stock, units)),
    ...list.tooLong.map((line) => `${lineText(line, list.stock, units)} - longer than any stock`),
    ...list.boards.map((board) => `  ${boardWords(board, units)}`),
  ].join('\n')

/** All cut lists as plain text. */
export const cutText = (lists: readonly CutList[], units: Units): string =>
  lists.map((list) => listText(list, units)).join('\n\n')
