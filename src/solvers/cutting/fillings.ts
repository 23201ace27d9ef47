import type { Need } from './demand'
import type { Cut } from './plan'

/** Pieces still to be placed. */
export interface Waiting extends Need {
  left: number
}

/** Pieces of one board, and how often that board can be repeated before one of them runs out. */
export interface Filling {
  /** How many of each piece that waits, in their order; it may end where nothing more goes on. */
  readonly counts: readonly number[]
  /** Infinity where nothing goes on. */
  readonly times: number
  /** Length of the pieces. */
  readonly usedTicks: number
  /** Sizes of the pieces, a kerf each. */
  readonly takenTicks: number
}

/** Fills a room with pieces that wait, longest first in the list; the first that goes on at all is on it. */
export type Fill = (roomTicks: number, waiting: readonly Waiting[]) => Filling

const fillingOf = (counts: readonly number[], waiting: readonly Waiting[]): Filling => {
  let times = Infinity
  let usedTicks = 0
  let takenTicks = 0
  for (let at = 0; at < counts.length; at += 1) {
    const count = counts[at] ?? 0
    const need = waiting[at]
    if (count === 0 || need === undefined) continue
    times = Math.min(times, Math.floor(need.left / count))
    usedTicks += count * need.lengthTicks
    takenTicks += count * need.sizeTicks
  }
  return { counts, times, usedTicks, takenTicks }
}

/** What is cut from a board that is filled so. */
export const cutsOf = ({ counts }: Filling, waiting: readonly Waiting[]): Cut[] =>
  waiting.flatMap(({ piece, lengthTicks }, at) => {
    const count = counts[at] ?? 0
    return count > 0 ? [{ piece, lengthTicks, count }] : []
  })

/** Takes the pieces of so many boards filled alike off those that wait. */
export const take = ({ counts }: Filling, times: number, waiting: readonly Waiting[]): void => {
  for (const [at, need] of waiting.entries()) need.left -= (counts[at] ?? 0) * times
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
const MOST_BRANCHES = 100

/** Depth-first over counts, most of the longest first: the fullest filling that has the first piece that goes on. */
const fullestCounts = (roomTicks: number, waiting: readonly Waiting[]): readonly number[] => {
  const counts = waiting.map(() => 0)
  let best: readonly number[] = counts.slice()
  let leastFree = roomTicks
  let branches = 0
  const nextThatFits = (from: number, free: number): number => {
    let at = from
    while (at < waiting.length && ((waiting[at]?.left ?? 0) === 0 || (waiting[at]?.sizeTicks ?? 0) > free))
      at += 1
    return at
  }
  const branch = (at: number, least: number, free: number): void => {
    branches += 1
    if (free < leastFree) {
      leastFree = free
      best = counts.slice()
    }
    const need = waiting[at]
    if (need === undefined || leastFree === 0 || branches > MOST_BRANCHES) return
    const most = Math.min(need.left, Math.floor(free / need.sizeTicks))
    for (let count = most; count >= least; count -= 1) {
      counts[at] = count
      const left = free - count * need.sizeTicks
      branch(nextThatFits(at + 1, left), 0, left)
    }
    counts[at] = 0
  }
  branch(nextThatFits(0, roomTicks), 1, roomTicks)
  return best
}

export const fillFullest: Fill = (roomTicks, waiting) => fillingOf(fullestCounts(roomTicks, waiting), waiting)
