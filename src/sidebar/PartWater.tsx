import type { PartId } from '../model/ids'
import type { Water } from '../model/water'
import { usePlanner, usePlannerState } from '../store/react'
import { writerFor } from '../units/writer'
import { Readouts } from './Readouts'
import { StateMark } from './StateMark'
import { waterReadouts } from './waterReadouts'

/** The view of the drawer that shows all that is known of a part's water: of a row, else of its main and pump. */
const viewOf = ({ rows, dry }: Water, part: PartId): string =>
  rows.has(part) || dry.has(part) ? 'row' : 'main'

/** How a row is fed, what runs through a main, what a pump does; live while something is dragged. */
export function PartWater({ part }: { readonly part: PartId }) {
  const planner = usePlanner()
  const [units, water] = usePlannerState((state) => [state.units, state.evaluation.bay.water])
  const { state, why, lines } = waterReadouts(water, part, writerFor(units))
  if (!state && why === undefined && lines.length === 0) return null
  return (
    <section className="part-water" aria-label="Water">
      <h3>Water {state && <StateMark word={state.word} rank={state.rank} />}</h3>
      {why !== undefined && <p className="part-water-why">{why}</p>}
      {lines.length > 0 && <Readouts lines={lines} />}
      <button onClick={() => planner.set({ drawer: viewOf(water, part) })}>Open in the water run</button>
    </section>
  )
}
