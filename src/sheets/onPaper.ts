import { evaluate } from '../evaluate/evaluate'
import type { Judged } from '../evaluate/evaluation'
import type { Bench } from '../layout/bench'
import { isAsIssued } from '../layout/issues'
import { FORMAT, papersSchema, VERSION, type KeptPlan, type Layout } from '../layout/schema'
import { rememberEach } from '../model/remember'
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

/** Where both plans ask the same of the saw, both are cut by the same boards, so that a proof found since changes no paper. */
const withSameBoards = (was: Judged, now: Judged): Judged => {
  const boards = new Map(now.cuts.map((list) => [list.key, list]))
  return { ...was, cuts: was.cuts.map((list) => boards.get(list.key) ?? list) }
}

/** A plan that was kept, with what is cut by now, and cut by the same boards as the plan that is where both ask the same. */
export const keptBeside = (now: Judged, plan: KeptPlan): Judged =>
  withSameBoards(withWork(plan, now.layout.bench), now)

/** The plan of a set, by how many sets ago it was issued. */
const issueBack = (now: Judged, plan: KeptPlan | null, back: 1 | 2): IssuedPlan | undefined => {
  const { papers } = now.layout
  const issue = papers.issues.at(-back)
  if (issue === undefined || plan === null) return undefined
  return { number: issue.number, dateText: issue.date, was: keptBeside(now, plan) }
}

/** A plan with the last set of papers that was issued of it, and the set before that while nothing has changed since the last. */
export const onPaper = (now: Judged): PlanOnPaper => {
  const { papers } = now.layout
  const issued = issueBack(now, papers.issued, 1)
  const since = isAsIssued(now.layout) ? issueBack(now, papers.before, 2) : undefined
  return { now, issued, ...(since && { since }) }
}
