import { overflowLph } from '../../solvers/gravity/overflow'
import { rootOfRising } from '../../solvers/gravity/rising'
import { HOURS_PER_DAY } from '../../units/time'
import { pitLitres } from './stopCascade'
import { litresBetween, minutesFor, type PitNow, type WhatIfRow } from './whatIfRow'

/** The head, mm, over its invert at which an overflow takes a flow, L/h; Infinity for more than it takes under `mostMm`. */
const overflowHeadMm = (boreMm: number, flowLph: number, mostMm: number): number =>
  overflowLph(boreMm, mostMm) < flowLph
    ? Infinity
    : rootOfRising((mm) => overflowLph(boreMm, mm) - flowLph, 0, mostMm)

/**
 * The make-up valve stands open while the bay runs. All of it goes up from the running level to the overflow, and over the
 * rim if the overflow's pipe does not pass it under the rim.
 */
export const stuckMakeUp = (pit: PitNow): WhatIfRow | undefined => {
  const { makeUpLph, overflowMm, rimMm, runningMm, overflowBoreMm } = pit.facts
  if (makeUpLph <= 0) return undefined
  const overMm = overflowHeadMm(overflowBoreMm, makeUpLph, rimMm - overflowMm)
  const isPassed = Number.isFinite(overMm)
  return {
    kind: 'make-up-stuck',
    state: isPassed ? 'Holds' : 'Spills',
    flowLph: makeUpLph,
    overflowMin: minutesFor(litresBetween(pit, overflowMm, runningMm), makeUpLph),
    overMm,
    // What the overflow takes meanwhile only makes it later.
    rimMin: isPassed ? Infinity : minutesFor(litresBetween(pit, rimMm, runningMm), makeUpLph),
  }
}

/** All the water of the system, L: in tanks, in pits at their running level, and under way. */
const systemL = ({ bay, sources }: PitNow): number => {
  const pits = (sources?.pits ?? []).reduce((sum, { facts }) => sum + pitLitres(facts, facts.runningMm), 0)
  const rows = (sources?.rows ?? []).reduce(
    (sum, { towersL, pipesL, troughsL }) => sum + towersL + pipesL + troughsL,
    0,
  )
  const drains = (sources?.drains ?? []).reduce((sum, { standingL }) => sum + standingL, 0)
  return bay.settings.otherWaterL + pits + rows + drains + (sources?.mainsL ?? 0)
}

/** A valve or a float that never opens again: plants and air take so much a day, each pit's share as large as its water. */
export const dryDays = (pit: PitNow): WhatIfRow | undefined => {
  const { facts, bay, sources } = pit
  const pitsL = (sources?.pits ?? []).reduce(
    (sum, each) => sum + pitLitres(each.facts, each.facts.runningMm),
    0,
  )
  const share = pitsL > 0 ? pitLitres(facts, facts.runningMm) / pitsL : 0
  const perDayL = bay.settings.dailyUse * systemL(pit) * share
  if (perDayL <= 0) return undefined
  const days = (levelMm: number) => litresBetween(pit, facts.runningMm, levelMm) / perDayL
  const [alarmDays, pumpOffDays] = [days(facts.lowAlarmMm), days(facts.pumpOffMm)]
  return {
    kind: 'no-make-up',
    // A pit is to carry a day of what is used.
    state: pumpOffDays < 1 ? 'Thin' : 'Holds',
    perDayL,
    alarmDays,
    pumpOffDays,
    valveDayL: facts.makeUpLph * HOURS_PER_DAY,
  }
}
