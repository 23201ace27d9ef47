import { expose } from 'comlink'
import { firstPlan } from '../../solvers/cutting/firstPlan'
import { prove } from '../../solvers/cutting/prove/prove'
import type { IntegerSolver } from '../../solvers/cutting/proof'
import type { CutWorker } from './proofWorker'

/** The package that solves integer programs is larger than all else here, and comes when a proof first asks for it. */
const integerSolver: IntegerSolver = async (program) => {
  const { highsSolver } = await import('./highsSolver')
  return highsSolver(program)
}

/** Two 5 ft pieces from 10 ft, in inches: enough to have the search compiled before the first list comes. */
const SMALL = {
  pieces: [{ lengthTicks: 60, count: 2, minusTicks: 0, rule: { kind: 'exact' } }],
  stocks: [{ lengthTicks: 120 }, { lengthTicks: 96 }],
  saw: { kerfTicks: 0, trimTicks: 0 },
} as const

const worker: CutWorker = {
  warm: async () => {
    await prove(SMALL, firstPlan(SMALL), {})
  },
  prove: (problem, best, onBetter) => prove(problem, best ?? firstPlan(problem), { onBetter, integerSolver }),
}

expose(worker)
