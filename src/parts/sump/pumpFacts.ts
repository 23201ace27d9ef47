import { lossKOf } from '../../catalogue/losses'
import { polyOf } from '../../catalogue/pipe'
import { pumpCurveRowOf } from '../../catalogue/pumpCurves'
import type { Place } from '../../geometry/point'
import type { PumpFacts, PumpPoint } from '../../model/supplyFacts'
import { fittingLoss } from '../../solvers/water/friction'
import { gpm, toM3PerS } from '../../units/flow'
import { headM, toHeadM } from '../../units/head'
import { inches } from '../../units/length'
import type { Sump } from './schema'

/** Velocity head v2/2g of a flow in a bore, mm: what K = 1 loses. */
const velocityHeadMm = (flowLph: number, boreMm: number): number =>
  headM(fittingLoss(toM3PerS(flowLph), toHeadM(boreMm), 1))

/**
 * A filter is chosen for the flow of a bay of some five hundred towers, and loses this much at it: clean, from memory;
 * due for cleaning when the sight tubes on its two sides differ by 12 in more. Common practice, no source.
 */
const FILTER_FLOW_LPH = gpm(32)
const FILTER_CLEAN_MM = inches(12)
const FILTER_DIRTY_MM = FILTER_CLEAN_MM + inches(12)

/** The bypass valve is set where the pump gives this share of its greatest head: the middle of a usual curve. */
const BYPASS_AT_SHARE = 2 / 3

/** The curve of one of the pit's pumps. */
export const curveOf = ({ pump, curve }: Pick<Sump, 'pump' | 'curve'>): readonly PumpPoint[] =>
  pump === 'own' ? curve : pumpCurveRowOf(pump).curve

/** Flow at which the curve, straight from point to point, comes down to a head; its last flow where it never does. */
const flowAtHead = (curve: readonly PumpPoint[], headMm: number): number => {
  const after = curve.findIndex((point) => point.headMm <= headMm)
  const [a, b] = [curve[after - 1], curve[after]]
  if (!a || !b) return curve.at(-1)?.flowLph ?? 0
  return a.flowLph + ((b.flowLph - a.flowLph) * (a.headMm - headMm)) / (a.headMm - b.headMm)
}

/**
 * The loss that lets the wanted share of the flow back to the pit, as a multiple of the velocity head in the discharge
 * pipe: the bypass water uses up the pump's whole head, h = K v2/2g. Elsewhere on the curve the share is what the valve
 * passes.
 */
const bypassOf = (part: Sump, boreMm: number): PumpFacts['bypass'] => {
  if (part.bypassShare === 0) return undefined
  const curve = curveOf(part)
  const headMm = BYPASS_AT_SHARE * (curve[0]?.headMm ?? 0)
  const flowLph = part.bypassShare * part.pumps * flowAtHead(curve, headMm)
  const velocityMm = velocityHeadMm(flowLph, boreMm)
  return velocityMm > 0 ? { boreMm, lossK: headMm / velocityMm } : undefined
}

/** A filter's loss over the velocity head in the pipe that it stands in; two in parallel take half the flow each. */
const filterK = ({ filter }: Sump, lossMm: number, boreMm: number): number => {
  if (filter === 'none') return 0
  const alone = lossMm / velocityHeadMm(FILTER_FLOW_LPH, boreMm)
  return filter === 'one' ? alone : alone / 4
}

/** What each pump has of its own, up to where the pumps come together. */
const ownK = ({ strainer, checkValve }: Sump): number =>
  (strainer ? lossKOf('foot-strainer') : 0) +
  lossKOf('union') +
  (checkValve ? lossKOf('check-valve') + lossKOf('union') : 0)

/** Unions of the filter, the tee of the bypass run straight through, and the tees that bring pumps together. */
const sharedK = ({ pumps, filter, bypassShare }: Sump): number =>
  (filter === 'none' ? 0 : 2 * lossKOf('union')) +
  (bypassShare > 0 ? lossKOf('tee-run') : 0) +
  (pumps > 1 ? lossKOf('tee-branch') : 0)

/**
 * What the pit's pumps give and what stands between them and the main; undefined without a pump. In its own pipe each of
 * n like pumps sends an n-th of the flow, so that what stands there counts 1/n2 of the whole flow's velocity head.
 */
export const pumpFactsOf = (part: Sump, at: Place): PumpFacts | undefined => {
  if (part.pumps === 0) return undefined
  const { idMm } = polyOf(part.discharge)
  return {
    at,
    pumps: part.pumps,
    curve: curveOf(part),
    suctionMm: part.runningMm,
    stock: part.discharge,
    lossK: ownK(part) / (part.pumps * part.pumps) + sharedK(part),
    filterCleanK: filterK(part, FILTER_CLEAN_MM, idMm),
    filterDirtyK: filterK(part, FILTER_DIRTY_MM, idMm),
    isFilterDirty: part.filterState === 'dirty',
    hasCheckValve: part.checkValve,
    bypass: bypassOf(part, idMm),
  }
}
