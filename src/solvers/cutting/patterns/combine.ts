import { madeBy } from './groups'
import type { Group, Measures, Work } from './groups'

/*
 * Two patterns made one and three made two, with the same pieces from the same boards. H. Foerster, G. Waescher, "Pattern reduction in
 * one-dimensional cutting stock problems", International Journal of Production Research 38 (2000), from memory.
 */

/** So many boards of a stock, all to be cut alike. */
interface Lot {
  readonly stock: number
  readonly times: number
}

const MOST_BRANCHES = 300

/** Whether all pieces come out even on so many boards alike, and fit. */
const intoOne = (
  made: readonly number[],
  { stock, times }: Lot,
  { sizes, rooms }: Measures,
): Group | undefined => {
  let free = rooms[stock] ?? 0
  for (const [piece, count] of made.entries()) {
    if (count % times !== 0) return undefined
    free -= (count / times) * (sizes[piece] ?? 0)
  }
  return free < 0 ? undefined : { stock, times, counts: made.map((count) => count / times) }
}

/** One kind of piece on two lots: the ways of parting its number, by how many go on one board of the first. */
interface Shares {
  readonly piece: number
  readonly size: number
  readonly ways: readonly number[]
}

/** All on one of the two first: such a way sets the stop less often. */
const sharesOf = (
  made: readonly number[],
  first: Lot,
  second: Lot,
  { sizes, rooms }: Measures,
): Shares[] | undefined => {
  const all: Shares[] = []
  for (const [piece, count] of made.entries()) {
    if (count === 0) continue
    const size = sizes[piece] ?? 0
    const most = Math.min(Math.floor(count / first.times), Math.floor((rooms[first.stock] ?? 0) / size))
    const mostOther = Math.floor((rooms[second.stock] ?? 0) / size)
    const ways: number[] = []
    for (let on = most; on >= 0; on -= 1) {
      const rest = count - on * first.times
      if (rest % second.times !== 0 || rest / second.times > mostOther) continue
      if (on === 0 || rest === 0) ways.unshift(on)
      else ways.push(on)
    }
    if (ways.length === 0) return undefined
    all.push({ piece, size, ways })
  }
  return all
}

/**
 * One way for each piece, so that what is on a board of the first lot is at least `least` and at most `most`: depth-first, and a branch is left
 * where the shares still to come can't end between the two.
 */
const choose = (
  shares: readonly Shares[],
  least: number,
  most: number,
  work: Work,
): readonly number[] | undefined => {
  const lows = shares.map(({ size, ways }) => size * Math.min(...ways))
  const highs = shares.map(({ size, ways }) => size * Math.max(...ways))
  const after = (of: readonly number[]): number[] => {
    const sums = [0]
    for (let at = of.length - 1; at >= 0; at -= 1) sums.unshift((sums[0] ?? 0) + (of[at] ?? 0))
    return sums
  }
  const low = after(lows)
  const high = after(highs)
  const chosen: number[] = []
  let branches = 0
  const branch = (at: number, used: number): boolean => {
    branches += 1
    work.left -= 20
    if (used + (low[at] ?? 0) > most || used + (high[at] ?? 0) < least || branches > MOST_BRANCHES)
      return false
    const share = shares[at]
    if (share === undefined) return true
    return share.ways.some((way) => {
      chosen[at] = way
      return branch(at + 1, used + way * share.size)
    })
  }
  return branch(0, 0) ? chosen : undefined
}

/** Pieces parted between two lots, each cut alike. */
const intoTwo = (
  made: readonly number[],
  first: Lot,
  second: Lot,
  measures: Measures,
  work: Work,
): Group[] | undefined => {
  work.left -= 10 * made.length
  const shares = sharesOf(made, first, second, measures)
  if (shares === undefined) return undefined
  const room = measures.rooms[first.stock] ?? 0
  const otherRoom = measures.rooms[second.stock] ?? 0
  const total = shares.reduce((sum, { piece, size }) => sum + size * (made[piece] ?? 0), 0)
  const chosen = choose(
    shares,
    Math.ceil((total - second.times * otherRoom) / first.times),
    Math.min(room, total / first.times),
    work,
  )
  if (chosen === undefined) return undefined
  const counts = made.map(() => 0)
  for (const [at, { piece }] of shares.entries()) counts[piece] = chosen[at] ?? 0
  const others = made.map((count, piece) => (count - first.times * (counts[piece] ?? 0)) / second.times)
  return [
    { ...first, counts },
    { ...second, counts: others },
  ]
}

/** Every way of cutting the boards of three groups in two lots, the greater lot first; a lot is of one stock. */
const lotsOf = (groups: readonly Group[]): (readonly [Lot, Lot])[] => {
  const byStock = new Map<number, number>()
  for (const { stock, times } of groups) byStock.set(stock, times + (byStock.get(stock) ?? 0))
  const stocks = [...byStock].map(([stock, times]) => ({ stock, times })).sort((a, b) => b.times - a.times)
  const [one, other] = stocks
  if (one === undefined || stocks.length > 2) return []
  if (other !== undefined) return [[one, other]]
  return Array.from({ length: one.times >> 1 }, (_, i) => [
    { stock: one.stock, times: one.times - 1 - i },
    { stock: one.stock, times: 1 + i },
  ])
}

const twoFromThree = (
  groups: readonly Group[],
  measures: Measures,
  work: Work,
): readonly Group[] | undefined => {
  const made = madeBy(groups, measures.sizes.length)
  for (const [first, second] of lotsOf(groups)) {
    const found = intoTwo(made, first, second, measures, work)
    if (found !== undefined || work.left <= 0) return found
  }
  return undefined
}

const oneFromTwo = (a: Group, b: Group, measures: Measures, work: Work): Group | undefined => {
  work.left -= 10 * measures.sizes.length
  if (a.stock !== b.stock) return undefined
  const lot = { stock: a.stock, times: a.times + b.times }
  return intoOne(madeBy([a, b], measures.sizes.length), lot, measures)
}

/** Groups that one group and some of those before it can be made into, and which those are. */
interface Merged {
  readonly from: readonly Group[]
  readonly into: readonly Group[]
}

const mergedWith = (
  last: Group,
  before: readonly Group[],
  measures: Measures,
  work: Work,
): Merged | undefined => {
  for (const each of before) {
    const one = oneFromTwo(each, last, measures, work)
    if (one !== undefined) return { from: [each, last], into: [one] }
  }
  for (const [at, each] of before.entries())
    for (const other of before.slice(0, at)) {
      const from = [other, each, last]
      const into = twoFromThree(from, measures, work)
      if (into !== undefined) return { from, into }
      if (work.left <= 0) return undefined
    }
  return undefined
}

/** Groups made fewer, two and three at a time, as long as any can be and the work lasts. */
export const combine = (groups: readonly Group[], measures: Measures, work: Work): readonly Group[] => {
  let all = groups
  // All groups before `at` have been tried with each other.
  for (let at = 1; at < all.length && work.left > 0;) {
    const last = all[at]
    const merged = last === undefined ? undefined : mergedWith(last, all.slice(0, at), measures, work)
    if (merged === undefined) at += 1
    else {
      all = [...all.filter((each) => !merged.from.includes(each)), ...merged.into]
      at = Math.max(1, at + 1 - merged.from.length)
    }
  }
  return all
}
