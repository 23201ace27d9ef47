import { BLOCK_OVER_MM } from '../../checks/shimLimits'
import type { Evaluation } from '../../evaluate/evaluation'
import { stateWords } from '../../model/finding'
import type { FlowState } from '../../model/water'
import type { Units } from '../../units/length'
import { writerFor, type Writer } from '../../units/writer'
import { shimScale, tallestShimMm } from '../shims/shimScale'
import { strengthSpans } from '../strength/strengthSpans'
import { fastestMS } from './legs'
import { bayScale, paintedRows } from './painted'
import { DRY, FASTEST_MS, shareOn, velocityScale, type Scale } from './scale'

/** A value that the scale is read against. */
interface Marked {
  /** Where it lies, from 0 to 1; undefined beyond the ends. */
  readonly share: number | undefined
  readonly words: string
}

/** A painted scale in words. */
export interface LegendFacts {
  readonly title: string
  /** Low end, middle, high end. */
  readonly ticks: readonly string[]
  readonly marked: Marked
}

const ticksOf = ({ low, high }: Scale, write: (value: number) => string): readonly string[] =>
  [low, (low + high) / 2, high].map(write)

const placeOn = (scale: Scale, value: number): number | undefined => {
  const share = shareOn(scale, value)
  return share >= 0 && share <= 1 ? share : undefined
}

const flowLegend = ({ bay }: Evaluation, units: Units, { flow }: Writer): LegendFacts | undefined => {
  const scale = bayScale(bay.water.bay, units)
  if (!scale) return undefined
  const { targetLph } = bay.settings
  const share = placeOn(scale, targetLph)
  const beyond = targetLph > scale.high ? 'more than any tower takes' : 'less than any tower takes'
  return {
    title: 'Flow of each tower',
    ticks: ticksOf(scale, flow),
    marked: { share, words: `${flow(targetLph)} wanted${share === undefined ? `, ${beyond}` : ''}` },
  }
}

const velocityLegend = (
  evaluation: Evaluation,
  units: Units,
  { velocity }: Writer,
): LegendFacts | undefined => {
  const fastest = fastestMS(evaluation)
  if (fastest === 0) return undefined
  const scale = velocityScale(fastest, units)
  return {
    title: 'Velocity in the pipes',
    ticks: ticksOf(scale, velocity),
    marked: {
      share: placeOn(scale, FASTEST_MS),
      words: `${velocity(FASTEST_MS)} at most; what is faster is cased in red`,
    },
  }
}

const shimLegend = (evaluation: Evaluation, units: Units, { onTape }: Writer): LegendFacts | undefined => {
  const tallestMm = tallestShimMm(evaluation)
  if (tallestMm === 0) return undefined
  const scale = shimScale(tallestMm, units)
  return {
    title: 'Shim under each foot (square), on each gutter bearer (bar)',
    ticks: ticksOf(scale, onTape),
    marked: {
      share: placeOn(scale, BLOCK_OVER_MM),
      words: `over ${onTape(BLOCK_OVER_MM)} a block is steadier`,
    },
  }
}

/** To the limit itself: what uses more has the last shade, and is cased. */
const strengthLegend = (evaluation: Evaluation, _: Units, { share }: Writer): LegendFacts | undefined =>
  strengthSpans(evaluation).length === 0
    ? undefined
    : {
        title: 'Rails, by the share of their limit that is used',
        ticks: ticksOf({ low: 0, high: 1 }, share),
        marked: { share: 1, words: 'over it they are cased; screened, not rated' },
      }

const legends = {
  flow: flowLegend,
  velocity: velocityLegend,
  shims: shimLegend,
  strength: strengthLegend,
} as const

/** The legend of a paint in the reader's units; undefined where there is nothing that could be painted. */
export const legendFacts = (
  as: keyof typeof legends,
  evaluation: Evaluation,
  units: Units,
): LegendFacts | undefined => legends[as](evaluation, units, writerFor(units))

/** Towers that hang in the bay and get no water. */
export const dryTowers = (evaluation: Evaluation, units: Units): number =>
  paintedRows(evaluation, units).reduce(
    (sum, { shades }) => sum + shades.reduce((dry, shade) => dry + Number(shade === DRY), 0),
    0,
  )

/** How many rows are in a state. */
export interface StateCount {
  readonly state: FlowState
  readonly rows: number
}

/** The rows that are fed, by their state, worst first; states that no row is in are left out. */
export const stateCounts = ({ bay: { water } }: Evaluation): readonly StateCount[] => {
  const states = [...water.rows.values()].map(({ state }) => state)
  return stateWords.flow
    .map((state) => ({ state, rows: states.filter((one) => one === state).length }))
    .filter(({ rows }) => rows > 0)
    .reverse()
}
