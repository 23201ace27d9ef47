import { stockOf } from '../../catalogue/stock'
import type { CutList, StockCount } from '../../model/cutList'

/** What one bay buys less than another, over all its cut lists. */
export interface Saved {
  /** Boards and sticks; coils are cut from and kept. */
  readonly boards: number
  /** Length of boards and sticks, by what they are called, mm. */
  readonly lengthMm: number
  /** Whole cents; undefined where a length has no price. */
  readonly cents: number | undefined
}

const NONE: readonly StockCount[] = []

const sum = (counts: readonly StockCount[], of: (each: StockCount) => number): number =>
  counts.reduce((total, each) => total + of(each), 0)

const countIn = (counts: readonly StockCount[]): number => sum(counts, ({ count }) => count)
const lengthIn = (counts: readonly StockCount[]): number => sum(counts, (each) => each.count * each.stockMm)

const isStick = ({ stock }: CutList): boolean => stockOf(stock).form === 'stick'

const plus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a + b

/** Cents that a list costs less than another of the same stock; a list that is not there costs nothing. */
const centsLess = (before: CutList | undefined, after: CutList | undefined): number | undefined =>
  plus(before ? before.cents : 0, after ? (after.cents === undefined ? undefined : -after.cents) : 0)

/** What is saved from one bay's lists to another's; lists that stayed as they are cancel, whether they have prices or not. */
export const savedBetween = (before: readonly CutList[], after: readonly CutList[]): Saved => {
  const stocks = new Set([...before, ...after].map(({ stock }) => stock))
  let saved: Saved = { boards: 0, lengthMm: 0, cents: 0 }
  for (const stock of stocks) {
    const was = before.find((list) => list.stock === stock)
    const is = after.find((list) => list.stock === stock)
    if (was?.key === is?.key) continue
    const counts = [was, is].map((list) => (list && isStick(list) ? list.bought : NONE))
    const [had = NONE, has = NONE] = counts
    saved = {
      boards: saved.boards + countIn(had) - countIn(has),
      lengthMm: saved.lengthMm + lengthIn(had) - lengthIn(has),
      cents: plus(saved.cents, centsLess(was, is)),
    }
  }
  return saved
}

/** Whether it is worth doing: cheaper, or less to buy where nobody knows the price, and never more boards to carry. */
export const isWorthIt = ({ boards, lengthMm, cents }: Saved): boolean =>
  boards >= 0 && (cents === undefined ? lengthMm > 0 : cents > 0)
