import { useDeferredValue, useMemo } from 'react'
import type { Evaluation } from '../../../evaluate/evaluation'
import { sharedBy } from '../../../evaluate/shop/costFigures'
import { labour } from '../../../evaluate/shop/labour'
import { shopList } from '../../../evaluate/shop/shopList'
import type { Units } from '../../../units/length'
import { usePlannerState } from '../../../store/react'
import { useCutLists } from '../../../store/useCutLists'
import { ChartTable } from '../chart/ChartTable'
import '../chart/chart.css'
import { RowFigures } from '../RowFigures'
import { ShopBanner } from '../shop/ShopBanner'
import '../shop/shop.css'
import { today } from '../prices/today'
import { bannerWords, staleIn, unmadeWords } from '../../../sheets/shop/shopWords'
import './cost.css'
import { costRows } from './costWords'
import { CrewFields } from './CrewFields'
import { LabourTable } from './LabourTable'
import { labourSum } from './labourWords'
import { NextRow } from './NextRow'

interface PartProps {
  readonly evaluation: Evaluation
  readonly units: Units
}

function Costs({ evaluation, units }: PartProps) {
  const cuts = useDeferredValue(useCutLists())
  const { counts, layout } = evaluation
  const { counter } = layout
  const list = useMemo(() => shopList(cuts, counts, counter, 'counted'), [cuts, counts, counter])
  const { totals } = list
  return (
    <section className="cost-part">
      <ShopBanner words={[...bannerWords(totals, staleIn(list, today())), ...unmadeWords(cuts)]} />
      <h3>Cost</h3>
      <ChartTable
        title="Cost"
        table={{
          columns: ['Of', 'How many', 'Needed', 'Bought'],
          rows: costRows(totals, sharedBy(evaluation), counter.currency, units),
        }}
      />
      <p className="water-note">
        Before tax and without hours. Needed is what goes into the bay; bought has spares in it, and what
        whole packs and boards leave over. Boards that are sawn already count in both. Before buying in bulk,
        buy for one rack and one lateral, and test them: the rack for load, the lateral for flow.
      </p>
      <NextRow />
    </section>
  )
}

function Hours({ evaluation, units }: PartProps) {
  const { bay, layout, towers } = evaluation
  const found = useMemo(() => labour(bay, layout.counter), [bay, layout.counter])
  return (
    <section className="cost-part">
      <h3>Hours</h3>
      <div className="cost-hours">
        <CrewFields />
        <RowFigures
          figures={labourSum(found, layout.counter, towers).map(([name, value]) => ({ name, value }))}
        />
      </div>
      <LabourTable labour={found} units={units} />
      <p className="water-note">
        Minutes of one person, from common practice: put in what your crew’s own clock says, or empty the
        field for the norm. Digging is by hand in loam; a machine trenches 10 ft in about 15 minutes, and
        costs its hire.
      </p>
    </section>
  )
}

/** What the bay costs by whatever one thinks in, what one more row would, and the hours that it takes to build. */
export default function CostView() {
  const evaluation = useDeferredValue(usePlannerState((state) => state.evaluation))
  const units = usePlannerState((state) => state.units)
  if (evaluation.cuts.length === 0 && evaluation.counts.length === 0)
    return <p className="water-none">Nothing is built here yet: take a rack from the parts shelf.</p>
  return (
    <div className="cost">
      <Costs evaluation={evaluation} units={units} />
      <Hours evaluation={evaluation} units={units} />
    </div>
  )
}
