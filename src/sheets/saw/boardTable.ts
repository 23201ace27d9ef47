import type { CutOfStock } from '../../evaluate/sawn/whatsCut'
import type { Board, CutList } from '../../model/cutList'
import { blank, type Cell, counted, said, type Table } from '../../model/table'
import { toTicks, type Units } from '../../units/length'
import { writeStock } from '../../units/writeStock'
import { isCoil, lengthWriter } from '../cutWords'
import { cutSaid } from './boardSaid'
import { boardCut } from './boardCuts'
import { LEAST_KEPT_MM, offcutWords, type OffcutUses } from './offcuts'
import { sawOrder } from './sawOrder'

/** Rests shorter than a thumb are saw dust to everybody, mm. */
const LEAST_TOLD_MM = 25

/** What a board is, in whole words: `12 ft`, `41" leftover`. */
const stockSaid = ({ stockMm, isLeftover }: Board, stock: string, units: Units): string =>
  isLeftover ? `${lengthWriter(stock, units)(stockMm)} leftover` : writeStock(stockMm, units)

const restCell = ({ offcutMm }: Board, stock: string, units: Units): Cell =>
  offcutMm < LEAST_TOLD_MM ? blank() : counted(offcutMm, lengthWriter(stock, units)(offcutMm))

interface Fate {
  readonly cut: CutOfStock
  readonly uses: OffcutUses
}

/** What becomes of the rest of a board. */
const fateSaid = (
  { offcutMm }: Board,
  { stock, problem }: CutList,
  { cut, uses }: Fate,
  units: Units,
): string => {
  if (offcutMm < LEAST_TOLD_MM) return ''
  if (offcutMm < LEAST_KEPT_MM) return isCoil(stock) ? 'next job' : 'waste'
  return `keep: ${offcutWords(offcutMm, { stock, saw: problem.saw }, cut.lines, uses, units)}`
}

/** Names a board by what it is cut into, so that a tick stays with it while other boards change. */
const keyOf = ({ stockMm, isLeftover, pieces }: Board): string =>
  `${toTicks(stockMm)}${isLeftover ? ' leftover' : ''}: ${pieces.map(({ lengthMm, count }) => `${count}x${toTicks(lengthMm)}`).join(' ')}`

/** The boards of one material in the order in which the stop moves least, each with its pieces in order and its rest. */
export const boardTable = (list: CutList, fate: Fate, units: Units): Table => {
  const { stock } = list
  return {
    id: `boards-${stock}`,
    title: isCoil(stock) ? 'Coils, in order' : 'Boards, in the order of the saw',
    columns: [
      { key: 'count', title: `How many`, unit: 'count', isMain: true },
      { key: 'stockMm', title: isCoil(stock) ? 'Coil' : 'Board', unit: 'mm' },
      { key: 'pieces', title: 'Cut off it, in this order', unit: 'text', isName: true },
      { key: 'stops', title: 'Stops', unit: 'count' },
      { key: 'restMm', title: 'Rest', unit: 'mm' },
      { key: 'fate', title: 'What becomes of the rest', unit: 'text' },
    ],
    rows: sawOrder(list).boards.map((board) => {
      const cut = boardCut(board, list)
      return {
        key: keyOf(board),
        cells: [
          counted(board.count),
          counted(board.stockMm, stockSaid(board, stock, units)),
          said(cutSaid(board, list, units)),
          counted(
            cut.kind === 'stops' ? cut.stopsMm.length : 0,
            cut.kind === 'stops' ? `${cut.stopsMm.length}` : '',
          ),
          restCell(board, stock, units),
          said(fateSaid(board, list, fate, units)),
        ],
      }
    }),
  }
}
