import type { Settings } from '../../layout/settings'
import type { Units } from '../../units/length'
import { type Writer, writerFor } from '../../units/writer'
import { standWords } from '../../store/waterWords'
import type { FlowFigures, TowerAt } from '../../model/water'
import {
  type ChartData,
  type ChartFlag,
  type ChartLine,
  type ChartPoint,
  type ChartRows,
  type ChartStop,
  type Dash,
  type MarkShape,
  markShapes,
} from './chart/chartData'
import { alongFloor, sightTube, towerFlow } from './chart/measures'
import type { LateralFlows, TowerFlow } from './rowFlows'

const dashes: readonly Dash[] = ['continuous', 'dashed', 'dash-dot', 'dotted']

const nth = <T>(list: readonly [T, ...T[]], index: number): T => list[index % list.length] ?? list[0]

const dashOf = (lateral: number): Dash => dashes[(lateral - 1) % dashes.length] ?? 'continuous'

const shapeOf = (lateral: number): MarkShape => nth(markShapes, lateral - 1)

/** `Lateral 2, lines 3 and 4`. */
const lateralName = ({ lateral, lines, isRing }: LateralFlows): string => {
  const last = lines.at(-1)
  const noun = isRing ? 'Ring' : `Lateral ${lateral}`
  if (last === undefined) return noun
  const others = lines.slice(0, -1)
  const words = others.length > 0 ? `lines ${others.join(', ')} and ${last}` : `line ${last}`
  return `${noun}, ${words}`
}

/** Towers at one place along a lateral, in one point at the mean of their flows. */
const meansAlong = (towers: readonly TowerFlow[]): readonly ChartPoint[] => {
  const flows = new Map<number, number[]>()
  for (const { alongMm, flowLph } of towers) flows.set(alongMm, [...(flows.get(alongMm) ?? []), flowLph])
  return [...flows].map(([x, there]) => ({ x, y: there.reduce((sum, flow) => sum + flow, 0) / there.length }))
}

/** The lowest or the highest of towers at one place along a lateral. */
const extremesAlong = (
  towers: readonly TowerFlow[],
  flowOf: (tower: TowerFlow) => number,
  pick: (a: number, b: number) => number,
): readonly ChartPoint[] => {
  const flows = new Map<number, number>()
  for (const tower of towers)
    flows.set(tower.alongMm, pick(flows.get(tower.alongMm) ?? flowOf(tower), flowOf(tower)))
  return [...flows].map(([x, y]) => ({ x, y }))
}

const flowLine = (flows: LateralFlows): ChartLine => ({
  name: lateralName(flows),
  dash: dashOf(flows.lateral),
  ink: 'water',
  points: meansAlong(flows.towers),
  marks: {
    shape: shapeOf(flows.lateral),
    points: flows.towers.map(({ alongMm, flowLph }) => ({ x: alongMm, y: flowLph })),
  },
  reach: {
    low: extremesAlong(flows.towers, ({ lowLph }) => lowLph, Math.min),
    high: extremesAlong(flows.towers, ({ highLph }) => highLph, Math.max),
  },
})

const flagOf = (
  laterals: readonly LateralFlows[],
  tower: TowerAt,
  words: string,
  side: ChartFlag['side'],
): readonly ChartFlag[] =>
  laterals
    .flatMap(({ towers }) => towers)
    .filter(({ station, line }) => station === tower.station && line === tower.line)
    .slice(0, 1)
    .map(({ alongMm, flowLph }) => ({ words, x: alongMm, y: flowLph, ink: 'ink', side }))

/** Towers of one station across all laterals. */
interface AtStation {
  readonly station: number
  readonly alongMm: number
  /** By line, ascending. */
  readonly flows: ReadonlyMap<number, number>
}

const stationsAlong = (laterals: readonly LateralFlows[]): readonly AtStation[] => {
  const byStation = new Map<number, TowerFlow[]>()
  for (const tower of laterals.flatMap(({ towers }) => towers))
    byStation.set(tower.station, [...(byStation.get(tower.station) ?? []), tower])
  return [...byStation]
    .map(([station, towers]) => ({
      station,
      alongMm: towers[0]?.alongMm ?? 0,
      flows: new Map(towers.toSorted((a, b) => a.line - b.line).map(({ line, flowLph }) => [line, flowLph])),
    }))
    .sort((a, b) => a.alongMm - b.alongMm)
}

const stationStop = ({ station, alongMm, flows }: AtStation, { length, flow }: Writer): ChartStop => ({
  x: alongMm,
  words: `Station ${station}, ${length(alongMm)} along: ${[...flows].map(([line, lph]) => `line ${line} ${flow(lph)}`).join(', ')}`,
})

