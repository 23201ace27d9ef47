import type { Words } from '../checks/context'
import type { Judged } from '../evaluate/evaluation'
import { sheetWords } from '../sheets/sheetWords'
import type { Units } from '../units/length'
import { money } from '../units/money'
import { inTrench } from '../units/precision'

/** A plan with the words of whoever reads its report. */
export interface Told {
  readonly plan: Judged
  readonly words: Words
  readonly units: Units
  /** Whole cents in the job's currency. */
  readonly money: (cents: number) => string
}

export const toldOf = (plan: Judged, units: Units): Told => ({
  plan,
  units,
  words: sheetWords(plan, units, inTrench),
  money: (cents) => money(cents, plan.layout.counter.currency),
})
