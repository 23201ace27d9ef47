import { useDeferredValue, useMemo } from 'react'
import type { Evaluation } from '../../../evaluate/evaluation'
import { wantedByStock } from '../../../evaluate/6-cutting'
import { holeHeights, type HolesOf } from '../../../evaluate/sawn/holeHeights'
import { whatsCut, type CutOfStock } from '../../../evaluate/sawn/whatsCut'
import type { Bench } from '../../../layout/bench'
import { usePlannerState } from '../../../store/react'

/** What the saw bench has done, held against the bay as it stands. */
export interface SawBench {
  readonly bench: Bench
  readonly cut: readonly CutOfStock[]
  readonly holesOf: HolesOf
}

const sawBenchOf = ({ bay, layout }: Evaluation): SawBench => {
  const all = [...bay.built, ...bay.joinedPipes]
  const holesOf = holeHeights(all)
  return {
    bench: layout.bench,
    cut: whatsCut(wantedByStock(all, layout), layout.bench.cut, holesOf),
    holesOf,
  }
}

/** Of the bay as it stands; during a drag it may be a frame late. */
export const useSawBench = (): SawBench => {
  const evaluation = useDeferredValue(usePlannerState((state) => state.evaluation))
  return useMemo(() => sawBenchOf(evaluation), [evaluation])
}
