import { polyOf } from '../../catalogue/pipe'
import type { FeedFacts, FeedLateral } from '../../model/feedFacts'
import type { RowWater } from '../../model/water'
import { lateralLossByTable } from '../../solvers/water/christiansen'
import { reynoldsNumber, TURBULENT_RE } from '../../solvers/water/friction'
import { POLYETHYLENE_C } from '../../solvers/water/hazenWilliams'
import { waterAt } from '../../solvers/water/properties'
import { toM3PerS } from '../../units/flow'
import { headM, toHeadM } from '../../units/head'

/** One run of a lateral, from where water comes in to its last tube, computed in two ways. */
export interface LateralCheck {
  readonly lateral: number
  readonly lengthMm: number
  readonly flowLph: number
  /** Head lost by the solved network, mm. */
  readonly solvedMm: number
  /** Head lost by Hazen and Williams with Christiansen's factor, mm. */
  readonly tableMm: number
  /** Share of the tubes, from the far end, whose stretch of lateral runs at less than Reynolds 4,000. */
  readonly smoothShare: number
}

interface Outlet {
  readonly alongMm: number
  readonly joint: number
  readonly flowLph: number
}

interface RunAlong {
  readonly fedMm: number
  readonly fedJoint: number
  /** Nearest first. */
  readonly outlets: readonly Outlet[]
}

const outletsOn = (lateral: FeedLateral, feed: FeedFacts, { tubeLph }: RowWater): readonly Outlet[] => {
  const flowAt = new Map<number, number>()
  feed.tubes.forEach(({ joint }, i) => flowAt.set(joint, (flowAt.get(joint) ?? 0) + (tubeLph[i] ?? 0)))
  return lateral.joints.flatMap((joint, i) => {
    const flowLph = flowAt.get(joint)
    return flowLph === undefined ? [] : [{ joint, flowLph, alongMm: lateral.alongMm[i] ?? 0 }]
  })
}

/** Runs to either side of each place where water comes in; between two of them it meets half-way. */
const runsOf = (lateral: FeedLateral, feed: FeedFacts, water: RowWater): readonly RunAlong[] => {
  const fed = lateral.fedAt.map((joint) => ({
    joint,
    alongMm: lateral.alongMm[lateral.joints.indexOf(joint)] ?? 0,
  }))
  const off = (alongMm: number, place: number) => Math.abs(alongMm - place)
  return fed.flatMap(({ joint, alongMm }) => {
    const own = outletsOn(lateral, feed, water).filter((outlet) =>
      fed.every((other) => off(outlet.alongMm, alongMm) <= off(outlet.alongMm, other.alongMm)),
    )
    const sides = [own.filter((o) => o.alongMm > alongMm), own.filter((o) => o.alongMm <= alongMm)]
    return sides
      .filter((side) => side.length > 0)
      .map((side) => ({
        fedMm: alongMm,
        fedJoint: joint,
        outlets: side.toSorted((a, b) => off(a.alongMm, alongMm) - off(b.alongMm, alongMm)),
      }))
  })
}

const flowOf = (outlets: readonly Outlet[]): number => outlets.reduce((sum, { flowLph }) => sum + flowLph, 0)

/** How many of the outlets are behind a stretch whose flow is not fully churned. */
const smoothOutlets = (outlets: readonly Outlet[], boreM: number, kinematicM2S: number): number =>
  outlets.filter(
    (_, i) => reynoldsNumber(toM3PerS(flowOf(outlets.slice(i))), boreM, kinematicM2S) < TURBULENT_RE,
  ).length

const checkOf = (
  lateral: number,
  { fedMm, fedJoint, outlets }: RunAlong,
  boreM: number,
  water: RowWater,
  waterC: number,
): LateralCheck => {
  const last = outlets.at(-1)
  const lengthMm = Math.abs((last?.alongMm ?? fedMm) - fedMm)
  const flowLph = flowOf(outlets)
  const headAt = (joint: number) => water.jointHeadMm[joint] ?? NaN
  const lossM = lateralLossByTable(
    toM3PerS(flowLph),
    toHeadM(lengthMm),
    boreM,
    outlets.length,
    POLYETHYLENE_C,
  )
  return {
    lateral,
    lengthMm,
    flowLph,
    solvedMm: headAt(fedJoint) - headAt(last?.joint ?? fedJoint),
    tableMm: headM(lossM),
    smoothShare: smoothOutlets(outlets, boreM, waterAt(waterC).kinematicM2S) / outlets.length,
  }
}

/**
 * The run of a row that loses most head, by the solved network and by the tables of the trade; undefined for a ring,
 * where water comes to a tower from both sides, and for a row without towers.
 */
export const lateralCheck = (feed: FeedFacts, water: RowWater, waterC: number): LateralCheck | undefined => {
  const stock = feed.pipes.find(({ role }) => role === 'lateral')?.stock
  if (feed.kind === 'ring' || stock === undefined) return undefined
  const boreM = toHeadM(polyOf(stock).idMm)
  return feed.laterals
    .flatMap((lateral, i) =>
      runsOf(lateral, feed, water).map((run) => checkOf(i + 1, run, boreM, water, waterC)),
    )
    .reduce<LateralCheck | undefined>(
      (worst, check) => (worst === undefined || check.solvedMm > worst.solvedMm ? check : worst),
      undefined,
    )
}
