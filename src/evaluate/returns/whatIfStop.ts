import { MINUTES_PER_HOUR, toMinutes } from '../../units/time'
import { drainHoldsL } from './drainFill'
import { dryState, litresBetween, minutesFor, type PitNow, type WhatIfRow } from './whatIfRow'

/** Everything that can come home in an hour is home, but for a little of what towers drip. */
export const powerCut = ({ stop }: PitNow): WhatIfRow => {
  const spiltL = stop.overflowL + stop.overRimL
  return {
    kind: 'power-cut',
    state: stop.state,
    levelMm: stop.endMm,
    spiltL,
    overflowMin: stop.overflowS === undefined ? undefined : toMinutes(stop.overflowS),
  }
}

/** Every drain into the pit is shut at its mouth while the pumps go on. */
export const returnBlocked = (pit: PitNow): WhatIfRow | undefined => {
  const { facts, pumpedLph, sources, bay } = pit
  if (pumpedLph <= 0) return undefined
  const minutesTo = (levelMm: number) => minutesFor(litresBetween(pit, facts.runningMm, levelMm), pumpedLph)
  const pumpOffMin = minutesTo(facts.pumpOffMm)
  const own = (sources?.drains ?? []).filter(({ to }) => to === pit.part)
  return {
    kind: 'return-blocked',
    state: dryState(pit, pumpedLph),
    alarmMin: minutesTo(facts.lowAlarmMm),
    pumpOffMin,
    outL: (pumpedLph / MINUTES_PER_HOUR) * pumpOffMin,
    drainsHoldL: own.reduce((sum, drain) => sum + drainHoldsL(bay, drain, 0), 0),
  }
}
