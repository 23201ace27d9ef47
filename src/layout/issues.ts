import { setPapers, setSettings } from './bayEdits'
import type { Edited } from './edited'
import { LAST_ISSUE } from './papers'
import type { KeptPlan, Layout, Papers } from './schema'

/** The plan of a layout: all of it but its papers. */
export const planOf = ({ title, house, parts, settings, bench, counter }: Layout | KeptPlan): KeptPlan => ({
  title,
  house,
  parts,
  settings,
  bench,
  counter,
})

/**
 * A plan without what the crew's own work does to it: ticks at the saw, and the number that the next set takes. Papers are not wrong
 * for being worked down.
 */
const withoutWork = (layout: Layout | KeptPlan) => {
  const { settings, bench, ...rest } = planOf(layout)
  return { ...rest, settings: { ...settings, issue: 0 }, measured: bench.measured }
}

/** Whether two plans are one but for what the crew's own work does to them. */
export const isSamePlan = (a: Layout | KeptPlan, b: Layout | KeptPlan): boolean =>
  JSON.stringify(withoutWork(a)) === JSON.stringify(withoutWork(b))

/** Whether the plan is what the last issue was made from. */
export const isAsIssued = (layout: Layout): boolean => {
  const { issued } = layout.papers
  return issued !== null && isSamePlan(issued, layout)
}

/** The number that the next set takes: as the builder has set it, but always above the last. */
export const nextIssue = ({ papers, settings }: Layout): number =>
  Math.max(settings.issue, (papers.issues.at(-1)?.number ?? 0) + 1)

/** The number that papers made now bear, or are a draft of. */
export const issueNumber = (layout: Layout): number =>
  isAsIssued(layout) ? (layout.papers.issues.at(-1)?.number ?? nextIssue(layout)) : nextIssue(layout)

/** What stands in title blocks: the last issue's number while the plan is the one that was issued, else what it is a draft of. */
export const issueWords = (layout: Layout): string => {
  const last = layout.papers.issues.at(-1)
  return last && isAsIssued(layout) ? String(last.number) : `draft of ${nextIssue(layout)}`
}

/** What is said of a set when it is handed out. */
export interface IssueNote {
  /** ISO. */
  readonly date: string
  readonly note: string
  /** Ids of the sheets that the set has. */
  readonly sheets: readonly string[]
}

/** Hands out a numbered set: from now on changes are told against the plan as it is. */
export const issuePapers = (layout: Layout, { date, note, sheets }: IssueNote): Edited => {
  const number = nextIssue(layout)
  const issues = [...layout.papers.issues, { number, date, note: note.trim(), sheets: [...sheets] }]
  const listed = setPapers(layout, { issues })
  if (!listed.ok) return listed
  const { papers } = listed.layout
  const kept: Papers = { ...papers, issued: planOf(layout), before: papers.issued }
  return setSettings({ ...listed.layout, papers: kept }, { issue: Math.min(LAST_ISSUE, number + 1) })
}
