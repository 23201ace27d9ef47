import { stockOf } from '../../catalogue/stock'
import { rememberEach } from '../../model/remember'
import { isLumber } from '../cutting/benchStock'
import type { Evaluation } from '../evaluation'
import { labour } from './labour'
import { shopLines } from './shopList'

/** What a bay takes in boards, money and hours. */
interface BayTakes {
  readonly boards: number
  /** What is bought, with spares, in whole packs, before tax. */
  readonly cents: number
  /** What is needed of things without a price, by key. */
  readonly unpriced: ReadonlyMap<string, number>
  readonly hours: number
}

/** What a change does to a bay; 0 everywhere where it takes what it took. */
export interface BayChange {
  readonly boards: number
  readonly cents: number
  /** Things without a price of which more or less is needed. */
  readonly unpriced: number
  readonly hours: number
  /** Some of the prices are nobody's quote. */
  readonly isPlaceholder: boolean
}

const boardsIn = ({ cuts }: Evaluation): number =>
  cuts.reduce(
    (sum, { stock, bought }) =>
      isLumber(stockOf(stock)) ? bought.reduce((boards, { count }) => boards + count, sum) : sum,
    0,
  )

interface Counted extends BayTakes {
  /** What is paid for each thing whose price is nobody's quote, by key. */
  readonly invented: ReadonlyMap<string, number>
}

const countedOf = rememberEach<Evaluation, null, Counted>((evaluation) => {
  const { bay, cuts, counts, layout } = evaluation
  const unpriced = new Map<string, number>()
  const invented = new Map<string, number>()
  let cents = 0
  for (const { key, needed, boughtCents, price } of shopLines(cuts, counts, layout.counter, 'counted')) {
    if (boughtCents === undefined) unpriced.set(key, needed)
    else cents += boughtCents
    if (price.isPlaceholder) invented.set(key, boughtCents ?? 0)
  }
  return {
    boards: boardsIn(evaluation),
    cents,
    unpriced,
    invented,
    hours: labour(bay, layout.counter).hours,
  }
})

/** Keys whose numbers differ; one that is missing has 0. */
const differing = (a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): number => {
  let count = 0
  for (const [key, number] of a) if ((b.get(key) ?? 0) !== number) count += 1
  for (const key of b.keys()) if (!a.has(key)) count += 1
  return count
}

/**
 * What an edit does to boards, money and hours. Both bays are taken by the first answer of their cut lists, so that a proof that
 * has come for one of them is no change. What is bought goes in steps of boards and packs, and so does the money.
 */
export const bayChange = (before: Evaluation, after: Evaluation): BayChange => {
  const [was, is] = [countedOf(before, null), countedOf(after, null)]
  return {
    boards: is.boards - was.boards,
    cents: is.cents - was.cents,
    unpriced: differing(was.unpriced, is.unpriced),
    hours: is.hours - was.hours,
    isPlaceholder: differing(was.invented, is.invented) > 0,
  }
}
