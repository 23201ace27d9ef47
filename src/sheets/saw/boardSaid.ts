import type { LineState } from '../../evaluate/sawn/whatsCut'
import type { Board, CutList } from '../../model/cutList'
import { toTicks, type Units } from '../../units/length'
import { isCoil, lengthWriter, ranOutWords, tooLongWords } from '../cutWords'
import { boardCut } from './boardCuts'
import { LEAST_KEPT_MM } from './offcuts'
import { piecesWords } from './sawWords'

/** How a board is cut and its pieces in order, without what is left of it. */
export const cutSaid = (board: Board, list: CutList, units: Units): string => {
  const cut = boardCut(board, list)
  const pieces = piecesWords(board.pieces, list.stock, units)
  if (cut.kind === 'whole') return `${pieces}, whole`
  if (cut.kind === 'equal-parts')
    return `${cut.parts === 2 ? 'halve on the middle mark' : `part on marks in ${cut.parts}`}: ${pieces}`
  return pieces
}

/** How a board is cut, its pieces in order and its offcut. */
export const boardSaid = (board: Board, list: CutList, units: Units): string => {
  const pieces = cutSaid(board, list, units)
  const { offcutMm } = board
  if (boardCut(board, list).kind !== 'stops' || offcutMm < LEAST_KEPT_MM) return pieces
  const write = lengthWriter(list.stock, units)
  return `${pieces}; ${isCoil(list.stock) ? 'left on the coil' : 'keep the offcut of'} ${write(offcutMm)}`
}

const isLine = ({ line }: LineState, lengthMm: number): boolean => line.lengthTicks === toTicks(lengthMm)

/** Why the boards do not make these pieces, if they don't. */
export const lackWords = (state: LineState, { stock, tooLong, ranOut }: CutList): string => {
  if (tooLong.some(({ lengthMm }) => isLine(state, lengthMm))) return tooLongWords(stock)
  return ranOut.some(({ lengthMm }) => isLine(state, lengthMm)) ? ranOutWords(stock) : ''
}
