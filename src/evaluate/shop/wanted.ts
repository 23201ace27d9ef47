import { stockKey, stockOf } from '../../catalogue/stock'
import type { CountLine } from '../../model/countLine'
import type { Board, CutList, StockCount } from '../../model/cutList'
import type { Wanted } from '../../model/shop'
import { feet } from '../../units/length'

/** Boards that are sawn already are paid for: a list of what to buy leaves them out, what the bay costs counts them. */
export type SawnBoards = 'left-out' | 'counted'

const lengthMm = ({ pieces }: Board): number =>
  pieces.reduce((sum, piece) => sum + piece.lengthMm * piece.count, 0)

/** To a millionth of a foot: a coil of 100 ft is 100 ft. */
const inFeet = (mm: number): number => Math.round((mm / feet(1)) * 1e6) / 1e6

/** Feet of pieces that the coils of one length give. */
const feetFrom = ({ boards }: CutList, stockMm: number): number =>
  inFeet(
    boards
      .filter((board) => !board.isLeftover && board.stockMm === stockMm)
      .reduce((sum, board) => sum + board.count * lengthMm(board), 0),
  )

const counted = ({ bought, sawn }: CutList, boards: SawnBoards): readonly StockCount[] => {
  if (boards === 'left-out' || sawn.length === 0) return bought
  const counts = new Map<number, number>()
  for (const { stockMm, count } of [...bought, ...sawn])
    counts.set(stockMm, count + (counts.get(stockMm) ?? 0))
  return [...counts].map(([stockMm, count]) => ({ stockMm, count }))
}

/** Each length of a stock is a thing of its own. Leftovers are on hand, and not wanted. */
const ofCutList = (list: CutList, boards: SawnBoards): Wanted[] => {
  const isCoil = stockOf(list.stock).form === 'coil'
  return counted(list, boards).map(({ stockMm, count }) => ({
    key: stockKey(list.stock, stockMm),
    title: list.title,
    unit: isCoil ? 'ft' : 'piece',
    needed: isCoil ? feetFrom(list, stockMm) : count,
    inOne: isCoil ? inFeet(stockMm) : 1,
    planned: count,
  }))
}

/** Work such as holes is counted and never bought. */
const ofCount = ({ item, title, count, unit, isWork }: CountLine): Wanted[] =>
  isWork || count <= 0 ? [] : [{ key: item, title, unit, needed: count, inOne: 1, planned: 0 }]

/** All that has to be bought for a bay, each thing once. */
export const wantedOf = (
  cuts: readonly CutList[],
  counts: readonly CountLine[],
  boards: SawnBoards,
): Wanted[] => [...cuts.flatMap((list) => ofCutList(list, boards)), ...counts.flatMap(ofCount)]
