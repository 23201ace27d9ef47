import { labour } from '../shop/labour'
import { shopList } from '../shop/shopList'
import type { Judged } from '../evaluation'

/** What a plan comes to, whatever of it is sawn already. */
export interface PlanSums {
  readonly towers: number
  readonly sites: number
  /** Whole cents before tax: what is built in, and what is paid for it in whole packs with spares. */
  readonly neededCents: number
  readonly boughtCents: number
  /** Things without a price, which are in neither sum. */
  readonly unpriced: number
  readonly hours: number
}

/** The sums of one plan. */
export const planSums = ({ bay, cuts, counts, layout, towers, sites }: Judged): PlanSums => {
  const { totals } = shopList(cuts, counts, layout.counter, 'counted')
  return {
    towers,
    sites,
    neededCents: totals.neededCents,
    boughtCents: totals.boughtCents,
    unpriced: totals.unpriced,
    hours: labour(bay, layout.counter).hours,
  }
}

export interface SumChange {
  readonly key: keyof PlanSums
  readonly before: number
  readonly after: number
}

const KEYS = ['towers', 'sites', 'neededCents', 'boughtCents', 'unpriced', 'hours'] as const

/** Hours differ by rounding where the order of a sum does. */
const SAME = 1e-6

export const sumChanges = (before: Judged, after: Judged): readonly SumChange[] => {
  const [was, is] = [planSums(before), planSums(after)]
  return KEYS.filter((key) => Math.abs(is[key] - was[key]) > SAME).map((key) => ({
    key,
    before: was[key],
    after: is[key],
  }))
}
