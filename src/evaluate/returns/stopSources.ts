import type { Bay } from '../../checks/context'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { Join } from '../../model/levels'
import type { PitFacts } from '../../model/pitFacts'
import { wayHome } from '../../model/wayHome'
import type { PumpFacts } from '../../model/supplyFacts'
import { planOf } from '../water/planOf'
import { type Refill, refill } from '../water/refill'
import { channelOf, fallOnSite } from './troughLines'
import { troughWaters } from './troughWater'
import type { Channel } from '../../solvers/gravity/profile'

/** A row that water runs through, as its water comes home. Volumes L, flows L/h. */
export interface StopRow {
  readonly part: PartId
  readonly group: PartId
  readonly flowLph: number
  readonly towersL: number
  /** Riser pipes, headers, laterals and microtubes, as far as they empty. */
  readonly pipesL: number
  readonly firstS: number
  readonly lastS: number
  /** In its troughs, beyond the puddle that always stays. */
  readonly troughsL: number
  readonly channel: Channel | undefined
  readonly lines: number
  /** Of its water, what each drain takes, in shares; what is missing runs to the floor. */
  readonly drains: ReadonlyMap<PartId, number>
}

export interface StopDrain {
  readonly part: PartId
  readonly flowLph: number
  readonly standingL: number
  readonly boreMm: number
  readonly slopeMmPerM: number
  /** The next drain or the pit; undefined where it ends in nothing. */
  readonly to: PartId | undefined
}

export interface StopPit {
  readonly part: PartId
  readonly facts: PitFacts
  readonly pump: PumpFacts | undefined
  readonly group: PartId | undefined
  /** Of its pumps, less what a bypass gives straight back, L/h. */
  readonly pumpedLph: number
}

/** All that holds water in a bay which runs. */
export interface StopSources {
  readonly rows: readonly StopRow[]
  /** Those that run into another before it. */
  readonly drains: readonly StopDrain[]
  readonly pits: readonly StopPit[]
  /** Of all mains and pipes that join them, L; 0 behind a check valve. */
  readonly mainsL: number
  readonly refill: Refill
}

/** The bay with or without check valves at all its pumps; itself where nothing is said. */
export const withCheckValves = (bay: Bay, hasCheckValve: boolean | undefined): Bay => {
  if (hasCheckValve === undefined) return bay
  const built = bay.built.map((each): Built =>
    each.pump ? { ...each, pump: { ...each.pump, hasCheckValve } } : each,
  )
  return { ...bay, built, builtOf: new Map(built.map((each) => [each.part, each])) }
}

/** Whether every pump has a check valve: one without lets the mains of all run back. */
export const haveCheckValves = ({ built }: Pick<Bay, 'built'>): boolean =>
  built.every(({ pump }) => pump?.hasCheckValve ?? true)

const drainShares = (joins: readonly Join[], part: PartId): ReadonlyMap<PartId, number> => {
  const outlets = joins.filter(({ kind, from }) => kind === 'outlet-to-drain' && from === part)
  const shares = new Map<PartId, number>()
  for (const { to } of outlets)
    if (to !== undefined) shares.set(to, (shares.get(to) ?? 0) + 1 / outlets.length)
  return shares
}

/** What stays in the troughs of a row for ever, behind their outlets, L. */
const puddlesL = (built: Built, bay: Bay): number =>
  troughWaters(
    built,
    Array.from({ length: built.trough?.lines ?? 0 }, () => 0),
    bay,
  ).reduce((sum, { profile }) => sum + profile.standingL, 0)

const rowOf = (built: Built, group: PartId, bay: Bay, found: Refill): StopRow[] => {
  const { part, trough } = built
  const water = bay.water.rows.get(part)
  const filled = found.rows.get(part)
  if (!water || water.totalLph <= 0 || !filled) return []
  const standingL = bay.returns.troughs.get(part)?.standingL ?? 0
  return [
    {
      part,
      group,
      flowLph: water.totalLph,
      towersL: water.tubeLph.filter((lph) => lph > 0).length * bay.settings.towerHoldUpL,
      pipesL: filled.litres,
      firstS: filled.firstSeconds,
      lastS: filled.lastSeconds,
      troughsL: trough ? Math.max(0, standingL - puddlesL(built, bay)) : 0,
      channel: trough && channelOf(trough, fallOnSite(built, bay.levels), bay.settings.manningN),
      lines: trough?.lines ?? 1,
      drains: drainShares(bay.joins, part),
    },
  ]
}

const drainsOf = ({ levels, returns, joins }: Bay): readonly StopDrain[] => {
  const drains = [...levels.drains.values()].map((run) => {
    const known = returns.drains.get(run.part)
    const { stretches, pit } = wayHome(joins, run.part, 0)
    return {
      part: run.part,
      flowLph: known?.flowLph ?? 0,
      standingL: known?.standingL ?? 0,
      boreMm: run.odMm - 2 * run.wallMm,
      slopeMmPerM: run.slopeMmPerM,
      to: stretches[1]?.drain ?? pit,
      linesToPit: stretches.length,
    }
  })
  return drains.toSorted((a, b) => b.linesToPit - a.linesToPit)
}

const pitsOf = (bay: Bay, groupOf: ReadonlyMap<PartId, PartId | undefined>): readonly StopPit[] =>
  bay.built.flatMap(({ part, pit, pump }) => {
    if (!pit) return []
    const water = bay.water.pumps.get(part)
    const pumpedLph = water?.isLifting ? Math.max(0, water.flowLph - water.bypassLph) : 0
    return [{ part, facts: pit, pump, group: groupOf.get(part), pumpedLph }]
  })

/** Undefined for a bay in which no water runs. */
export const stopSources = (bay: Bay): StopSources | undefined => {
  const plan = planOf(bay)
  const found = refill(bay)
  if (!found || found.rows.size === 0) return undefined
  return {
    rows: plan.rows.flatMap(({ built, group }) => rowOf(built, group, bay, found)),
    drains: drainsOf(bay),
    pits: pitsOf(bay, new Map(plan.pumps.map(({ part, group }) => [part, group]))),
    mainsL: found.mainsLitres,
    refill: found,
  }
}
