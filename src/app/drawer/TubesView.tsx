import { gradedRow, type GradedRow } from '../../evaluate/water/gradedRow'
import type { Part } from '../../layout/schema'
import { setFields } from '../../layout/setFields'
import { commitEdited } from '../../sidebar/commitEdited'
import { Said } from '../../sidebar/Said'
import { usePlanner, usePlannerState } from '../../store/react'
import { nameOf } from '../../store/partNames'
import type { Units } from '../../units/length'
import { writerFor } from '../../units/writer'
import { BucketForm } from './BucketForm'
import { ChartTable } from './chart/ChartTable'
import { NoRow, RowChoice } from './RowChoice'
import { cutWords, groupRow } from '../../sheets/tubes/tubeWords'
import { inOne } from './steps'
import { useAnswer } from './useAnswer'
import { useShownRow } from './useShownRow'

type Row = Part & { readonly kind: 'rack-row' }

function CutCard({ row, cut, units }: { readonly row: Row; readonly cut: GradedRow; readonly units: Units }) {
  return (
    <ChartTable
      title={`Tube card of ${nameOf(row)}`}
      table={{
        columns: ['Colour', 'Cut to', 'Stations', 'From the inlet', 'Tubes', 'Tube with 3 % spare'],
        rows: cut.groups.map((group) => groupRow(group, writerFor(units), units)),
      }}
    />
  )
}

interface CutProps {
  readonly row: Row
  readonly cut: GradedRow
}

function Cut({ row, cut }: CutProps) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const writer = writerFor(units)
  const set = (gradedTubes: Row['gradedTubes'], label: string) =>
    commitEdited(planner, `${label} ${nameOf(row)}`, (layout) =>
      setFields(layout, [{ part: row.id, values: { gradedTubes } }]),
    )
  const isTaken = JSON.stringify(row.gradedTubes) === JSON.stringify(cut.gradedTubes)
  return (
    <>
      <p>
        <Said words={cutWords(cut, writer)} />
      </p>
      <CutCard row={row} cut={cut} units={units} />
      <div className="water-deeds">
        {isTaken ? (
          <b>The row’s tubes are cut so.</b>
        ) : (
          <button onClick={() => set(cut.gradedTubes, 'Cut tubes by station in')}>Cut the tubes so</button>
        )}
        {row.gradedTubes.length > 0 && (
          <button onClick={() => set([], 'Cut all tubes alike in')}>Cut all tubes alike</button>
        )}
      </div>
    </>
  )
}

function TubesOf({ row }: { readonly row: Row }) {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { answer, isCurrent } = useAnswer(row.id, [row, bay.settings, bay.levels], () =>
    inOne(() => ({ cut: gradedRow(row, bay) })),
  )
  if (!answer) return <p className="water-none">Fitting lengths to the head line of {nameOf(row)} …</p>
  return (
    <section className={isCurrent ? 'water-view' : 'water-view water-stale'} aria-busy={!isCurrent}>
      <h3>Tubes cut by station</h3>
      {answer.cut ? (
        <Cut row={row} cut={answer.cut} />
      ) : (
        <p>No length of tube makes {nameOf(row)} more even than tubes that are all alike.</p>
      )}
    </section>
  )
}

/** The bench: tubes cut by station in four colours, and what a bucket test says of the tube in hand. */
export default function TubesView() {
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const shown = useShownRow()
  const row = parts.find((part): part is Row => part.id === shown && part.kind === 'rack-row')
  if (!row) return <NoRow />
  return (
    <div className="water-view">
      <RowChoice shown={row.id} />
      <div className="water-two">
        <TubesOf row={row} />
        <BucketForm />
      </div>
    </div>
  )
}
