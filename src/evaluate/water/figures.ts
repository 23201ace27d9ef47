import type { FlowFigures, FlowState, TowerAt } from '../../model/water'
import { designUniformity, evennessOf } from '../../solvers/water/uniformity'
import type { PlacedRow } from './plan'

/** Up to so much spread a row is even, and up to so much it drifts; below so much of the target a tower starves. */
export const EVEN_SPREAD = 0.1
export const DRIFTING_SPREAD = 0.2
export const STARVED_SHARE = 0.75

/** A tower of a row by the index of its tube. */
export const towerAt = ({ built, feed, sitePlace }: PlacedRow, tube: number, flowLph: number): TowerAt => {
  const { station, line, outlet } = feed.tubes[tube] ?? { station: 0, line: 0, outlet: { x: 0, y: 0, z: 0 } }
  return { part: built.part, station, line, at: sitePlace(outlet), flowLph }
}

/**
 * Flows that differ by a smaller share are alike: of such the first is named, so that what the solver's tolerance leaves
 * does not have the worst tower of a bay that is the same on both sides jump from one side to the other.
 */
const ALIKE_SHARE = 1e-5

/** Whether a flow is less than another by more than a solver's tolerance makes of it. */
export const isClearlyLess = (flow: number, than: number): boolean => flow < than * (1 - ALIKE_SHARE)

const extremeOf = (flows: Float64Array, pick: (a: number, b: number) => number): number => {
  let extreme = flows[0] ?? 0
  for (const flow of flows) extreme = pick(extreme, flow)
  return extreme
}

/** Index of the least of some flows; the first of those that are alike, 0 of none. */
export const indexOfLeast = (flows: Float64Array): number => {
  const least = extremeOf(flows, Math.min)
  return Math.max(
    0,
    flows.findIndex((flow) => !isClearlyLess(least, flow)),
  )
}

/** Index of the greatest of some flows; the first of those that are alike, 0 of none. */
export const indexOfMost = (flows: Float64Array): number => {
  const most = extremeOf(flows, Math.max)
  return Math.max(
    0,
    flows.findIndex((flow) => !isClearlyLess(flow, most)),
  )
}

/** Towers that all get nothing are alike, but no measure of evenness says anything of them: all are 0. */
const NOTHING = {
  mean: 0,
  leastShare: 0,
  spread: 0,
  variation: 0,
  lowQuarter: 0,
  christiansen: 0,
  statistical: 0,
}

/** The flows of some towers in a few numbers; `least` and `most` are found by whoever knows the rows. */
export const figuresOf = (
  flows: Float64Array,
  least: TowerAt,
  most: TowerAt,
  tubeScatter: number,
): FlowFigures => {
  const even = evennessOf(flows) ?? NOTHING
  return {
    towers: flows.length,
    meanLph: even.mean,
    least,
    most,
    spread: even.spread,
    minOverMean: even.leastShare,
    variation: even.variation,
    lowQuarter: even.lowQuarter,
    christiansen: even.christiansen,
    emission: designUniformity(even.leastShare, tubeScatter),
    statistical: even.statistical,
  }
}

/** Even up to 10 % of spread, Drifting up to 20, Starved beyond or with a tower under 75 % of its target; shares of 1. */
export const flowStateOf = ({ least, spread }: FlowFigures, targetLph: number): FlowState => {
  if (spread > DRIFTING_SPREAD || least.flowLph < STARVED_SHARE * targetLph) return 'Starved'
  return spread > EVEN_SPREAD ? 'Drifting' : 'Even'
}
