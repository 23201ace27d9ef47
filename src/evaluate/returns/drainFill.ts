import type { Bay } from '../../checks/context'
import type { DrainRun, DrainStation } from '../../model/levels'
import { areaMm2 } from '../../solvers/gravity/section'
import { MM_PER_M } from '../../units/length'
import { dropOver } from '../../units/slope'
import { cubicMetres } from '../../units/volume'
import type { StopDrain } from './stopSources'

/** Slices that a drain is cut in to tell what it holds. */
const SLICES = 60

/** Where water first comes out of a line: at the lowest of its holes, from the floor there or from a pipe that lies higher, mm. */
const standsToMm = (holes: readonly DrainStation[]): number =>
  Math.min(...holes.map(({ groundMm, crownMm }) => Math.max(groundMm, crownMm)))

/** Holes above a place, from the low end, mm; those at it too. */
const holesAbove = ({ outlets, lengthMm }: DrainRun, fromLowMm: number): readonly DrainStation[] =>
  outlets.filter(({ alongMm }) => lengthMm - alongMm >= fromLowMm - 1)

/**
 * What runs into a line that is shut so many mm from its low end before it stands to the floor over the lowest of its holes,
 * L, beyond what stands in it anyhow. What stands in branches and in the holes themselves is left out, so it is soon.
 */
export const drainHoldsL = (bay: Bay, drain: StopDrain, fromLowMm: number): number => {
  const run = bay.levels.drains.get(drain.part)
  if (!run) return 0
  const lengthMm = Math.max(0, run.lengthMm - fromLowMm)
  const holes = holesAbove(run, fromLowMm)
  const topMm = standsToMm(holes.length > 0 ? holes : [run.low])
  const section = { shape: 'circle', diameterMm: drain.boreMm } as const
  let mm3 = 0
  for (let i = 0; i < SLICES; i += 1) {
    const along = ((i + 0.5) / SLICES) * lengthMm
    const invertMm = run.high.invertMm - dropOver(along, run.slopeMmPerM)
    mm3 += (areaMm2(section, topMm - invertMm) * lengthMm) / SLICES
  }
  const share = run.lengthMm > 0 ? lengthMm / run.lengthMm : 0
  return Math.max(0, cubicMetres(mm3 / MM_PER_M ** 3) - share * drain.standingL)
}
