import { flushPlan, LATERAL_FLUSH_MS, type MainFlush, type ZoneFlush } from '../../evaluate/water/flush'
import type { WaterInputs } from '../../evaluate/water/plan'
import { refill, type Refill } from '../../evaluate/water/refill'
import type { Words } from '../../checks/context'
import { Said } from '../../sidebar/Said'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { ChartTable } from './chart/ChartTable'
import { clock, mainRow, zoneRow } from '../../sheets/startUp/flushWords'
import type { Steps } from './steps'
import { useAnswer } from './useAnswer'

interface FlushProps {
  readonly zones: readonly ZoneFlush[]
  readonly mains: readonly MainFlush[]
  readonly words: Words
}

function Flush({ zones, mains, words }: FlushProps) {
  return (
    <section>
      <h3>Flush</h3>
      <p>
        Clean the filter, shut all zones but one, open its trim valve wide and then its lateral ends, so many
        at once that each runs at <Said words={words.velocity(LATERAL_FLUSH_MS)} /> or more (University of
        California, Maintenance of Microirrigation Systems), until clear and 30 s longer. Set the trim valve
        back by its sight tube.
      </p>
      {zones.some(({ atOnce }) => atOnce === 0) && (
        <p>
          Where it says none, not even one end runs so fast: flush with a hose at the union of the valves.
        </p>
      )}
      <ChartTable
        title="Lateral ends by zone"
        table={{
          columns: ['Zone', 'Open at once', 'Slowest end', 'Out of the ends', 'Takes', 'To the pit'],
          rows: zones.map((zone) => zoneRow(zone, words)),
        }}
      />
      {mains.length > 0 && (
        <ChartTable
          title="Ends of mains"
          table={{
            columns: ['Main, 60 s each', 'At its end', 'Flow', 'To the pit'],
            rows: mains.map((main) => mainRow(main, words)),
          }}
        />
      )}
    </section>
  )
}

function Restart({ found, words }: { readonly found: Refill; readonly words: Words }) {
  const { name, volume } = words
  return (
    <section>
      <h3>After a stop</h3>
      <p>
        {volume(found.rowsLitres)} runs home from the rows’ pipes
        {found.mainsLitres > 0
          ? ` and ${volume(found.mainsLitres)} from mains that no check valve holds`
          : '; the mains stay full behind their check valve'}
        . When the pump starts again the last tower drips after {clock(found.seconds)}
        {found.lastRow !== undefined && `, in ${name(found.lastRow)}`}. Water is taken to come on as a front
        at the bay’s running flows.
      </p>
      <ChartTable
        title="Refill by row"
        table={{
          columns: ['Row', 'First tower', 'Last tower', 'Runs home'],
          rows: [...found.rows.values()].map((row) => [
            name(row.part),
            clock(row.firstSeconds),
            `${clock(row.lastSeconds)}, line ${row.last.line}, station ${row.last.station}`,
            volume(row.litres),
          ]),
        }}
      />
    </section>
  )
}

interface Found {
  readonly zones: readonly ZoneFlush[]
  readonly mains: readonly MainFlush[]
  readonly found: Refill | undefined
}

/** A zone a step: an acre has a hundred. */
function* flushSteps(bay: WaterInputs): Steps<Found> {
  const plan = flushPlan(bay)
  const zones: ZoneFlush[] = []
  for (const part of plan.zones) {
    yield
    const zone = plan.zone(part)
    if (zone) zones.push(zone)
  }
  yield
  const mains = plan.mains()
  yield
  return { zones, mains, found: refill(bay) }
}

/** Flushing of laterals and mains, and what comes home and comes back when the pump stops and starts. */
export default function FlushView() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { bay } = evaluation
  const words = useWords(evaluation.layout.parts)
  const { answer, isCurrent } = useAnswer('flush', [bay], () => flushSteps(bay))
  if (!answer) return <p className="water-none">Opening the ends one by one …</p>
  if (!answer.found)
    return <p className="water-none">No water runs in this bay yet, so there is nothing to flush with.</p>
  return (
    <div className={isCurrent ? 'water-two' : 'water-two water-stale'} aria-busy={!isCurrent}>
      <Flush zones={answer.zones} mains={answer.mains} words={words} />
      <Restart found={answer.found} words={words} />
    </div>
  )
}
