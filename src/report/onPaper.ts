import { evaluate } from '../evaluate/evaluate'
import type { Judged } from '../evaluate/evaluation'
import { FORMAT, layoutSchema, VERSION, type KeptPlan, type Layout } from '../layout/schema'
import type { IssuedPlan, PlanOnPaper } from '../sheets/sheet'

/** A plan that was kept, as a layout with no papers of its own. */
const layoutOf = (plan: KeptPlan): Layout => layoutSchema.parse({ format: FORMAT, version: VERSION, ...plan })

const planOf = ({ title, house, parts, settings, bench, counter }: KeptPlan): string =>
  JSON.stringify({ title, house, parts, settings, bench, counter })

const lastIssue = ({ papers }: Pick<Layout, 'papers'>): IssuedPlan | undefined => {
  const last = papers.issues.at(-1)
  if (last === undefined || papers.issued === null) return undefined
  return { number: last.number, dateText: last.date, was: evaluate(layoutOf(papers.issued)) }
}

/** A plan with the last set of papers that was issued of it. */
export const onPaper = (now: Judged): PlanOnPaper => ({ now, issued: lastIssue(now.layout) })

/** What stands in the title blocks: the last issue's number while the plan is the one that was issued, else what it is a draft of. */
export const issueWords = ({ papers, ...plan }: Layout): string => {
  const last = papers.issues.at(-1)
  if (last === undefined) return 'draft of 1'
  return papers.issued !== null && planOf(papers.issued) === planOf(plan)
    ? String(last.number)
    : `draft of ${last.number + 1}`
}
