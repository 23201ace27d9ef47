import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'
import type { Bay } from './context'
import type { WaterSystem } from './waterSystems'

/** What each tower of an open zone gets on the mean, litres an hour. */
interface ZoneMean {
  /** The row with the valves. */
  readonly part: PartId
  readonly meanLph: number
}

/** Zones of one system that its water runs through, in the order of the bay's parts. */
const zoneMeans = (system: WaterSystem, bay: Bay): readonly ZoneMean[] => {
  const towers = new Map<PartId, number>()
  for (const { zone, tubeLph } of system.rows) towers.set(zone, (towers.get(zone) ?? 0) + tubeLph.length)
  return [...towers].flatMap(([part, count]) => {
    const zone = bay.water.zones.get(part)
    return zone && count > 0 ? [{ part, meanLph: zone.flowLph / count }] : []
  })
}

/** The zones whose towers get least and most, and how far apart they are as a share of the most. */
interface ZoneSpread {
  readonly least: ZoneMean
  readonly most: ZoneMean
  readonly spread: number
}

/** Flows as near as this, as a share, are one: which of two like zones comes out less is rounding. */
const SAME_SHARE = 1e-6

const spreadOf = (system: WaterSystem, bay: Bay): ZoneSpread | undefined => {
  const [first, ...others] = zoneMeans(system, bay)
  if (!first || others.length === 0) return undefined
  let [least, most] = [first, first]
  for (const zone of others) {
    if (zone.meanLph < least.meanLph * (1 - SAME_SHARE)) least = zone
    if (zone.meanLph > most.meanLph * (1 + SAME_SHARE)) most = zone
  }
  return most.meanLph > 0 ? { least, most, spread: 1 - least.meanLph / most.meanLph } : undefined
}

/** Undefined where there is nothing to balance: fewer than two open zones, or no water. */
export const zoneSpread = rememberEach<WaterSystem, Bay, ZoneSpread | undefined>(spreadOf)

/** A hand sets a valve to 5 % either way. Common practice, no source. */
export const BALANCED_SPREAD = 0.1

/** Whether zones get so unlike amounts that their valves have not been set. */
export const isUnbalanced = (system: WaterSystem, bay: Bay): boolean =>
  (zoneSpread(system, bay)?.spread ?? 0) > BALANCED_SPREAD
