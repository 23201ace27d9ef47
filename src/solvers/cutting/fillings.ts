import type { Need } from './demand'
import type { Cut } from './plan'

/** Pieces still to be placed. */
export interface Waiting extends Need {
  left: number
}

/** Cuts of one board, and how often that board can be repeated before one of its pieces runs out. */
export interface Filling {
  readonly cuts: readonly Cut[]
  readonly times: number
  /** Length of the pieces. */
  readonly usedTicks: number
  /** Sizes of the pieces, a kerf each. */
  readonly takenTicks: number
}

/** Fills a room with pieces that wait, longest first in the list; the first that goes on at all is on it. */
export type Fill = (roomTicks: number, waiting: readonly Waiting[]) => Filling

const fillingOf = (counts: readonly number[], waiting: readonly Waiting[]): Filling => {
  const cuts: Cut[] = []
  let times = Infinity
  let usedTicks = 0
  let takenTicks = 0
  for (const [at, { piece, lengthTicks, sizeTicks, left }] of waiting.entries()) {
    const count = counts[at] ?? 0
    if (count === 0) continue
    cuts.push({ piece, lengthTicks, count })
    times = Math.min(times, Math.floor(left / count))
    usedTicks += count * lengthTicks
    takenTicks += count * sizeTicks
  }
  return { cuts, times, usedTicks, takenTicks }
}

/** Longest piece first, as many of each as go on. */
const greedyCounts = (roomTicks: number, waiting: readonly Waiting[]): number[] => {
  let free = roomTicks
  return waiting.map(({ sizeTicks, left }) => {
    const count = Math.min(left, Math.floor(free / sizeTicks))
    free -= count * sizeTicks
    return count
  })
}

export const fillLongest: Fill = (roomTicks, waiting) => fillingOf(greedyCounts(roomTicks, waiting), waiting)

/** Branches tried before the fullest filling so far is taken. */
const MOST_BRANCHES = 300

/** Depth-first over counts, most of the longest first: the fullest filling that has the first piece that goes on. */
const fullestCounts = (roomTicks: number, waiting: readonly Waiting[]): readonly number[] => {
  const first = waiting.findIndex(({ sizeTicks, left }) => left > 0 && sizeTicks <= roomTicks)
  const smallest = waiting.findLast(({ left }) => left > 0)?.sizeTicks ?? Infinity
  const counts: number[] = []
  let best: readonly number[] = []
  let leastFree = Infinity
  let branches = 0
  const branch = (at: number, free: number): void => {
    branches += 1
    if (free < leastFree) {
      leastFree = free
      best = [...counts]
    }
    const need = waiting[at]
    if (need === undefined || leastFree === 0 || free < smallest || branches > MOST_BRANCHES) return
    const most = Math.min(need.left, Math.floor(free / need.sizeTicks))
    for (let count = most; count >= (at === first ? 1 : 0); count -= 1) {
      counts[at] = count
      branch(at + 1, free - count * need.sizeTicks)
    }
    counts[at] = 0
  }
  if (first < 0) return []
  for (let at = 0; at < first; at += 1) counts[at] = 0
  branch(first, roomTicks)
  return best
}

export const fillFullest: Fill = (roomTicks, waiting) => fillingOf(fullestCounts(roomTicks, waiting), waiting)
