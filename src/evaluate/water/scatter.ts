import type { Settings } from '../../layout/settings'
import type { Built } from '../../model/built'
import { type Levels, siteLevel } from '../../model/levels'
import type { RowWater } from '../../model/water'
import { pipeLossSlope } from '../../solvers/water/friction'
import { waterAt } from '../../solvers/water/properties'
import { TUBE_LOSS_K } from '../../solvers/water/tube'
import { evennessOf } from '../../solvers/water/uniformity'
import { toM3PerS } from '../../units/flow'
import { boresOf } from './bores'
import { chanceFrom, evenly, normally, percentile } from './chance'
import { LPH_PER_M3S, toM } from './metres'

/** From the 5th to the 95th percentile. */
export interface Band {
  readonly low: number
  readonly high: number
}

/** What becomes of a row whose tube ends hang a little off and whose tubes are not quite alike. */
export interface RowScatter {
  readonly scenarios: number
  /** Over all towers of all scenarios. */
  readonly flowLph: Band
  /** Of each tower by itself, in the order of the feed's tubes. */
  readonly lowLph: Float64Array
  readonly highLph: Float64Array
  /** Shares of 1, over the scenarios. */
  readonly spread: Band
  readonly lowQuarter: Band
}

export interface ScatterContext {
  readonly settings: Pick<Settings, 'waterC' | 'bucket' | 'outletErrorMm' | 'tubeScatter'>
  readonly levels: Levels
}

export interface ScatterOptions {
  /** The same one gives the same bands. */
  readonly seed?: number
  readonly scenarios?: number
}

const USUAL_SEED = 1
const USUAL_SCENARIOS = 400
const LOW = 0.05
const HIGH = 0.95

/** How a row's tubes answer: flow at rest, which is below 0 for a tube that hangs too high, and how fast it grows. */
export interface TubeResponse {
  readonly restLph: Float64Array
  /** More flow for each mm that the open end hangs lower. */
  readonly lphPerMm: Float64Array
}

/**
 * The linear response of each tube about its solved flow, with the head at its barb held: one end among many that hangs
 * off changes next to nothing of that head. Litres an hour, mm.
 */
export const tubeResponse = (
  built: Built,
  { tubeLph, jointHeadMm }: RowWater,
  { settings, levels }: ScatterContext,
): TubeResponse => {
  const tubes = built.feed?.tubes ?? []
  const { kinematicM2S } = waterAt(settings.waterC)
  const boreOf = boresOf(settings.bucket)
  const lphPerMm = Float64Array.from(tubes, ({ stock, lengthMm }, i) => {
    const pipe = { lengthM: toM(lengthMm), boreM: boreOf(stock), lossK: TUBE_LOSS_K }
    return (toM(1) * LPH_PER_M3S) / pipeLossSlope(toM3PerS(tubeLph[i] ?? 0), pipe, kinematicM2S)
  })
  const restLph = Float64Array.from(tubes, ({ joint, outlet }, i) => {
    const flow = tubeLph[i] ?? 0
    const overMm = (jointHeadMm[joint] ?? 0) - siteLevel(levels, built, outlet)
    return flow > 0 ? flow : (lphPerMm[i] ?? 0) * Math.min(0, overMm)
  })
  return { restLph, lphPerMm }
}

/** Flows with each open end so much too high, mm, and each tube passing so many times its flow. */
export const flowsOff = (
  { restLph, lphPerMm }: TubeResponse,
  highMm: ArrayLike<number>,
  factor: ArrayLike<number>,
): Float64Array =>
  restLph.map((rest, i) => {
    const flow = rest - (lphPerMm[i] ?? 0) * (highMm[i] ?? 0)
    return Math.max(0, flow) * Math.max(0, factor[i] ?? 1)
  })

const bandOf = (values: Float64Array): Band => {
  const rising = values.slice().sort()
  return { low: percentile(rising, LOW), high: percentile(rising, HIGH) }
}

interface Scenarios {
  readonly towers: number
  readonly count: number
  /** Scenario by scenario. */
  readonly flowLph: Float64Array
}

const drawn = (
  response: TubeResponse,
  { outletErrorMm, tubeScatter }: ScatterContext['settings'],
  { seed = USUAL_SEED, scenarios: count = USUAL_SCENARIOS }: ScatterOptions,
): Scenarios => {
  const towers = response.restLph.length
  const chance = chanceFrom(seed)
  const flowLph = new Float64Array(towers * count)
  const [highMm, factor] = [new Float64Array(towers), new Float64Array(towers)]
  for (let scenario = 0; scenario < count; scenario += 1) {
    for (let i = 0; i < towers; i += 1) {
      highMm[i] = outletErrorMm * evenly(chance)
      factor[i] = 1 + tubeScatter * normally(chance)
    }
    flowLph.set(flowsOff(response, highMm, factor), scenario * towers)
  }
  return { towers, count, flowLph }
}

/** A figure of each scenario; 0 where no tower gets water. */
const each = ({ towers, count, flowLph }: Scenarios, figure: 'spread' | 'lowQuarter'): Float64Array =>
  Float64Array.from({ length: count }, (_, scenario) => {
    const even = evennessOf(flowLph.subarray(scenario * towers, (scenario + 1) * towers))
    return even?.[figure] ?? 0
  })

const towerBands = ({ towers, count, flowLph }: Scenarios): Pick<RowScatter, 'lowLph' | 'highLph'> => {
  const [lowLph, highLph] = [new Float64Array(towers), new Float64Array(towers)]
  for (let i = 0; i < towers; i += 1) {
    const own = Float64Array.from({ length: count }, (_, scenario) => flowLph[scenario * towers + i] ?? 0)
    const { low, high } = bandOf(own)
    lowLph[i] = low
    highLph[i] = high
  }
  return { lowLph, highLph }
}

/**
 * The bands in which a solved row's flows lie when every open end hangs anywhere within the error of its level and the
 * tubes scatter among each other: four hundred drawn scenarios, the same every time. Undefined for a row without towers.
 */
export const scatterOfRow = (
  built: Built,
  water: RowWater,
  context: ScatterContext,
  options: ScatterOptions = {},
): RowScatter | undefined => {
  if (!built.feed || built.feed.tubes.length === 0) return undefined
  const scenarios = drawn(tubeResponse(built, water, context), context.settings, options)
  return {
    scenarios: scenarios.count,
    flowLph: bandOf(scenarios.flowLph),
    ...towerBands(scenarios),
    spread: bandOf(each(scenarios, 'spread')),
    lowQuarter: bandOf(each(scenarios, 'lowQuarter')),
  }
}
