import { stockOf } from '../../catalogue/stock'
import type { Bench } from '../../layout/bench'
import type { Built } from '../../model/built'
import { rememberEach } from '../../model/remember'
import { fromTicks, inches, toTicks } from '../../units/length'
import { runsOf } from '../cutting/runs'
import type { Judged } from '../evaluation'
import { type CountChange, countChanges } from './counts'

/** Pieces of one stock, one member and one length, cut already or not; hoses to the next 1/4 in. */
export interface PieceChange extends CountChange {
  /** Catalogue key of what it is cut from, and its title. */
  readonly stock: string
  readonly title: string
  /** Member mark of a stick, role of a tube. */
  readonly mark: string
  readonly lengthMm: number
}

/** Counts by stock, then by mark and length in ticks. */
type Tally = ReadonlyMap<string, number>

const keyOf = (stock: string, mark: string, ticks: number): string => `${stock}#${mark}@${ticks}`

/** Nobody cuts a hose closer, and every hose grows a hair where a foot is shimmed. Common practice, no source. */
const HOSE_TICKS = toTicks(inches(1 / 4))

/** As long as the crew cuts it. */
const cutTicks = (stock: string, ticks: number): number =>
  stockOf(stock).form === 'coil' ? Math.ceil(ticks / HOSE_TICKS) * HOSE_TICKS : ticks

const tallyOf = rememberEach<Built, Bench['measured'], Tally>(({ sticks, tubes }, measured) => {
  const tally = new Map<string, number>()
  const count = (stock: string, mark: string, ticks: number, more: number): void => {
    const key = keyOf(stock, mark, ticks)
    if (ticks > 0) tally.set(key, (tally.get(key) ?? 0) + more)
  }
  for (const { stock, mark, lengthMm } of sticks) count(stock, mark, toTicks(lengthMm), 1)
  for (const tube of tubes)
    for (const { lengthTicks, count: more } of runsOf(tube, measured).flat())
      count(tube.stock, tube.role, cutTicks(tube.stock, lengthTicks), more)
  return tally
})

interface Pieces {
  readonly key: string
  readonly stock: string
  readonly title: string
  readonly mark: string
  readonly lengthMm: number
  readonly count: number
}

const readKey = (key: string): Omit<Pieces, 'key' | 'count'> => {
  const [stock = '', mark = '', ticks = ''] = key.split(/[#@]/)
  return { stock, mark, title: stockOf(stock).title, lengthMm: fromTicks(Number(ticks)) }
}

const inOrder = (a: Pieces, b: Pieces): number =>
  Number(a.stock > b.stock) - Number(a.stock < b.stock) ||
  Number(a.mark > b.mark) - Number(a.mark < b.mark) ||
  b.lengthMm - a.lengthMm

const piecesOf = ({ bay, layout }: Judged): readonly Pieces[] => {
  const sums = new Map<string, number>()
  for (const built of [...bay.built, ...bay.joinedPipes])
    for (const [key, count] of tallyOf(built, layout.bench.measured))
      sums.set(key, (sums.get(key) ?? 0) + count)
  return [...sums].map(([key, count]) => ({ key, count, ...readKey(key) })).sort(inOrder)
}

/** Pieces of which one plan has more than the other, by stock, mark and length. */
export const pieceChanges = (before: Judged, after: Judged): readonly PieceChange[] =>
  [...countChanges(piecesOf(before), piecesOf(after))].sort((a, b) =>
    inOrder({ ...a, count: 0 }, { ...b, count: 0 }),
  )
