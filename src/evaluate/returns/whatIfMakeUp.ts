import { litresAt } from '../../model/pitFacts'
import { overflowLph } from '../../solvers/gravity/overflow'
import { rootOfRising } from '../../solvers/gravity/rising'
import { HOURS_PER_DAY } from '../../units/time'
import { systemWater } from './pitFigures'
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

/** A valve or a float that never opens again: plants and air take so much a day, each pit's share as large as its water. */
export const dryDays = (pit: PitNow): WhatIfRow | undefined => {
  const { facts, bay } = pit
  const { pitsL, usePerDayL } = systemWater(bay)
  const perDayL = pitsL > 0 ? (usePerDayL * litresAt(facts, facts.runningMm)) / pitsL : 0
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
