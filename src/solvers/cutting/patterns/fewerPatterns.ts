import { compareValues, planOf } from '../plan'
import type { CuttingPlan, Values } from '../plan'
import type { CuttingProblem } from '../problem'
import { combine } from './combine'
import { boardOf, partedOf } from './groups'
import type { Group, Measures, Work } from './groups'
import { refilled } from './repeat'

/** How much a board may waste, in shares of what boards of the plan waste on average. */
const SHARES = [1, 1.25, 1.6, 2, 3, 5] as const

/** How often the stop is set, where each pattern is cut for itself. */
const stopsOf = (groups: readonly Group[]): number =>
  groups.reduce((sum, { counts }) => sum + counts.filter((count) => count > 0).length, 0)

/** Fewer patterns, of as many fewer stops. */
const isSimpler = (these: readonly Group[], those: readonly Group[]): boolean =>
  these.length < those.length || (these.length === those.length && stopsOf(these) < stopsOf(those))

const simplest = (groups: readonly Group[], measures: Measures, budget: number): readonly Group[] => {
  const within = (share: number): Work => ({ left: budget * share })
  let best = combine(groups, measures, within(2 / 5))
  for (const share of SHARES) {
    const filled = refilled(groups, share, measures, within(1 / 20))
    if (filled === undefined || filled.length > groups.length + 2) continue
    const combined = combine(filled, measures, within(1 / 20))
    if (isSimpler(combined, best)) best = combined
  }
  return best
}

const valuesOf = ({ cost, boardCount, boughtTicks }: CuttingPlan): Values => [cost, boardCount, boughtTicks]

/**
 * A plan of the same boards with fewer different patterns, or as many with fewer settings of the stop, as far as is found: each
 * pattern is a page of marks at the saw and each stop a chance to set it wrong. Cost, boards and length bought stay what they are, boards that a
 * rule asks for stay as they are, and no piece is cut shorter than the plan has it somewhere. The very plan where nothing simpler is found.
 *
 * `budget` counts work in steps of some nanoseconds, so that the same plan always gives the same answer.
 */
export const fewerPatterns = (plan: CuttingPlan, problem: CuttingProblem, budget: number): CuttingPlan => {
  const { kept, groups, measures, lengths } = partedOf(plan, problem)
  if (groups.length < 2) return plan
  const best = simplest(groups, measures, budget)
  if (!isSimpler(best, groups)) return plan
  const boards = best.map((group) => boardOf(group, lengths, problem))
  const simpler = planOf([...kept, ...boards], plan.unmade, problem)
  const isEqual = compareValues(valuesOf(simpler), valuesOf(plan)) === 0
  return isEqual && simpler.boards.length <= plan.boards.length ? simpler : plan
}
