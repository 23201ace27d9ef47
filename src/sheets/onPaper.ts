import { evaluate } from '../evaluate/evaluate'
import type { Judged } from '../evaluate/evaluation'
import { withProof } from '../evaluate/withProof'
import type { Bench } from '../layout/bench'
import { isAsIssued } from '../layout/issues'
import { FORMAT, papersSchema, VERSION, type KeptPlan, type Layout } from '../layout/schema'
import { rememberEach } from '../model/remember'
import type { Proof } from '../solvers/cutting/proof'
import type { IssuedPlan, PlanOnPaper } from './sheet'

/** A plan that was kept, as a layout with no papers of its own. */
export const layoutOf = (plan: KeptPlan): Layout => ({
  format: FORMAT,
  version: VERSION,
  ...plan,
  papers: papersSchema.parse({}),
})

/** An earlier plan with what is cut by now: pieces that are sawn since are no change of the plan. */
const withWork = rememberEach<KeptPlan, Bench, Judged>((plan, bench) =>
  evaluate(layoutOf({ ...plan, bench: { ...bench, measured: plan.bench.measured } })),
)

/** What is proved of cut lists, by their keys. */
export type Proofs = ReadonlyMap<string, Proof>

/**
 * Where both plans ask the same of the saw, both are cut by the same boards, so that a proof found since changes no paper; what the
 * earlier plan alone asks is cut as it is proved, or a board would seem to be saved where only the search went further.
 */
const withSameBoards = (was: Judged, now: Judged, proofs: Proofs): Judged => {
  const boards = new Map(now.cuts.map((list) => [list.key, list]))
  return {
    ...was,
    cuts: was.cuts.map((list) => boards.get(list.key) ?? withProof(list, proofs.get(list.key))),
  }
}

/** A plan that was kept, with what is cut by now, and cut by the same boards as the plan that is where both ask the same. */
export const keptBeside = (now: Judged, plan: KeptPlan, proofs: Proofs): Judged =>
  withSameBoards(withWork(plan, now.layout.bench), now, proofs)

/** The plan of a set, by how many sets ago it was issued. */
const issueBack = (
  now: Judged,
  plan: KeptPlan | null,
  back: 1 | 2,
  proofs: Proofs,
): IssuedPlan | undefined => {
  const { papers } = now.layout
  const issue = papers.issues.at(-back)
  if (issue === undefined || plan === null) return undefined
  return { number: issue.number, dateText: issue.date, was: keptBeside(now, plan, proofs) }
}

/**
 * A plan with the last set of papers that was issued of it, and the set before that while nothing has changed since the last. `proofs` are
 * of those earlier plans' cut lists; `now` has its own already.
 */
export const onPaper = (now: Judged, proofs: Proofs = new Map()): PlanOnPaper => {
  const { papers } = now.layout
  const issued = issueBack(now, papers.issued, 1, proofs)
  const since = isAsIssued(now.layout) ? issueBack(now, papers.before, 2, proofs) : undefined
  return { now, issued, ...(since && { since }) }
}
