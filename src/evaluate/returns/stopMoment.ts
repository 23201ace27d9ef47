import type { PartId } from '../../model/ids'
import { levelAt } from '../../model/pitFacts'
import type { StopMoment } from '../../model/stopRun'
import type { Standing } from './standings'
import type { Placed } from './stopCascade'
import type { StopSources } from './stopSources'

const map = <T>(
  places: ReadonlyMap<PartId, number>,
  of: (place: number, part: PartId) => T,
): ReadonlyMap<PartId, T> => new Map([...places].map(([part, place]) => [part, of(place, part)]))

/** The stores at one time as the drawing takes them; shares are of what stood there in `full`. */
export const stopMoment = (
  seconds: number,
  now: Standing,
  full: Standing,
  { pits }: StopSources,
  placed: Placed,
): StopMoment => {
  const share = (place: number) => {
    const all = full[place] ?? 0
    return all > 0 ? Math.min(1, (now[place] ?? 0) / all) : 0
  }
  const rim = (part: PartId) => now[placed.rims.get(part) ?? -1] ?? 0
  return {
    seconds,
    pitMm: new Map(
      pits.map(({ part, facts }) => [part, levelAt(facts, now[placed.pits.get(part) ?? -1] ?? 0)]),
    ),
    spiltL: map(placed.overflows, (place, part) => (now[place] ?? 0) + rim(part)),
    towerShare: map(placed.towers, share),
    troughShare: map(placed.troughs, share),
    drainShare: map(placed.drains, share),
  }
}
