import type { Fault, Network, Solution } from '../../solvers/water/network'
import { solve } from '../../solvers/water/solve'
import { bayNetwork } from './bayNetwork'
import type { Plan } from './plan'
import { meanOf } from './rowPiece'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** Where pumps, tubes and tables are measured, and the water is at its best known, °C. */
export const STANDARD_C = 20

/** A tenth of what the solver would take for settled, so that where it started from shows in no figure, m. */
const TOLERANCE_M = 1e-6

/** No flow is shown that the solver itself does not believe. */
const UNSETTLED = 'The flows of this bay go to and fro and come to no rest.'

export interface Solved {
  readonly plan: Plan
  readonly network: Network
  readonly waterC: number
  readonly solution: Solution
  /** Mean site level of the open ends of each row, in the order of `plan.rows`, m. */
  readonly outletM: Float64Array
}

interface Kept {
  readonly pipes: number
  readonly mouths: number
  readonly solution: Solution
}

/**
 * The solutions last found, of networks of a few sizes: the next bay is usually the same one, a little changed, or one
 * that it is compared with. They save sweeps and change no figure.
 */
let kept: readonly Kept[] = []
const MOST_KEPT = 4

const isLike = ({ pipes, mouths }: Kept, plan: Plan): boolean =>
  pipes === plan.pipes && mouths === plan.mouths

const keep = (plan: Plan, solution: Solution): void => {
  const others = kept.filter((each) => !isLike(each, plan))
  kept = [{ pipes: plan.pipes, mouths: plan.mouths, solution }, ...others].slice(0, MOST_KEPT)
}

const outletLevels = ({ rows }: Plan, { mouths: { levelM } }: Network): Float64Array =>
  Float64Array.from(rows, ({ mouth, piece }) =>
    meanOf(levelM.subarray(mouth, mouth + piece.mouths.from.length)),
  )

/** The flows of a bay, or the sentence that says why there are none. */
export const solvedBay = (plan: Plan, whatIf: WhatIf = AS_DRAWN): Solved | Fault => {
  const network = bayNetwork(plan, whatIf)
  const waterC = whatIf.without?.has('temperature') ? STANDARD_C : (whatIf.waterC ?? plan.settings.waterC)
  const previous = kept.find((each) => isLike(each, plan))?.solution
  const solution = solve(network, { temperatureC: waterC, toleranceM: TOLERANCE_M }, previous)
  if (!solution.ok) return solution
  if (!solution.isSettled) return { ok: false, sentence: UNSETTLED }
  keep(plan, solution)
  return { plan, network, waterC, solution, outletM: outletLevels(plan, network) }
}
