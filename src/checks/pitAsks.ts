import { polyOf } from '../catalogue/pipe'
import type { Built } from '../model/built'
import type { Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import { INLET_OVER_OVERFLOW_MM, type PitFacts } from '../model/pitFacts'
import type { PitReturn } from '../model/returns'
import { workingLevels, type PitAsks } from '../model/workingLevels'
import { submergenceM } from '../solvers/water/submergence'
import { toM3PerS } from '../units/flow'
import { headM, toHeadM } from '../units/head'
import type { Bay } from './context'

/** Water that should stand over the intake of one of a pit's pumps while it gives a flow, L/h, in pipe of a stock; mm. */
export const submergenceMm = (eachLph: number, stock: string): number =>
  headM(submergenceM(toM3PerS(eachLph), toHeadM(polyOf(stock).idMm)))

/** Invert of the lowest drain that comes into a pit, mm from the benchmark's zero; undefined where none does. */
export const lowestInletMm = (
  { joins, levels }: Pick<Bay, 'joins' | 'levels'>,
  part: PartId,
): number | undefined => {
  const inverts = joins.flatMap(({ kind, from, to }) => {
    const run = kind === 'drain-to-pit' && to === part ? levels.drains.get(from) : undefined
    return run ? [run.low.invertMm] : []
  })
  return inverts.length > 0 ? Math.min(...inverts) : undefined
}

/** What leaves the pit, L/h, while its pumps run: what goes back through the bypass does not. */
export const pumpedLph = ({ water }: Pick<Bay, 'water'>, part: PartId): number => {
  const pump = water.pumps.get(part)
  return pump ? Math.max(0, pump.flowLph - pump.bypassLph) : 0
}

const askedOver = ({ water }: Bay, { part, pump }: Built): number => {
  const flowLph = water.pumps.get(part)?.flowLph ?? 0
  return pump ? submergenceMm(flowLph / pump.pumps, pump.stock) : 0
}

/** All the water that goes through a pit, L: its own, what is on its way to it, and its share of the tanks besides. */
const waterAbout = ({ returns, settings }: Bay, { deadL, swingL, transit }: PitReturn): number =>
  deadL + swingL + transit.totalL + settings.otherWaterL / returns.pits.size

/** What a pit's water asks of its levels; a pit that no drain comes to keeps its overflow. */
export const pitAsks = (bay: Bay, built: Built, pit: PitFacts): PitAsks => {
  const home = bay.returns.pits.get(built.part)
  return {
    inletMm: lowestInletMm(bay, built.part) ?? pit.overflowMm + INLET_OVER_OVERFLOW_MM,
    designL: home?.designL ?? 0,
    pumpLph: pumpedLph(bay, built.part),
    dayL: home ? waterAbout(bay, home) * bay.settings.dailyUse : 0,
    submergenceMm: askedOver(bay, built),
  }
}

/** One press that sizes a pit for its water; undefined for what is no pit, and where only a wider one would hold it. */
export const sizeMend = (bay: Bay, part: PartId): Mend | undefined => {
  const built = bay.builtOf.get(part)
  if (!built?.pit) return undefined
  const asks = pitAsks(bay, built, built.pit)
  return workingLevels(built.pit, asks) ? { kind: 'size-pit', part, asks } : undefined
}
