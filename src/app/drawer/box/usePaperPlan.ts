import { useMemo } from 'react'
import { findingsOf } from '../../../evaluate/8-checks'
import { withProof } from '../../../evaluate/withProof'
import type { PlanOnPaper } from '../../../sheets/sheet'
import { usePlannerState } from '../../../store/react'
import type { PaperSet } from './paperSet'

/** The day as it stands on a paper. */
const dayWords = (): string =>
  new Date().toLocaleDateString(undefined, { year: 'numeric', month: 'short', day: 'numeric' })

/** The bay as papers are made from it: what is settled, never what a drag previews, with the cut lists that screens show. */
export const usePaperPlan = (): PaperSet => {
  const [settled, proofs, units] = usePlannerState((state) => [state.settled, state.proofs, state.units])
  const plan = useMemo(
    (): PlanOnPaper => ({
      now: {
        ...settled,
        cuts: settled.cuts.map((list) => withProof(list, proofs.get(list.key))),
        findings: findingsOf(settled.bay),
      },
      issued: undefined,
    }),
    [settled, proofs],
  )
  const { issue } = settled.layout.settings
  const dateText = dayWords()
  return useMemo(() => ({ plan, units, dateText, issue: `${issue}` }), [plan, units, dateText, issue])
}
