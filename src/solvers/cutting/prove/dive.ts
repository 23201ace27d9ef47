import { sumOf, without } from './packing'
import type { Filled, Packing, Pattern, Work } from './packing'
import { isTooFew, relax } from './relaxation'
import type { Pool, Question, Relaxed } from './relaxation'

/** Longest piece first, as many of each as go on. */
const fillFirst = (room: number, wanted: readonly number[], { sizes }: Packing, stock: number): Pattern => {
  let free = room
  const at: number[] = []
  const times: number[] = []
  for (const [size, steps] of sizes.entries()) {
    const count = Math.min(wanted[size] ?? 0, Math.floor(free / steps))
    if (count <= 0) continue
    at.push(size)
    times.push(count)
    free -= count * steps
  }
  return { stock, sizes: at, times }
}

/** How often a pattern can be cut before one of its sizes runs out. */
const repeats = ({ sizes, times }: Pattern, wanted: readonly number[]): number =>
  Math.min(...sizes.map((size, i) => Math.floor((wanted[size] ?? 0) / (times[i] ?? 1))))

/** First-fit decreasing into the boards that there are, shortest boards first; undefined where pieces are left over. */
export const fillGreedily = ({ wanted, boards }: Question, packing: Packing): Filled[] | undefined => {
  const order = [...packing.stocks.keys()].sort(
    (a, b) => (packing.stocks[a]?.room ?? 0) - (packing.stocks[b]?.room ?? 0),
  )
  const filled: Filled[] = []
  let left = wanted
  for (const stock of order)
    for (let on = boards[stock] ?? 0; on > 0;) {
      const pattern = fillFirst(packing.stocks[stock]?.room ?? 0, left, packing, stock)
      if (pattern.sizes.length === 0) break
      const count = Math.min(on, Math.max(1, repeats(pattern, left)))
      filled.push({ pattern, count })
      left = without(left, pattern, count)
      on -= count
    }
  return sumOf(left) === 0 ? filled : undefined
}

/** How a dive ends: with the rest filled at once, or undefined to go on. */
type Finish = (question: Question, packing: Packing) => Filled[] | undefined

/** Ends only once nothing is wanted, where boards are not given but have to be bought. */
export const nothingLeft: Finish = ({ wanted }) => (sumOf(wanted) === 0 ? [] : undefined)

/** What is asked once boards are filled. */
export const after = (question: Question, { pattern, count }: Filled): Question => ({
  ...question,
  wanted: without(question.wanted, pattern, count),
  boards: question.boards.map((each, stock) => (stock === pattern.stock ? each - count : each)),
})

/** Whole boards of an answer in parts; of none, the nearest to a whole, `skip` of the nearest left out. */
const roundedOf = ({ used }: Relaxed, skip: number): Filled[] => {
  const whole = used
    .map(([pattern, count]) => ({ pattern, count: Math.floor(count + 1e-6) }))
    .filter(({ count }) => count > 0)
  if (whole.length > 0 && skip === 0) return whole
  const nearest = used
    .map(([pattern, count]) => ({ pattern, part: count - Math.floor(count + 1e-6), count }))
    .sort((a, b) => b.part - a.part || b.count - a.count)
  const chosen = nearest[skip]
  return chosen === undefined ? [] : [{ pattern: chosen.pattern, count: 1 }]
}

/** Takes what can be taken of the fillings, and what is then asked. */
const taken = (
  question: Question,
  fillings: readonly Filled[],
): { readonly rest: Question; readonly done: Filled[] } => {
  let rest = question
  const done: Filled[] = []
  for (const { pattern, count } of fillings) {
    const most = Math.min(count, rest.boards[pattern.stock] ?? 0, repeats(pattern, rest.wanted))
    if (most <= 0) continue
    done.push({ pattern, count: most })
    rest = after(rest, { pattern, count: most })
  }
  return { rest, done }
}

/**
 * Rounds an answer in parts to whole boards: takes its whole boards, or where there are none the one that is nearest to a
 * whole, and asks again for the rest, until `finish` completes it. `slips` is how often on the way the nearest may be
 * passed over for the next when the nearest comes to nothing. Undefined where no way led to an end.
 */
export const dive = (
  question: Question,
  packing: Packing,
  pool: Pool,
  work: Work,
  slips: number,
  finish: Finish = fillGreedily,
  relaxed = relax(question, packing, pool, work),
): Filled[] | undefined => {
  const finished = finish(question, packing)
  if (finished !== undefined) return finished
  // Out of work half-way: what is taken so far, with the rest filled at once, may still be a better plan.
  if (work.left <= 0) return fillGreedily(question, packing)
  if (relaxed.missing > 1e-6 || isTooFew(relaxed.cut, question.boards)) return undefined
  for (let skip = 0; skip <= slips; skip += 1) {
    const { rest, done } = taken(question, roundedOf(relaxed, skip))
    if (done.length === 0) return undefined
    const found = dive(rest, packing, pool, work, slips - skip, finish)
    if (found !== undefined) return [...done, ...found]
  }
  return undefined
}
