import { useMemo } from 'react'
import { withProof } from '../evaluate/withProof'
import type { CutList } from '../model/cutList'
import { usePlannerState } from './react'

/** The cut lists of the bay as it stands, each with the best that is proved of it: what every screen shows. */
export const useCutLists = (): readonly CutList[] => {
  const cuts = usePlannerState((state) => state.evaluation.cuts)
  const proofs = usePlannerState((state) => state.proofs)
  return useMemo(() => cuts.map((list) => withProof(list, proofs.get(list.key))), [cuts, proofs])
}
