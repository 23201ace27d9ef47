import type { Need } from './demand'

/** The greatest sum of pieces, sizes with their kerfs, that a room of so many ticks holds, or a little more. */
export type Fullest = (roomTicks: number) => number

/** Branches tried before the whole room is taken for full, which is never too little. */
const MOST_BRANCHES = 400

/** Depth-first over counts, most of the longest piece first: exact unless it runs out of branches. */
const search = (needs: readonly Need[], roomTicks: number): number => {
  let branches = 0
  let best = 0
  const branch = (index: number, filled: number): void => {
    best = Math.max(best, filled)
    branches += 1
    const need = needs[index]
    if (need === undefined || best === roomTicks || branches > MOST_BRANCHES) return
    const most = Math.min(need.count, Math.floor((roomTicks - filled) / need.sizeTicks))
    for (let count = most; count >= 0; count -= 1) branch(index + 1, filled + count * need.sizeTicks)
  }
  branch(0, 0)
  return branches > MOST_BRANCHES ? roomTicks : best
}

/** How full pieces of these sizes and counts can make a room; remembers the rooms it was asked. */
export const fullestOf = (needs: readonly Need[]): Fullest => {
  const known = new Map<number, number>()
  return (roomTicks) => {
    const before = known.get(roomTicks)
    if (before !== undefined) return before
    const found = search(needs, roomTicks)
    known.set(roomTicks, found)
    return found
  }
}
