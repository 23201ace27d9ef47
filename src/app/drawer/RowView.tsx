import { useMemo } from 'react'
import { type RowScatter, scatterOfRow } from '../../evaluate/water/scatter'
import type { FeedFacts } from '../../model/feedFacts'
import type { PartId } from '../../model/ids'
import type { RowWater, Water } from '../../model/water'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { writerFor } from '../../units/writer'
import { Chart } from './chart/Chart'
import { checkWords } from './checkWords'
import { dryAdvice } from './dryAdvice'
import { lateralCheck } from './lateralCheck'
import { NoRow, RowChoice } from './RowChoice'
import { flowChart, headChart } from './rowCharts'
import { rowFigures } from './rowFigures'
import { RowFigures } from './RowFigures'
import { lateralFlows } from './rowFlows'
import { useShownRow } from './useShownRow'
import { WaterSliders } from './WaterSliders'

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

/** Draws enough for a figure, and few enough for a frame while something slides. */
const DRAWS = { atRest: 400, sliding: 60 }

/** What building adds to the row's figures, always of the bay as it stands. */
const useScatter = ({ part }: RowWater): RowScatter | undefined => {
  const [bay, isPreviewed] = usePlannerState((state) => [state.evaluation.bay, state.preview !== undefined])
  return useMemo(() => {
    const [built, row] = [bay.builtOf.get(part), bay.water.rows.get(part)]
    const scenarios = isPreviewed ? DRAWS.sliding : DRAWS.atRest
    return built && row && scatterOfRow(built, row, bay, { scenarios })
  }, [bay, part, isPreviewed])
}

function FedRow({ feed, row }: FedRowProps) {
  const [units, settings] = usePlannerState((state) => [state.units, state.evaluation.layout.settings])
  const scatter = useScatter(row)
  const laterals = lateralFlows(feed, row, scatter)
  return (
    <>
      <div className="water-charts">
        <Chart data={flowChart(laterals, row.figures, settings, units)} />
        <Chart data={headChart(laterals, units)} isLow />
      </div>
      <div className="water-told">
        <RowFigures figures={rowFigures(row, settings, scatter, writerFor(units))} />
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
  if (shown === undefined) return <NoRow />
  const row = bay.water.rows.get(shown)
  const feed = bay.builtOf.get(shown)?.feed
  return (
    <div className="water-row">
      <div className="water-side">
        <RowChoice shown={shown} />
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
