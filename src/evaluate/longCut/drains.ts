import type { Bay } from '../../checks/context'
import type { Built, Tube } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { DrainRun } from '../../model/levels'
import type { WayStretch } from '../../model/wayHome'
import { segmentsOf } from '../../geometry/polyline'
import { dropOver } from '../../units/slope'
import { type Leg, legAfter } from './legs'
import type { CutBranch, CutDrain, CutPeg, CutReach } from './section'

/** Places of a stretch that are nearer than this to its beginning are at it, mm: sums of distances are not exact. */
const ROUNDING_MM = 1e-3

export const drainTube = (built: Built | undefined): Tube | undefined =>
  built?.tubes.find(({ role }) => role === 'drain')

/** A drain on its way home, with the leg that it makes of the section. */
export interface Laid {
  readonly run: DrainRun
  readonly leg: Leg
}

/** The legs of a way home, behind `before`; lines whose levels are not known end it. */
export const laidAlong = (
  bay: Bay,
  stretches: readonly WayStretch[],
  before: Leg | undefined,
): readonly Laid[] => {
  const laid: Laid[] = []
  for (const { drain, fromMm } of stretches) {
    const run = bay.levels.drains.get(drain)
    const tube = drainTube(bay.builtOf.get(drain))
    if (!run || !tube) break
    laid.push({ run, leg: legAfter(laid.at(-1)?.leg ?? before, tube.path, fromMm) })
  }
  return laid
}

/** Where a place so far along a line is on the section. */
const onSection = ({ startMm, alongMm }: Leg, lineMm: number): number => startMm + lineMm - alongMm

/** The invert of a drain so far along it, mm. */
export const invertAt = (run: DrainRun, lineMm: number): number =>
  run.high.invertMm - dropOver(lineMm, run.slopeMmPerM)

const reachesOf = (bay: Bay, { run, leg }: Laid): CutReach[] =>
  (bay.returns.drains.get(run.part)?.reaches ?? [])
    .filter(({ toMm }) => toMm > leg.alongMm + ROUNDING_MM)
    .map((reach) => ({
      ...reach,
      fromMm: onSection(leg, Math.max(reach.fromMm, leg.alongMm)),
      toMm: onSection(leg, reach.toMm),
    }))

const pegsOf = ({ run, leg }: Laid): CutPeg[] =>
  run.pegs
    .filter(({ alongMm }) => alongMm >= leg.alongMm - ROUNDING_MM)
    .map((peg) => ({ ...peg, sMm: onSection(leg, peg.alongMm) }))

const branchesOf = (bay: Bay, { run, leg }: Laid, through: ReadonlySet<PartId>): CutBranch[] =>
  bay.joins.flatMap(({ kind, from, to, alongMm }) => {
    const branch = bay.levels.drains.get(from)
    if (kind !== 'drain-to-drain' || to !== run.part || through.has(from) || !branch) return []
    if (alongMm < leg.alongMm - ROUNDING_MM) return []
    return [{ part: from, sMm: onSection(leg, alongMm), invertMm: branch.low.invertMm, odMm: branch.odMm }]
  })

const bendsOf = ({ leg }: Laid): number[] =>
  segmentsOf(leg.points)
    .slice(1)
    .filter(({ startMm }) => startMm > leg.alongMm + ROUNDING_MM)
    .map(({ startMm }) => onSection(leg, startMm))

/** A drain's stretch as it is drawn on the section. */
export const cutDrain = (bay: Bay, laid: Laid, through: ReadonlySet<PartId>): CutDrain => {
  const { run, leg } = laid
  return {
    part: run.part,
    fromMm: leg.startMm,
    toMm: leg.startMm + leg.lengthMm,
    alongMm: leg.alongMm,
    odMm: run.odMm,
    wallMm: run.wallMm,
    bedMm: run.bedMm,
    slopeMmPerM: run.slopeMmPerM,
    highInvertMm: invertAt(run, leg.alongMm),
    lowInvertMm: run.low.invertMm,
    state: bay.returns.drains.get(run.part)?.state,
    reaches: reachesOf(bay, laid),
    pegs: pegsOf(laid),
    branches: branchesOf(bay, laid, through),
    bendsMm: bendsOf(laid),
  }
}
