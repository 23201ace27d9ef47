import { shopSheet } from '../../../sheets/shop/shopSheet'
import type { PlannerState } from '../../../store/planner'
import { pagesIn, titleOf } from '../box/paperSet'
import { paperSetOf } from '../box/usePaperPlan'
import { printPages } from '../../files/printPages'

/** Prints the shop list as the crew's set has it. */
export const printShop = (state: PlannerState): Promise<void> => {
  const set = paperSetOf(state)
  return printPages(pagesIn(shopSheet, set), titleOf(set, shopSheet.title))
}
