import { useDeferredValue, useMemo } from 'react'
import { sawBenchOf, type SawBench } from '../../../evaluate/sawn/sawBench'
import { usePlannerState } from '../../../store/react'

/** Of the bay as it stands; during a drag it may be a frame late. */
export const useSawBench = (): SawBench => {
  const evaluation = useDeferredValue(usePlannerState((state) => state.evaluation))
  return useMemo(() => sawBenchOf(evaluation), [evaluation])
}
