import type { PumpFacts } from '../../model/supplyFacts'
import type { PumpWater } from '../../model/water'
import type { Units } from '../../units/length'
import { type Writer, writerFor } from '../../units/writer'
import type { ChartData, ChartFlag, ChartLine, Dash, Ink } from './chart/chartData'
import { pumpHead, totalFlow } from './chart/measures'
import { type CurvePoint, type Duty, pumpCurve, type PumpStudy, type Trace } from './pumpStudy'

const lineOf = (name: string, ink: Ink, dash: Dash, points: readonly CurvePoint[]): ChartLine => ({
  name,
  ink,
  dash,
  points: points.map(({ flowLph, headMm }) => ({ x: flowLph, y: headMm })),
})

/** The pumps together, and one of them alone where there are more. */
const pumpLines = (facts: PumpFacts): readonly ChartLine[] =>
  facts.pumps === 1
    ? [lineOf('Pump', 'ink', 'continuous', pumpCurve(facts, 1))]
    : [
        lineOf(`${facts.pumps} pumps side by side`, 'ink', 'continuous', pumpCurve(facts, facts.pumps)),
        lineOf('One of them alone', 'ink', 'dotted', pumpCurve(facts, 1)),
      ]

const hasFilter = ({ filterCleanK, filterDirtyK }: PumpFacts): boolean => filterCleanK > 0 || filterDirtyK > 0

const networkLines = (facts: PumpFacts, { clean, dirty }: PumpStudy): readonly ChartLine[] =>
  hasFilter(facts)
    ? [
        lineOf('Network, filter clean', 'water', 'continuous', clean.duties),
        lineOf('Network, filter due for cleaning', 'water', 'dashed', dirty.duties),
      ]
    : [lineOf('Network', 'water', 'continuous', clean.duties)]

const dutyWords = ({ flowLph, headMm }: Duty, { flowTotal, pumpHead: head }: Writer): string =>
  `${flowTotal(flowLph)} at ${head(headMm)}`

const flagOf = (
  { own }: Trace,
  name: string,
  side: ChartFlag['side'],
  writer: Writer,
): readonly ChartFlag[] =>
  own
    ? [{ words: `${name}: ${dutyWords(own, writer)}`, x: own.flowLph, y: own.headMm, ink: 'water', side }]
    : []

const flagsOf = (facts: PumpFacts, { clean, dirty }: PumpStudy, writer: Writer): readonly ChartFlag[] =>
  hasFilter(facts)
    ? [...flagOf(clean, 'clean', 'below', writer), ...flagOf(dirty, 'dirty', 'above', writer)]
    : flagOf(clean, 'runs at', 'above', writer)

/** Network flow and head at each traced speed, in a row of words. */
const tracedRows = (name: string, { duties }: Trace, { flowTotal, pumpHead: head, share }: Writer) =>
  duties.map(({ speed, flowLph, headMm }) => [name, share(speed), flowTotal(flowLph), head(headMm)])

/** The pumps of a pit against what the network asks of them, with the points that they run at. */
export const pumpChart = (facts: PumpFacts, pump: PumpWater, study: PumpStudy, units: Units): ChartData => {
  const writer = writerFor(units)
  const { flowTotal, pumpHead: head } = writer
  const { clean } = study
  return {
    title: 'Pump against network',
    says: clean.own
      ? `With a clean filter the pump gives ${dutyWords(clean.own, writer)}; ${head(pump.staticMm)} of that is lift alone.`
      : 'The network could not be solved.',
    x: { name: 'Flow', measure: totalFlow(units), holds: [0] },
    y: { name: 'Head', measure: pumpHead(units), holds: [0] },
    lines: [...pumpLines(facts), ...networkLines(facts, study)],
    levels: [
      { name: `lift alone, ${head(pump.staticMm)}`, y: pump.staticMm, dash: 'dash-dot', side: 'below' },
    ],
    flags: flagsOf(facts, study, writer),
    stops: pumpCurve(facts, facts.pumps).map(({ flowLph, headMm }) => ({
      x: flowLph,
      words: `At ${flowTotal(flowLph)} the pump lifts by ${head(headMm)}`,
    })),
    table: {
      columns: ['Network', 'Pump speed', 'Flow', 'Head'],
      rows: [
        ...tracedRows('Filter clean', clean, writer),
        ...(hasFilter(facts) ? tracedRows('Filter due for cleaning', study.dirty, writer) : []),
      ],
    },
  }
}
