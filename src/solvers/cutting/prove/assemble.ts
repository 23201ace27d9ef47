import type { Demand, Need } from '../demand'
import { cutBoard } from '../plan'
import type { Cut, CutBoard } from '../plan'
import type { CuttingProblem } from '../problem'
import type { Filled, Pattern } from './packing'
import type { Unpacked } from './packingOf'

/** Needs of one size that are still to be handed out, the first in the list first. */
type Queue = { readonly need: Need; left: number }[]

/** Takes so many pieces off a queue, fewer where it runs out. */
const takeFrom = (queue: Queue, times: number): Cut[] => {
  const cuts: Cut[] = []
  let wanted = times
  for (const each of queue) {
    const count = Math.min(wanted, each.left)
    if (count === 0) continue
    cuts.push({ piece: each.need.piece, lengthTicks: each.need.lengthTicks, count })
    each.left -= count
    wanted -= count
  }
  return cuts
}

const cutsOf = ({ sizes, times }: Pattern, queues: readonly Queue[]): Cut[] =>
  sizes.flatMap((size, i) => takeFrom(queues[size] ?? [], times[i] ?? 0))

/**
 * Fillings read as boards: pieces of each size are handed out in the order of the list, so that each is made once, also where
 * fillings have room for more than are wanted. Boards that get none are not bought.
 */
export const assemble = (
  filled: readonly Filled[],
  { needs, sources }: Unpacked,
  demand: Demand,
  problem: CuttingProblem,
): CutBoard[] => {
  const queues = needs.map((same): Queue => same.map((need) => ({ need, left: need.count })))
  const waiting = new Set(demand.started.keys())
  const boards: CutBoard[] = []
  const place = (pattern: Pattern): void => {
    const cuts = cutsOf(pattern, queues)
    const source = sources[pattern.stock]
    if (cuts.length === 0 || source === undefined) return
    if (source.kind === 'stock') {
      boards.push(cutBoard(source.stock, 1, cuts, problem))
      return
    }
    const at = source.boards.find((board) => waiting.delete(board))
    const started = at === undefined ? undefined : demand.started[at]
    if (started !== undefined) boards.push(cutBoard(started.stock, 1, [...started.cuts, ...cuts], problem))
  }
  for (const { pattern, count } of filled) for (let i = 0; i < count; i += 1) place(pattern)
  for (const at of waiting) {
    const started = demand.started[at]
    if (started !== undefined) boards.push(cutBoard(started.stock, 1, started.cuts, problem))
  }
  return boards
}
