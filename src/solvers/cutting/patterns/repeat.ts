import { madeBy } from './groups'
import type { Group, Measures, Work } from './groups'

/*
 * The same boards filled anew, each pattern as often as it goes: of patterns that waste little enough the one that is repeated most. R. Haessler,
 * "Controlling cutting pattern changes in one-dimensional trim problems", Operations Research 23 (1975), from memory.
 */

const MOST_BRANCHES = 200

/** The fullest that a room can be with no piece oftener than `most`: depth-first, most of the longest first, in the order given. */
const fullest = (
  room: number,
  order: readonly number[],
  most: readonly number[],
  enough: number,
  { sizes }: Measures,
  work: Work,
): { readonly counts: readonly number[]; readonly used: number } => {
  const counts = sizes.map(() => 0)
  let best = { counts: [...counts], used: 0 }
  let branches = 0
  const branch = (at: number, used: number): void => {
    branches += 1
    work.left -= 20
    if (used > best.used) best = { counts: [...counts], used }
    const piece = order[at]
    if (piece === undefined || best.used >= enough || branches > MOST_BRANCHES) return
    const size = sizes[piece] ?? 0
    for (let count = Math.min(most[piece] ?? 0, Math.floor((room - used) / size)); count >= 0; count -= 1) {
      counts[piece] = count
      branch(at + 1, used + count * size)
    }
    counts[piece] = 0
  }
  branch(0, 0)
  return best
}

/** Boards and pieces that are left; changed in place. */
interface Left {
  readonly boards: number[]
  readonly pieces: number[]
}

/** What a board may waste on average of all that are left, so that they do. */
const slackOf = ({ boards, pieces }: Left, { sizes, rooms }: Measures): number => {
  let slack = 0
  let count = 0
  for (const [stock, each] of boards.entries()) {
    slack += each * (rooms[stock] ?? 0)
    count += each
  }
  for (const [piece, each] of pieces.entries()) slack -= each * (sizes[piece] ?? 0)
  return count > 0 ? slack / count : -1
}

/** Numbers of repeats worth a try, greatest first: where one more would want less of some piece. */
const repeatsOf = (most: number, pieces: readonly number[]): number[] => {
  const numbers = new Set<number>([1])
  for (const left of pieces)
    for (let each = 1; each <= 8; each += 1) numbers.add(Math.min(most, Math.floor(left / each)))
  return [...numbers].filter((number) => number > 0).sort((a, b) => b - a)
}

/** The group that is repeated most of those that waste no more than the allowance a board; at the end whatever is fullest. */
const nextGroup = (left: Left, allowance: number, measures: Measures, work: Work): Group | undefined => {
  const order = [...measures.sizes.keys()]
    .filter((piece) => (left.pieces[piece] ?? 0) > 0)
    .sort((a, b) => (measures.sizes[b] ?? 0) - (measures.sizes[a] ?? 0))
  let best: (Group & { readonly waste: number }) | undefined
  for (const [stock, boards] of left.boards.entries()) {
    const room = measures.rooms[stock] ?? 0
    for (const times of boards > 0 ? repeatsOf(boards, left.pieces) : []) {
      if (best !== undefined && times < best.times) break
      const most = left.pieces.map((count) => Math.floor(count / times))
      const { counts, used } = fullest(room, order, most, room, measures, work)
      const waste = room - used
      if (used === 0 || (waste > allowance && times > 1)) continue
      if (best === undefined || times > best.times || waste < best.waste)
        best = { stock, times, counts, waste }
      break
    }
  }
  return best === undefined ? undefined : { stock: best.stock, times: best.times, counts: best.counts }
}

/** As often as the pieces and the boards last. */
const repeated = (group: Group, { boards, pieces }: Left): Group => {
  let times = boards[group.stock] ?? 0
  for (const [piece, count] of group.counts.entries())
    if (count > 0) times = Math.min(times, Math.floor((pieces[piece] ?? 0) / count))
  return { ...group, times }
}

/**
 * The pieces of groups on the same boards in other patterns, each wasting at most `share` times what boards can waste on average;
 * undefined where the boards would not do, or fewer would.
 */
export const refilled = (
  groups: readonly Group[],
  share: number,
  measures: Measures,
  work: Work,
): readonly Group[] | undefined => {
  const left: Left = {
    boards: measures.rooms.map(() => 0),
    pieces: madeBy(groups, measures.sizes.length),
  }
  for (const { stock, times } of groups) left.boards[stock] = (left.boards[stock] ?? 0) + times
  const filled: Group[] = []
  while (left.pieces.some((count) => count > 0)) {
    const slack = slackOf(left, measures)
    const next = slack < 0 || work.left <= 0 ? undefined : nextGroup(left, share * slack, measures, work)
    if (next === undefined) return undefined
    const group = repeated(next, left)
    filled.push(group)
    left.boards[group.stock] = (left.boards[group.stock] ?? 0) - group.times
    for (const [piece, count] of group.counts.entries())
      left.pieces[piece] = (left.pieces[piece] ?? 0) - group.times * count
  }
  return left.boards.every((count) => count === 0) ? filled : undefined
}
