import { isAsIssued, issueWords } from '../layout/issues'
import type { Layout } from '../layout/schema'
import type { PaperSet } from '../sheets/paperSet'

/** A day as it stands on a paper: that of an ISO date, or today's. */
export const dayWords = (isoDate?: string): string => {
  const day = isoDate === undefined ? new Date() : new Date(`${isoDate}T12:00:00`)
  return day.toLocaleDateString(undefined, { year: 'numeric', month: 'short', day: 'numeric' })
}

/** How the papers of a layout are called and dated. */
export const namesOf = (layout: Layout): Pick<PaperSet, 'dateText' | 'issue'> => {
  const last = layout.papers.issues.at(-1)
  // A paper bears the day of its issue, and a draft the day on which it is made.
  return { dateText: dayWords(last && isAsIssued(layout) ? last.date : undefined), issue: issueWords(layout) }
}