const flowTable = (laterals: readonly LateralFlows[], { length, flow }: Writer): ChartRows => {
  const lines = [...new Set(laterals.flatMap((each) => each.lines))].sort((a, b) => a - b)
  const cell = (lph: number | undefined) => (lph === undefined ? 'no tower' : flow(lph))
  return {
    columns: ['Station', 'Along', ...lines.map((line) => `Line ${line}`)],
    rows: stationsAlong(laterals).map(({ station, alongMm, flows }) => [
      String(station),
      length(alongMm),
      ...lines.map((line) => cell(flows.get(line))),
    ]),
  }
}

/** Nobody wants a tower to be off by more, as a share of what is wanted: half the span of a row that is still Even. */
const BAND_SHARE = 0.1

/** Share of the flows' range that is left free above and below them, for the words at the least and the most. */
const WORDS_SHARE = 0.2

/** What the flow axis must hold, whatever is drawn. */
const flowEnds = (least: number, most: number, target: number): readonly number[] => {
  const from = Math.min(least, target * (1 - BAND_SHARE))
  const to = Math.max(most, target * (1 + BAND_SHARE))
  const free = WORDS_SHARE * (to - from)
  return [Math.max(0, from - free), to + free]
}

/** The flow of every tower of a row against its place, beside what is wanted. */
export const flowChart = (
  laterals: readonly LateralFlows[],
  { least, most, meanLph }: FlowFigures,
  { targetLph }: Pick<Settings, 'targetLph'>,
  units: Units,
): ChartData => {
  const writer = writerFor(units)
  const { flow } = writer
  return {
    title: 'Flow at each tower',
    says: `Least ${flow(least.flowLph)} at ${standWords(least)}, most ${flow(most.flowLph)} at ${standWords(most)}, mean ${flow(meanLph)}; ${flow(targetLph)} is wanted.`,
    x: { name: 'Along the row', measure: alongFloor(units), holds: [0] },
    y: { name: 'Flow', measure: towerFlow(units), holds: flowEnds(least.flowLph, most.flowLph, targetLph) },
    lines: laterals.map(flowLine),
    bands: [
      {
        name: '10 % about what is wanted',
        from: targetLph * (1 - BAND_SHARE),
        to: targetLph * (1 + BAND_SHARE),
      },
    ],
    reachName: 'nine builds of ten',
    levels: [{ name: `${flow(targetLph)} wanted`, y: targetLph, dash: 'dash-dot', side: 'above' }],
    flags: [
      ...flagOf(laterals, most, `most: ${standWords(most)}, ${flow(most.flowLph)}`, 'above'),
      ...flagOf(laterals, least, `least: ${standWords(least)}, ${flow(least.flowLph)}`, 'below'),
    ],
    stops: stationsAlong(laterals).map((at) => stationStop(at, writer)),
    table: flowTable(laterals, writer),
  }
}

const headStops = (laterals: readonly LateralFlows[], units: Units) => {
  const { length, sightTube: tube } = writerFor(units)
  return laterals
    .flatMap((each) => each.heads.map((head) => ({ ...head, lateral: each.lateral })))
    .sort((a, b) => a.alongMm - b.alongMm || a.lateral - b.lateral)
    .map(({ alongMm, headMm, lateral }) => ({
      x: alongMm,
      words: `Lateral ${lateral}, ${length(alongMm)} along: water stands ${tube(headMm)} over the tube ends`,
      row: [`Lateral ${lateral}`, length(alongMm), tube(headMm)],
    }))
}

/** How high water would stand in a sight tube anywhere along the laterals, over the mean of the tube ends. */
export const headChart = (laterals: readonly LateralFlows[], units: Units): ChartData => {
  const { sightTube: tube } = writerFor(units)
  const heads = laterals.flatMap((each) => each.heads.map(({ headMm }) => headMm)).filter(Number.isFinite)
  const stops = headStops(laterals, units)
  const fedAt = [...new Set(laterals.flatMap(({ fedAtMm }) => fedAtMm))]
  return {
    title: 'Head along the laterals',
    says: `In a sight tube water stands from ${tube(Math.min(...heads))} to ${tube(Math.max(...heads))} over the tube ends.`,
    x: { name: 'Along the row', measure: alongFloor(units), holds: [0] },
    y: { name: 'Sight tube over the tube ends', measure: sightTube(units), holds: [0] },
    lines: laterals.map((each) => ({
      name: lateralName(each),
      dash: dashOf(each.lateral),
      ink: 'water',
      points: each.heads.map(({ alongMm, headMm }) => ({ x: alongMm, y: headMm })),
    })),
    posts: fedAt.map((x) => ({ name: 'water in', x })),
    stops: stops.map(({ x, words }) => ({ x, words })),
    table: { columns: ['Lateral', 'Along', 'Sight tube'], rows: stops.map(({ row }) => row) },
  }
}
