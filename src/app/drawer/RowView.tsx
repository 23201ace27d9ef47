import { useState } from 'react'
import type { FeedFacts } from '../../model/feedFacts'
import type { PartId } from '../../model/ids'
import type { FlowState, RowWater, Water } from '../../model/water'
import { StateMark } from '../../sidebar/StateMark'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { writerFor } from '../../units/writer'
import { fedParts, flowRank, shownRow, worstRow } from './bayWater'
import { Chart } from './chart/Chart'
import { checkWords } from './checkWords'
import { dryAdvice } from './dryAdvice'
import { levelBand } from './levelBand'
import { lateralCheck } from './lateralCheck'
import { PartChoice } from './PartChoice'
import { flowChart, headChart } from './rowCharts'
import { rowFigures } from './rowFigures'
import { RowFigures } from './RowFigures'
import { lateralFlows } from './rowFlows'
import { WaterSliders } from './WaterSliders'

/** The row to show; while something slides it stays the same, though another may have become the worst. */
const useShownRow = (): PartId | undefined => {
  const [evaluation, selection, isPreviewed] = usePlannerState((state) => [
    state.evaluation,
    state.selection,
    state.preview !== undefined,
  ])
  const [held, setHeld] = useState<PartId>()
  const shown = shownRow(
    fedParts(evaluation),
    selection,
    isPreviewed ? held : undefined,
    worstRow(evaluation.bay.water),
  )
  if (shown !== held) setHeld(shown)
  return shown
}

interface RowChoiceProps {
  readonly shown: PartId
  readonly name: (row: PartId) => string
  readonly state: FlowState | undefined
}

/** Chooses a row, which selects it on the plan too. */
function RowChoice({ shown, name, state }: RowChoiceProps) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { water } = evaluation.bay
  const words = (row: PartId) => `${name(row)}: ${water.rows.get(row)?.state ?? 'no water'}`
  return (
    <div className="water-row-choice">
      <PartChoice label="Row" shown={shown} parts={fedParts(evaluation)} words={words} />
      {state && <StateMark word={state} rank={flowRank(state)} />}
    </div>
  )
}

function RowCheck({ feed, row }: { readonly feed: FeedFacts; readonly row: RowWater }) {
  const [units, waterC] = usePlannerState((state) => [state.units, state.evaluation.layout.settings.waterC])
  const check = lateralCheck(feed, row, waterC)
  return (
    <section className="water-check">
      <h3>Checked against the tables of the trade</h3>
      <p>
        {check
          ? checkWords(check, waterC, writerFor(units))
          : 'The tables know of no ring, where water comes to a tower from both sides.'}
      </p>
    </section>
  )
}

interface FedRowProps {
  readonly feed: FeedFacts
  readonly row: RowWater
}

function FedRow({ feed, row }: FedRowProps) {
  const [units, settings] = usePlannerState((state) => [state.units, state.evaluation.layout.settings])
  const band = levelBand(feed, row, settings)
  const laterals = lateralFlows(feed, row, band)
  return (
    <>
      <div className="water-charts">
        <Chart data={flowChart(laterals, row.figures, settings, units)} />
        <Chart data={headChart(laterals, units)} isLow />
      </div>
      <div className="water-told">
        <RowFigures figures={rowFigures(row, settings, band.mostLost, writerFor(units))} />
        <RowCheck feed={feed} row={row} />
      </div>
    </>
  )
}

const dryOf = (water: Water, row: PartId, name: string): string =>
  water.fault ?? dryAdvice(name, water.dry.get(row))

/** One row: the flow at each of its towers, the head that drives it, and how even that is. */
export default function RowView() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { bay, layout } = evaluation
  const { name } = useWords(layout.parts)
  const shown = useShownRow()
  if (shown === undefined)
    return (
      <p className="water-none">
        No row stands in this bay yet, so there is nothing to feed. Drag a rack row from the shelf to the
        floor.
      </p>
    )
  const row = bay.water.rows.get(shown)
  const feed = bay.builtOf.get(shown)?.feed
  return (
    <div className="water-row">
      <div className="water-side">
        <RowChoice shown={shown} name={name} state={row?.state} />
        <WaterSliders
          settings={layout.settings}
          row={shown}
          rowName={name(shown)}
          sagMm={feed?.laterals[0]?.sagMm ?? 0}
        />
      </div>
      {row && feed ? (
        <FedRow feed={feed} row={row} />
      ) : (
        <p className="water-none">{dryOf(bay.water, shown, name(shown))}</p>
      )}
    </div>
  )
}
