import type { RowScatter } from '../../evaluate/water/scatter'
import type { Settings } from '../../layout/settings'
import type { RowWater } from '../../model/water'
import { LAMINAR_RE, TURBULENT_RE } from '../../solvers/water/friction'
import {
  classOn,
  FIELD_SCALE,
  type Scale,
  SPREAD_SCALE,
  STATISTICAL_SCALE,
  TUBE_SCALE,
} from '../../solvers/water/uniformity'
import type { Writer } from '../../units/writer'

type BuildSettings = Pick<Settings, 'tubeScatter' | 'outletErrorMm'>

/** One number of a row, with the published class that it falls in. */
export interface RowFigure {
  readonly name: string
  readonly value: string
  /** Its class on a published scale. */
  readonly grade?: string
  /** Whose scale or formula it is, or what the number tells. */
  readonly note?: string
}

const sourceOf = ({ source, isFromMemory }: Scale): string =>
  isFromMemory ? `${source}; from memory` : source

const graded = (scale: Scale, share: number): Pick<RowFigure, 'grade' | 'note'> => ({
  grade: classOn(scale, share),
  note: sourceOf(scale),
})

/** A flow near the change from smooth to churned may be either in two tubes that look alike. */
const nearChurn = { from: 1800, to: TURBULENT_RE }

const tubeFlowWords = (reynolds: number): string => {
  if (reynolds < nearChurn.from) return 'smooth: like tubes give like flows'
  if (reynolds < nearChurn.to)
    return `between ${nearChurn.from.toLocaleString()} and ${nearChurn.to.toLocaleString()} a tube may run smooth or churned, for no reason that shows`
  return 'churned'
}

const evenness = ({ figures }: RowWater, { share, flow }: Writer, tubeScatter: number): RowFigure[] => [
  { name: 'Mean flow', value: flow(figures.meanLph) },
  { name: 'Least over mean', value: share(figures.minOverMean) },
  {
    name: 'Spread',
    value: share(figures.spread),
    ...graded(SPREAD_SCALE, figures.spread),
    note: `(most − least) / most; ${sourceOf(SPREAD_SCALE)}`,
  },
  {
    name: 'Low quarter over mean, DU',
    value: share(figures.lowQuarter),
    ...graded(FIELD_SCALE, figures.lowQuarter),
  },
  {
    name: 'Christiansen’s coefficient, CU',
    value: share(figures.christiansen),
    note: 'Christiansen 1942; no class is published with it',
  },
  {
    name: 'Emission uniformity, EU',
    value: share(figures.emission),
    note: `Keller and Karmeli 1974, ASAE EP405.1; with tubes that scatter by ${share(tubeScatter)}`,
  },
  {
    name: 'Statistical uniformity, Us',
    value: share(figures.statistical),
    ...graded(STATISTICAL_SCALE, figures.statistical),
  },
  { name: 'Scatter of the tubes', value: share(tubeScatter), ...graded(TUBE_SCALE, tubeScatter) },
]

/** What of the row is left to those who build it: the ends of its tubes, and the tubes themselves. */
const asBuilt = (
  { spread, lowQuarter }: RowScatter,
  { tubeScatter, outletErrorMm }: BuildSettings,
  { share, onTape }: Writer,
): readonly RowFigure[] => [
  {
    name: 'Spread as built',
    value: `${share(spread.low)} to ${share(spread.high)}`,
    note: `in 90 of 100 builds, with tube ends within ${onTape(outletErrorMm)} of level and tubes that scatter by ${share(tubeScatter)}; the same draws every time`,
  },
  { name: 'Low quarter as built', value: `${share(lowQuarter.low)} to ${share(lowQuarter.high)}` },
]

const water = (row: RowWater, { sightTube, velocity, flowTotal }: Writer): RowFigure[] => [
  { name: 'Into the row', value: flowTotal(row.totalLph) },
  { name: 'Head at the entry, in a sight tube', value: sightTube(row.entryHeadMm) },
  { name: 'Fastest water in its pipes', value: velocity(row.fastestMS) },
  {
    name: 'Reynolds number of the fastest tube',
    value: Math.round(row.tubeReynolds).toLocaleString(),
    note: `${tubeFlowWords(row.tubeReynolds)} (smooth up to ${LAMINAR_RE.toLocaleString()})`,
  },
]

/** What a row's water comes to, in figures; `scatter` is what building it adds to them. */
export const rowFigures = (
  row: RowWater,
  settings: BuildSettings,
  scatter: RowScatter | undefined,
  writer: Writer,
): readonly RowFigure[] => [
  ...evenness(row, writer, settings.tubeScatter),
  ...(scatter ? asBuilt(scatter, settings, writer) : []),
  ...water(row, writer),
]
