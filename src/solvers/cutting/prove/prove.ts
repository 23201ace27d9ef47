import { fewerPatterns } from '../patterns/fewerPatterns'
import { madeBy } from '../plan'
import type { CuttingPlan, Unmade } from '../plan'
import { requireWhole } from '../problem'
import type { CuttingProblem } from '../problem'
import type { Proof } from '../proof'
import { NONE, provenOf, solveReading, solveReadings, taskOf } from './readings'
import type { ProveOptions } from './readings'

/** A second or two of work. */
const BUDGET = 1.5e9

/** Pieces set aside, and the problem without them. */
interface Cutback {
  readonly problem: CuttingProblem
  readonly unmade: readonly Unmade[]
}

/** Part of the work that goes into asking once whether the boards make more pieces. */
const ASKING_SHARE = 1 / 20

/** Part of the work that goes into fewer different patterns once the boards are chosen. */
const PATTERNS_SHARE = 1 / 75

const makes = async (
  problem: CuttingProblem,
  unmade: readonly Unmade[],
  budget: number,
): Promise<boolean> => {
  const work = { left: budget * ASKING_SHARE }
  const proof = await solveReading(
    undefined,
    taskOf(madeBy({ unmade }, problem), 'least', unmade, NONE),
    work,
    {},
  )
  return proof !== undefined
}

/** The least of a line that has to stand aside, the other lines as they are: found by halving, since fewer pieces always fit. */
const leastAside = async (
  problem: CuttingProblem,
  unmade: readonly Unmade[],
  line: Unmade,
  budget: number,
): Promise<number> => {
  const others = unmade.filter((each) => each !== line)
  let fits = line.count
  for (let low = 0; low < fits;) {
    const count = (low + fits) >> 1
    if (
      await makes(
        problem,
        [...others, { ...line, count }].filter((each) => each.count > 0),
        budget,
      )
    )
      fits = count
    else low = count + 1
  }
  return fits
}

/** As few pieces aside as the boards allow, line by line as the first plan has them, longest first. */
const cutbackOf = async (problem: CuttingProblem, first: CuttingPlan, budget: number): Promise<Cutback> => {
  let unmade = first.unmade
  for (const line of first.unmade) {
    if (line.why === 'too-long') continue
    const count = await leastAside(problem, unmade, line, budget)
    unmade = unmade.flatMap((each) => (each !== line ? [each] : count > 0 ? [{ ...line, count }] : []))
  }
  return { problem: madeBy({ unmade }, problem), unmade }
}

const isSame = (these: readonly Unmade[], those: readonly Unmade[]): boolean =>
  these.length === those.length && these.every(({ count }, i) => count === those[i]?.count)

/**
 * The best plan of a problem and what is proved of it, starting from a plan that is known. Where that one leaves pieces unmade for
 * want of boards, it is first tried how many of them can be made after all; the proof is then among the plans that make what this
 * plan makes. Of plans as good it is one with few different patterns, as far as is found.
 *
 * The same problem, plan and budget always give the same answer. Rejects with a RangeError where a number of the problem is not
 * whole.
 */
export const prove = async (
  problem: CuttingProblem,
  first: CuttingPlan,
  options: ProveOptions = {},
): Promise<Proof> => {
  requireWhole(problem)
  const budget = options.budget ?? BUDGET
  const cutback = await cutbackOf(problem, first, budget)
  const known = isSame(cutback.unmade, first.unmade) ? first : undefined
  const proof = await solveReadings(known, cutback.problem, cutback.unmade, { left: budget }, options)
  if (proof === undefined) return { plan: first, bound: 0, proven: provenOf([]) }
  return { ...proof, plan: fewerPatterns(proof.plan, cutback.problem, budget * PATTERNS_SHARE) }
}
