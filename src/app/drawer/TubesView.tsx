import { gradedRow, type GradedGroup, type GradedRow, type StationRun } from '../../evaluate/water/gradedRow'
import type { Part } from '../../layout/schema'
import { setFields } from '../../layout/setFields'
import { commitEdited } from '../../sidebar/commitEdited'
import { usePlanner, usePlannerState } from '../../store/react'
import { nameOf } from '../../store/partNames'
import { type Writer, writerFor } from '../../units/writer'
import { BucketForm } from './BucketForm'
import { ChartTable } from './chart/ChartTable'
import { NoRow, RowChoice } from './RowChoice'
import { inOne, useAnswer } from './useAnswer'
import { useShownRow } from './useShownRow'

type Row = Part & { readonly kind: 'rack-row' }

const runWords = ({ from, to }: StationRun): string => (from === to ? `${from}` : `${from} to ${to}`)

/** Ends of a bundle are wasted. Common practice, no source. */
const BUNDLE_SPARE = 1.03

const groupRow = (
  { label, lengthMm, stations, fromEntry, tubes }: GradedGroup,
  { onTape, length }: Writer,
): string[] => [
  label,
  onTape(lengthMm),
  stations.map(runWords).join(', '),
  runWords(fromEntry),
  String(tubes),
  length(tubes * lengthMm * BUNDLE_SPARE),
]

function CutCard({
  row,
  cut,
  writer,
}: {
  readonly row: Row
  readonly cut: GradedRow
  readonly writer: Writer
}) {
  return (
    <ChartTable
      title={`Tube card of ${nameOf(row)}`}
      table={{
        columns: ['Colour', 'Cut to', 'Stations', 'From the inlet', 'Tubes', 'Tube with 3 % spare'],
        rows: cut.groups.map((group) => groupRow(group, writer)),
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
        All tubes alike: spread {writer.share(cut.before.figures.spread)}, {cut.before.state}. Cut in{' '}
        {cut.groups.length} lengths: spread {writer.share(cut.after.figures.spread)}, {cut.after.state}, with
        no fitting more. Exact lengths run from {writer.onTape(Math.max(...cut.exactMm))} to{' '}
        {writer.onTape(Math.min(...cut.exactMm))}.
      </p>
      <CutCard row={row} cut={cut} writer={writer} />
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
