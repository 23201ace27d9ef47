import { useMemo } from 'react'
import { findingsOf } from '../../../evaluate/8-checks'
import type { Judged } from '../../../evaluate/evaluation'
import { withProof } from '../../../evaluate/withProof'
import { isAsIssued, issueWords } from '../../../layout/issues'
import { onPaper } from '../../../sheets/onPaper'
import { usePlannerState } from '../../../store/react'
import { dayWords } from './dayWords'
import type { PaperSet } from './paperSet'

/** The bay as papers are made from it: what is settled, never what a drag previews, with the cut lists that screens show. */
export const usePaperPlan = (): PaperSet => {
  const [settled, proofs, units] = usePlannerState((state) => [state.settled, state.proofs, state.units])
  const now = useMemo(
    (): Judged => ({
      ...settled,
      cuts: settled.cuts.map((list) => withProof(list, proofs.get(list.key))),
      findings: findingsOf(settled.bay),
    }),
    [settled, proofs],
  )
  const { layout } = settled
  const last = layout.papers.issues.at(-1)
  // A paper bears the day of its issue, and a draft the day on which it is made.
  const dateText = dayWords(last && isAsIssued(layout) ? last.date : undefined)
  const issue = issueWords(layout)
  return useMemo(() => ({ plan: onPaper(now), units, dateText, issue }), [now, units, dateText, issue])
}
