import type { CutOfStock, LineState } from '../../../evaluate/sawn/whatsCut'
import { CountField } from './CountField'
import { setCut, type Sawing } from './sawDeeds'

interface CutSoFarProps {
  readonly state: LineState
  readonly cut: CutOfStock
  readonly sawing: Sawing
  /** Length of the stop, as the reader has it. */
  readonly stop: string
}

/** How many pieces of a stop are cut, to be ticked by hand. */
export function CutSoFar({ state, cut, sawing, stop }: CutSoFarProps) {
  const { count } = state.line
  return (
    <CountField
      label={`Cut so far of ${count} x ${stop}`}
      shown={String(state.right)}
      most={count}
      onCount={(typed) => setCut(sawing, cut, state, typed)}
    />
  )
}
