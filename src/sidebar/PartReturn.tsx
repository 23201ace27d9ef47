import type { PartId } from '../model/ids'
import { usePlanner, usePlannerState } from '../store/react'
import { writerFor } from '../units/writer'
import { Readouts } from './Readouts'
import { returnReadouts, type ReturnReadouts } from './returnReadouts'
import { StateMark } from './StateMark'

const OPENS: Readonly<Record<NonNullable<ReturnReadouts['view']>, string>> = {
  cut: 'Open in the long cut',
  stop: 'Stop the pump',
}

/** What comes home through a drain, to a pit, or over a row's troughs; live while something is dragged. */
export function PartReturn({ part }: { readonly part: PartId }) {
  const planner = usePlanner()
  const [units, returns] = usePlannerState((state) => [state.units, state.evaluation.bay.returns])
  const { state, lines, view } = returnReadouts(returns, part, writerFor(units))
  if (lines.length === 0) return null
  return (
    <section className="part-water" aria-label="Water home">
      <h3>Water home {state && <StateMark word={state.word} rank={state.rank} />}</h3>
      <Readouts lines={lines} />
      {view && <button onClick={() => planner.set({ drawer: view })}>{OPENS[view]}</button>}
    </section>
  )
}
