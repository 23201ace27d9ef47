import type { CuttingPlan } from '../../solvers/cutting/plan'
import type { CuttingProblem } from '../../solvers/cutting/problem'
import type { Proof } from '../../solvers/cutting/proof'

/** Told of each better plan, and each better bound, as it is found. */
export type OnBetter = (proof: Proof) => void

/** What the worker can do for the page. `best` is the best plan known; undefined starts from a first answer. */
export interface CutWorker {
  readonly warm: () => Promise<void>
  readonly prove: (
    problem: CuttingProblem,
    best: CuttingPlan | undefined,
    onBetter: OnBetter,
  ) => Promise<Proof>
}

/** A worker as the page holds it: it can be ended in the middle of its work, and its answers reject where it is lost. */
export interface ProofWorker extends CutWorker {
  readonly end: () => void
}
