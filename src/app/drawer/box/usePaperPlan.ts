import { useEffect, useMemo } from 'react'
import { findingsOf } from '../../../evaluate/8-checks'
import type { Judged } from '../../../evaluate/evaluation'
import { withProof } from '../../../evaluate/withProof'
import { onPaper } from '../../../sheets/onPaper'
import type { IssuedPlan, PlanOnPaper } from '../../../sheets/sheet'
import type { PlannerState } from '../../../store/planner'
import type { CutList } from '../../../model/cutList'
import { usePlanner, usePlannerState } from '../../../store/react'
import { dayWords, namesOf } from '../../paperNames'
import type { PaperSet } from '../../../sheets/paperSet'

const NONE: readonly CutList[] = []

type Planned = Pick<PlannerState, 'settled' | 'proofs'>

/** The plan that papers are made from: what is settled, never what a drag previews, with the cut lists that screens show. */
const judged = ({ settled, proofs }: Planned): Judged => ({
  ...settled,
  cuts: settled.cuts.map((list) => withProof(list, proofs.get(list.key))),
  findings: findingsOf(settled.bay),
})

/** The day of the last issue as papers write days, not as the file keeps it. */
const issuedInWords = (issued: IssuedPlan): IssuedPlan => ({ ...issued, dateText: dayWords(issued.dateText) })

const inWords = (plan: PlanOnPaper): PlanOnPaper =>
  plan.issued === undefined ? plan : { ...plan, issued: issuedInWords(plan.issued) }

/** The papers of the bay as it now stands. */
export const paperSetOf = (state: Planned & Pick<PlannerState, 'units'>): PaperSet => ({
  plan: inWords(onPaper(judged(state), state.proofs)),
  units: state.units,
  ...namesOf(state.settled.layout),
})

/** Has cut lists of earlier plans proven behind the page for as long as a screen holds them beside the bay. */
export const useProven = (cuts: readonly CutList[]): void => {
  const planner = usePlanner()
  useEffect(() => planner.set({ earlierCuts: cuts }), [planner, cuts])
  // Apart: a better plan makes other lists of the same keys, which must not end the search that found it.
  useEffect(() => () => planner.set({ earlierCuts: NONE }), [planner])
}

/** The same for the plans that were issued, which the papers are held against. */
export const useIssuedProven = ({ issued, since }: PlanOnPaper): void =>
  useProven(useMemo(() => [issued, since].flatMap((each) => each?.was.cuts ?? NONE), [issued, since]))

/** The papers of the bay as it now stands, for a screen, made anew only where the bay, its proofs or the units are others. */
export const usePaperPlan = (): PaperSet => {
  const [settled, proofs, units] = usePlannerState((state) => [state.settled, state.proofs, state.units])
  const now = useMemo(() => judged({ settled, proofs }), [settled, proofs])
  const { dateText, issue } = namesOf(settled.layout)
  return useMemo(
    () => ({ plan: inWords(onPaper(now, proofs)), units, dateText, issue }),
    [now, proofs, units, dateText, issue],
  )
}
