import type { PartId } from '../../model/ids'
import type { MainWater, Water } from '../../model/water'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import { highestEndsMm, shownMain, shownPump } from './bayWater'
import { Chart } from './chart/Chart'
import { mainHeadChart, mainVelocityChart } from './mainCharts'
import { PartChoice } from './PartChoice'
import { PumpPart } from './PumpPart'

interface MainPartProps {
  readonly main: MainWater
  readonly endsMm: number
  readonly name: (part: PartId) => string
}

function MainPart({ main, endsMm, name }: MainPartProps) {
  const units = usePlannerState((state) => state.units)
  return (
    <>
      <Chart data={mainHeadChart(main, endsMm, name, units)} />
      <Chart data={mainVelocityChart(main, name, units)} isLow />
    </>
  )
}

/** What is missing before there is anything to show, and what to do about it; undefined where nothing is. */
const missing = (water: Water, mainCount: number): string | undefined => {
  if (water.fault !== undefined) return water.fault
  if (mainCount === 0)
    return 'No main is laid yet. Drag a main from the shelf, start it at a pit with a pump, and lead it past the rows.'
  if (water.mains.size === 0)
    return 'No main here meets a pump or a head box, so no water runs in any. Start a main at a pit with a pump in it.'
  return water.rows.size === 0
    ? 'Water comes to no row yet. Bring a row within reach of a main, or open its valve.'
    : undefined
}

function PumpOf({
  pit,
  name,
}: {
  readonly pit: PartId | undefined
  readonly name: (part: PartId) => string
}) {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const facts = pit === undefined ? undefined : bay.builtOf.get(pit)?.pump
  const pump = pit === undefined ? undefined : bay.water.pumps.get(pit)
  if (pit === undefined || !facts || !pump)
    return <p className="water-none">No pump feeds this bay: its water comes from a head box.</p>
  return <PumpPart pit={pit} name={name(pit)} facts={facts} pump={pump} />
}

/** Head and velocity along a main, and the pump against the network that it feeds. */
export default function MainView() {
  const [evaluation, selection] = usePlannerState((state) => [state.evaluation, state.selection])
  const { layout, bay } = evaluation
  const { water } = bay
  const { name } = useWords(layout.parts)
  const lacks = missing(water, layout.parts.filter(({ kind }) => kind === 'main').length)
  const main = shownMain(water, selection)
  const endsMm = highestEndsMm(water)
  if (lacks !== undefined || main === undefined || endsMm === undefined)
    return <p className="water-none">{lacks}</p>
  const pit = shownPump(water, selection, main)
  return (
    <div className="water-main">
      <div className="water-charts">
        {water.mains.size > 1 && (
          <PartChoice label="Main" shown={main.part} parts={[...water.mains.keys()]} words={name} />
        )}
        <MainPart main={main} endsMm={endsMm} name={name} />
      </div>
      <div>
        {water.pumps.size > 1 && (
          <PartChoice label="Pit" shown={pit} parts={[...water.pumps.keys()]} words={name} />
        )}
        <PumpOf pit={pit} name={name} />
      </div>
    </div>
  )
}
