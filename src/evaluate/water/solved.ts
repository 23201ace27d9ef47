import type { Fault, Network, Solution } from '../../solvers/water/network'
import { solve } from '../../solvers/water/solve'
import { bayNetwork } from './bayNetwork'
import type { Plan } from './plan'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** Where pumps, tubes and tables are measured, and the water is at its best known, °C. */
export const STANDARD_C = 20

/** A tenth of what the solver would take for settled, so that where it started from shows in no figure, m. */
const TOLERANCE_M = 1e-6

export interface Solved {
  readonly plan: Plan
  readonly network: Network
  readonly waterC: number
  readonly solution: Solution
}

/** The solution last found: the next bay is usually the same one, a little changed. */
let last: Solution | undefined

/** The flows of a bay, or the sentence that says why there are none. */
export const solvedBay = (plan: Plan, whatIf: WhatIf = AS_DRAWN): Solved | Fault => {
  const network = bayNetwork(plan, whatIf)
  const waterC = whatIf.without?.has('temperature') ? STANDARD_C : (whatIf.waterC ?? plan.settings.waterC)
  const solution = solve(network, { temperatureC: waterC, toleranceM: TOLERANCE_M }, last)
  if (!solution.ok) return solution
  last = solution
  return { plan, network, waterC, solution }
}
