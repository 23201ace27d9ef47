import { stockOf } from '../../catalogue/stock'
import type { Built } from '../../model/built'
import type { CountGroup, CountLine } from '../../model/countLine'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import { feet } from '../../units/length'
import { countIn, type Tally } from './tally'

/** A stock with the mark, or the role, that its pieces go by. */
export const pieceItem = (stock: string, mark: string): string => `${stock}#${mark}`

/** Stock and mark of an item such as `lumber-2x4#RS-p`; no mark for a stock alone, whatever length of it is named. */
export const stockAndMark = (item: string): readonly [stock: string, mark: string | undefined] => {
  const [stock = '', mark] = item.split('#')
  return [stock.split('@')[0] ?? '', mark]
}

/** Sticks are counted by the piece, pipe and tube by their length, mm. */
const piecesOf = rememberEach<Built, null, Tally>(({ sticks, tubes }) => {
  const tally = new Map<string, number>()
  for (const { stock, mark } of sticks) countIn(tally, pieceItem(stock, mark), 1)
  for (const { stock, role, lengthMm } of tubes) countIn(tally, pieceItem(stock, role), lengthMm)
  return tally
})

const GROUPS: readonly (readonly [string, CountGroup])[] = [
  ['lumber-', 'lumber'],
  ['conduit-', 'conduit'],
  ['gutter-', 'gutter'],
  ['drain-', 'drain'],
]

const groupOf = (stock: string): CountGroup =>
  GROUPS.find(([start]) => stock.startsWith(start))?.[1] ?? 'water'

const lineOf = (item: string, isRun: boolean, sums: Map<PartId, number>): CountLine => {
  const [stock] = stockAndMark(item)
  const inOne = isRun ? feet(1) : 1
  const perPart = new Map([...sums].map(([part, count]) => [part, count / inOne]))
  return {
    item,
    title: stockOf(stock).title,
    group: groupOf(stock),
    count: [...perPart.values()].reduce((sum, count) => sum + count, 0),
    unit: isRun ? 'ft' : 'piece',
    isWork: false,
    perPart,
  }
}

/**
 * What the bay has of every stock, by the mark of its pieces: sticks counted, runs of pipe in feet as they are cut, slack
 * included. What is bought for them say the cut lists; their title is the stock's.
 */
export const pieceLines = (built: readonly Built[]): readonly CountLine[] => {
  const sums = new Map<string, Map<PartId, number>>()
  const runs = new Set<string>()
  for (const each of built) {
    for (const { stock, role } of each.tubes) runs.add(pieceItem(stock, role))
    for (const [item, count] of piecesOf(each, null)) {
      const parts = sums.get(item) ?? new Map<PartId, number>()
      sums.set(item, parts.set(each.part, (parts.get(each.part) ?? 0) + count))
    }
  }
  return [...sums].map(([item, parts]) => lineOf(item, runs.has(item), parts))
}
