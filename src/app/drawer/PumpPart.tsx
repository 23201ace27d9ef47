import type { PartId } from '../../model/ids'
import type { PumpFacts } from '../../model/supplyFacts'
import type { PumpWater } from '../../model/water'
import { usePlanner, usePlannerState } from '../../store/react'
import { writerFor } from '../../units/writer'
import { Chart } from './chart/Chart'
import { ChartTable } from './chart/ChartTable'
import { pumpChart } from './pumpChart'
import { type PumpStudy, studySteps } from './pumpStudy'
import { boxVerdict, filterRows, pumpVerdict } from './pumpWords'
import { useAnswer } from './useAnswer'

interface PumpPartProps {
  readonly pit: PartId
  readonly name: string
  readonly facts: PumpFacts
  readonly pump: PumpWater
}

/** The water takes up less than the motor draws. From memory of small pumps' plates. */
const MOTOR_NOTE =
  'What the water takes up; the motor of a small pump draws two to four times as much, as its plate says.'

interface StudiedProps {
  readonly name: string
  readonly facts: PumpFacts
  readonly pump: PumpWater
  readonly study: PumpStudy
  readonly isCurrent: boolean
}

/** What came of studying the pumps; faint, and said to be so, while it is of the bay before the last change. */
function Studied({ name, facts, pump, study, isCurrent }: StudiedProps) {
  const [units, targetLph] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.settings.targetLph,
  ])
  const boxes = usePlannerState((state) => state.evaluation.bay.water.boxes)
  const writer = writerFor(units)
  const verdict =
    boxes.size > 0
      ? boxVerdict([...boxes.values()], writer)
      : pumpVerdict(pump, facts, study, targetLph, writer)
  return (
    <div className={isCurrent ? 'water-pump' : 'water-pump water-stale'} aria-busy={!isCurrent}>
      <p className="water-verdict">
        {isCurrent
          ? verdict
          : 'The curves are of the bay before the last change; they are being computed anew.'}
      </p>
      <Chart data={pumpChart(facts, pump, study, units)} />
      {facts.filterDirtyK > 0 ? (
        <ChartTable title={`Filter of ${name}`} table={filterRows(study, writer)} />
      ) : (
        <p>No filter stands in the pipe of {name}, so there is none to get dirty.</p>
      )}
    </div>
  )
}

/** The pumps of one pit: their curve against the network, and what a dirty filter takes. */
export function PumpPart({ pit, name, facts, pump }: PumpPartProps) {
  const planner = usePlanner()
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { answer: study, isCurrent } = useAnswer(pit, [bay], () => studySteps(bay, pit))
  const showSettings = () => {
    planner.select([pit])
    planner.set({ sidebar: 'part' })
  }
  return (
    <section className="water-pump" aria-label={`Pump of ${name}`}>
      {study ? (
        <Studied name={name} facts={facts} pump={pump} study={study} isCurrent={isCurrent} />
      ) : (
        <p className="water-none">Computing what the network asks of the pump …</p>
      )}
      <p className="water-note">{MOTOR_NOTE}</p>
      <button onClick={showSettings}>Pump settings</button>
    </section>
  )
}
