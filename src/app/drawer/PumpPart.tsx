import { useDeferredValue, useMemo } from 'react'
import type { PartId } from '../../model/ids'
import type { PumpFacts } from '../../model/supplyFacts'
import type { PumpWater } from '../../model/water'
import { usePlanner, usePlannerState } from '../../store/react'
import { writerFor } from '../../units/writer'
import { Chart } from './chart/Chart'
import { ChartTable } from './chart/ChartTable'
import { pumpChart } from './pumpChart'
import { studyPump } from './pumpStudy'
import { filterRows, pumpVerdict } from './pumpWords'

interface PumpPartProps {
  readonly pit: PartId
  readonly name: string
  readonly facts: PumpFacts
  readonly pump: PumpWater
}

/** The water takes up less than the motor draws. From memory of small pumps' plates. */
const MOTOR_NOTE =
  'What the water takes up; the motor of a small pump draws two to four times as much, as its plate says.'

/** The pumps of one pit: their curve against the network, and what a dirty filter takes. */
export function PumpPart({ pit, name, facts, pump }: PumpPartProps) {
  const planner = usePlanner()
  const [bay, units] = usePlannerState((state) => [state.evaluation.bay, state.units])
  // The study solves the whole bay some sixteen times, so that a drag goes before it.
  const studied = useDeferredValue(bay)
  const study = useMemo(() => studyPump(studied, pit), [studied, pit])
  const writer = writerFor(units)
  const showSettings = () => {
    planner.select([pit])
    planner.set({
      notice: { tone: 'said', text: `${name} is selected: its pump stands in the sidebar, under Part.` },
    })
  }
  return (
    <section className="water-pump" aria-busy={studied !== bay}>
      <p className="water-verdict">
        {pumpVerdict(pump, facts, study, bay.settings.targetLph, writer)}
        {studied !== bay && ' (being computed anew)'}
      </p>
      <Chart data={pumpChart(facts, pump, study, units)} />
      {facts.filterDirtyK > 0 ? (
        <ChartTable title={`Filter of ${name}`} table={filterRows(study, writer)} />
      ) : (
        <p>No filter stands in the pipe of {name}, so there is none to get dirty.</p>
      )}
      <p className="water-note">{MOTOR_NOTE}</p>
      <button onClick={showSettings}>Pump settings</button>
    </section>
  )
}
