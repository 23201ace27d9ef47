import { toMinutes } from '../../units/time'
import type { ZoneFlush } from '../water/flush'
import { levelAfter } from './restart'
import { litresBetween, minutesFor, type PitNow, type WhatIfRow } from './whatIfRow'

/**
 * The zone whose flush takes most, run to the floor: what its towers still get comes home, what its ends give does not. What
 * the other zones let go once they are shut is left out, so it is worse than it will be.
 */
export const flushedZone = (pit: PitNow, flushes: readonly ZoneFlush[]): WhatIfRow | undefined => {
  const { sources, group, facts } = pit
  const own = new Set((sources?.rows ?? []).filter((row) => row.group === group).map((row) => row.part))
  const worst = flushes
    .filter(({ part }) => own.has(part))
    .reduce<ZoneFlush | undefined>(
      (most, each) => (most && most.litres >= each.litres ? most : each),
      undefined,
    )
  if (!worst || pit.pumpedLph <= 0) return undefined
  const groupLph = (sources?.pits ?? [])
    .filter((each) => each.group === group)
    .reduce((sum, { pumpedLph }) => sum + pumpedLph, 0)
  const share = pit.pumpedLph / groupLph
  const pumpOffMin = minutesFor(litresBetween(pit, facts.runningMm, facts.pumpOffMm), share * worst.endsLph)
  const minutes = toMinutes(worst.seconds)
  return {
    kind: 'zone-flushed',
    // Someone stands by the ends while they run: no alarm has to fetch them.
    state: pumpOffMin < minutes ? 'Thin' : 'Holds',
    zone: worst.part,
    litres: worst.litres,
    minutes,
    levelMm: Math.max(facts.bottomMm, levelAfter(pit, facts.runningMm, share * worst.litres)),
    pumpOffMin,
  }
}
