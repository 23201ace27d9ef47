import type { Packing, Pattern } from './packing'

/**
 * The most that a room can hold of pieces with prices, for every room at once. Prices are whole numbers, and so are all sums of
 * them here: nothing is rounded.
 */
export interface Knapsack {
  /** The greatest worth of sizes `from` and smaller, each at most as often as it is wanted, in a room. */
  readonly best: (from: number, room: number) => number
  /** Numbers kept: about what the table cost to fill. */
  readonly cells: number
}

/** Beyond so many steps of the longest room a table of all rooms costs more than a list of those that matter. */
const MOST_TABLE_STEPS = 30_000

/** How often a size can be in a room at all. */
const timesIn = (room: number, size: number, wanted: number): number =>
  Math.min(wanted, Math.floor(room / size))

/** One row of the table from the next: with this size as often as it may be. */
const widen = (next: Float64Array, size: number, price: number, wanted: number): Float64Array => {
  const row = next.slice()
  const room = next.length - 1
  if (wanted * size >= room) {
    for (let at = size; at <= room; at += 1) row[at] = Math.max(row[at] ?? 0, (row[at - size] ?? 0) + price)
    return row
  }
  for (let count = 1; count <= wanted; count += 1) {
    const taken = count * size
    const worth = count * price
    for (let at = taken; at <= room; at += 1) {
      const value = (next[at - taken] ?? 0) + worth
      if (value > (row[at] ?? 0)) row[at] = value
    }
  }
  return row
}

const tableKnapsack = (
  sizes: readonly number[],
  wanted: readonly number[],
  prices: readonly number[],
  room: number,
): Knapsack => {
  const rows: Float64Array[] = []
  let row: Float64Array = new Float64Array(room + 1)
  rows[sizes.length] = row
  let cells = 0
  for (let i = sizes.length - 1; i >= 0; i -= 1) {
    const size = sizes[i] ?? 1
    const price = prices[i] ?? 0
    const times = timesIn(room, size, wanted[i] ?? 0)
    if (price > 0 && times > 0) {
      row = widen(row, size, price, times)
      cells += times * size >= room ? room : times * room
    }
    rows[i] = row
  }
  return { best: (from, at) => rows[from]?.[at] ?? 0, cells }
}

/** Fillings of which none is both smaller and worth more than another, smallest first: used steps and worth side by side. */
interface Front {
  readonly used: Float64Array
  readonly worth: Float64Array
}

/** Two fronts laid into one. */
const merged = (a: Front, b: Front): Front => {
  const used = new Float64Array(a.used.length + b.used.length)
  const worth = new Float64Array(used.length)
  let length = 0
  let best = -1
  for (let i = 0, j = 0; i < a.used.length || j < b.used.length;) {
    const isA = j >= b.used.length || (i < a.used.length && (a.used[i] ?? 0) <= (b.used[j] ?? 0))
    const atUsed = (isA ? a.used[i] : b.used[j]) ?? 0
    const atWorth = (isA ? a.worth[i] : b.worth[j]) ?? 0
    if (isA) i += 1
    else j += 1
    if (atWorth <= best) continue
    if (length > 0 && used[length - 1] === atUsed) length -= 1
    used[length] = atUsed
    worth[length] = best = atWorth
    length += 1
  }
  return { used: used.subarray(0, length), worth: worth.subarray(0, length) }
}

/** A front with `times` more of one piece on each filling, as far as the room goes. */
const shifted = ({ used, worth }: Front, times: number, size: number, price: number, room: number): Front => {
  let length = used.length
  while (length > 0 && (used[length - 1] ?? 0) + times * size > room) length -= 1
  return {
    used: used.subarray(0, length).map((each) => each + times * size),
    worth: worth.subarray(0, length).map((each) => each + times * price),
  }
}

/** A count as sums of 1, 2, 4 ... and a rest, so that any number up to it is a sum of some of them. */
const bundles = (count: number): number[] => {
  const parts: number[] = []
  for (let left = count, part = 1; left > 0; part *= 2) {
    parts.push(Math.min(part, left))
    left -= Math.min(part, left)
  }
  return parts
}

