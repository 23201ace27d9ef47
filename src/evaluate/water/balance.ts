import type { PartId } from '../../model/ids'
import { openingForLoss } from '../../solvers/water/valve'
import { commonFactor, type Tried, tried } from './commonFactor'
import { LPH_PER_M3S, toMm } from './metres'
import type { WaterInputs } from './plan'
import { planOf } from './planOf'
import type { PumpVerdict, ValveCard, ZoneSetting } from './valveCard'
import { AS_DRAWN, type WhatIf } from './whatIf'
import { type Bench, benchOf, neediest, velocityHeadM } from './zoneNeeds'

/** A pump within so much of what is wanted fits: a valve set by hand holds no closer. */
const FITS_WITHIN = 0.05

const verdictOf = (factor: number): PumpVerdict => {
  if (factor < 1 - FITS_WITHIN) return 'too-small'
  return factor > 1 + FITS_WITHIN ? 'too-large' : 'fits'
}

/** What a zone's trim valve has to burn, and how far it then stands open. */
const settingOf = (bench: Bench, { heads }: Tried, i: number, least: number): ZoneSetting | undefined => {
  const zone = bench.zones[i]
  if (!zone) return undefined
  const [flowM3S, needM, givenM] = [heads.flowM3S[i] ?? 0, heads.needM[i] ?? 0, heads.givenM[i] ?? 0]
  const trimK = Math.max(0, (givenM - needM) / velocityHeadM(zone, flowM3S) - zone.valves.lossK)
  const { trimTurnsAll } = zone.valves
  return {
    part: zone.built.part,
    flowLph: flowM3S * LPH_PER_M3S,
    inletHeadMm: toMm(givenM),
    sightMm: toMm(needM - zone.outletM),
    trimK,
    trimTurns: openingForLoss(trimK) * trimTurnsAll,
    trimTurnsAll,
    isNeediest: i === least,
  }
}

const cardOf = (bench: Bench, set: Tried, factor: number): ValveCard => {
  const least = neediest(set.heads)
  return {
    targetLph: bench.plan.settings.targetLph,
    factor,
    setFactor: set.factor,
    verdict: verdictOf(factor),
    leftMm: Math.max(0, toMm(set.leftM)),
    zones: bench.zones.flatMap((_, i) => settingOf(bench, set, i, least) ?? []),
  }
}

/**
 * How to set every trim valve so that all zones give their towers the same: each zone is solved backwards from its flow to
 * the head that it needs behind its valves, the flows of the mains are then known and so is what each zone finds before
 * its valves, and the trim valve burns the difference.
 *
 * `pump`: the neediest zone stands wide open and all get as much as the pump then gives. `target`: all get what is wanted,
 * and the neediest zone's valve burns something too; as `pump` where the pump gives less than that.
 *
 * Undefined where no zone that water comes to stands open, or the bay can't be solved.
 */
export const balance = (
  inputs: WaterInputs,
  aim: 'pump' | 'target' = 'pump',
  whatIf: WhatIf = AS_DRAWN,
): ValveCard | undefined => {
  const bench = benchOf(planOf(inputs), whatIf)
  const most = bench && commonFactor(bench)
  if (!bench || !most) return undefined
  const set = aim === 'target' && most.factor > 1 ? tried(bench, 1) : most
  return set && cardOf(bench, set, most.factor)
}

/** A valve less than a quarter of a turn open is as good as shut, and a layout holds none. */
const LEAST_TURNS = 1 / 4

/** What an edit has to write down: the turns of each trim valve. */
export const trimSettings = ({ zones }: ValveCard): readonly { part: PartId; trimTurns: number }[] =>
  zones.map(({ part, trimTurns }) => ({ part, trimTurns: Math.max(LEAST_TURNS, trimTurns) }))