const lastWithin = ({ used, worth }: Front, room: number): number => {
  let low = 0
  let high = used.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((used[middle] ?? 0) <= room) low = middle + 1
    else high = middle
  }
  return low === 0 ? 0 : (worth[low - 1] ?? 0)
}

const frontKnapsack = (
  sizes: readonly number[],
  wanted: readonly number[],
  prices: readonly number[],
  room: number,
): Knapsack => {
  const fronts: Front[] = []
  let front: Front = { used: new Float64Array(1), worth: new Float64Array(1) }
  fronts[sizes.length] = front
  let cells = 0
  for (let i = sizes.length - 1; i >= 0; i -= 1) {
    const size = sizes[i] ?? 1
    const price = prices[i] ?? 0
    if (price > 0)
      for (const times of bundles(timesIn(room, size, wanted[i] ?? 0))) {
        front = merged(front, shifted(front, times, size, price, room))
        cells += 8 * front.used.length
      }
    fronts[i] = front
  }
  const none = fronts[sizes.length]
  return { best: (from, at) => lastWithin(fronts[from] ?? none ?? front, at), cells }
}

/** For pieces at these prices, wanted at most so often, in any room up to the greatest of the packing. */
export const knapsackOf = (
  { sizes, stocks }: Packing,
  wanted: readonly number[],
  prices: readonly number[],
): Knapsack => {
  const room = Math.max(0, ...stocks.map((stock) => stock.room))
  const make = room <= MOST_TABLE_STEPS ? tableKnapsack : frontKnapsack
  return make(sizes, wanted, prices, room)
}

/** How often size `at` stands on a best filling of a room with sizes from it on. */
const timesAt = (
  knapsack: Knapsack,
  at: number,
  room: number,
  size: number,
  price: number,
  wanted: number,
): number => {
  const worth = knapsack.best(at, room)
  for (let times = 0; times <= wanted; times += 1)
    if (knapsack.best(at + 1, room - times * size) + times * price === worth) return times
  return 0
}

/** How often size `at`, at least once, stands on the best filling of a room with it and smaller ones, and what that is worth. */
const timesLed = (
  knapsack: Knapsack,
  at: number,
  room: number,
  size: number,
  price: number,
  wanted: number,
): readonly [times: number, worth: number] => {
  let best: readonly [number, number] = [0, 0]
  for (let times = 1; times <= wanted; times += 1) {
    const worth = knapsack.best(at + 1, room - times * size) + times * price
    if (worth > best[1]) best = [times, worth]
  }
  return best
}

/** The most that a board of this stock is worth whose longest piece is of size `lead`. */
export const worthLedBy = (
  knapsack: Knapsack,
  lead: number,
  stock: number,
  { sizes, stocks }: Packing,
  wanted: readonly number[],
  prices: readonly number[],
): number => {
  const room = stocks[stock]?.room ?? 0
  const size = sizes[lead] ?? 1
  return timesLed(knapsack, lead, room, size, prices[lead] ?? 0, timesIn(room, size, wanted[lead] ?? 0))[1]
}

/**
 * A filling of the greatest worth for a board of this stock, among those whose longest piece is of size `lead`, if one is named. What room is
 * left over takes pieces of no price, longest first: they cost nothing there.
 */
export const bestPattern = (
  knapsack: Knapsack,
  stock: number,
  { sizes, stocks }: Packing,
  wanted: readonly number[],
  prices: readonly number[],
  lead?: number,
): Pattern => {
  let room = stocks[stock]?.room ?? 0
  const times = sizes.map((size, at) => {
    if (lead !== undefined && at < lead) return 0
    const most = timesIn(room, size, wanted[at] ?? 0)
    const price = prices[at] ?? 0
    const count =
      at === lead
        ? timesLed(knapsack, at, room, size, price, most)[0]
        : timesAt(knapsack, at, room, size, price, most)
    room -= count * size
    return count
  })
  for (const [at, size] of sizes.entries()) {
    const more = timesIn(room, size, (wanted[at] ?? 0) - (times[at] ?? 0))
    times[at] = (times[at] ?? 0) + more
    room -= more * size
  }
  const used = [...times.keys()].filter((at) => (times[at] ?? 0) > 0)
  return { stock, sizes: used, times: used.map((at) => times[at] ?? 0) }
}
