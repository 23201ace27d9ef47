import type { PartId } from '../../model/ids'
import { LPH_PER_M3S } from './metres'
import type { Plan, WaterInputs } from './plan'
import { planOf } from './planOf'
import { type Solved, solvedBay } from './solved'
import { AS_DRAWN, type WhatIf } from './whatIf'

/** Shutting one zone may change another by so much before a bypass or a head box is due. Common practice, no source. */
export const MOST_CHANGE = 0.1

/** What shutting one zone does to all the others that stand open. */
export interface ZoneEffect {
  /** The zone that is shut, by the row with the valves. */
  readonly part: PartId
  /** Change of each other zone's flow as a share of what it was: 0.12 for 12 % more. */
  readonly changes: ReadonlyMap<PartId, number>
  /** The one that changes most, either way; undefined where no other is open. */
  readonly most: { readonly part: PartId; readonly change: number } | undefined
  /** Some zone changes by more than it may. */
  readonly isTooMuch: boolean
}

/** Shutting zones one at a time; each is solved when it is asked for. */
export interface ZoneEffects {
  /** Zones that stand open and get water, in the order of the bay's parts. */
  readonly zones: readonly PartId[]
  /** What each of them gets with all of them open, L/h. */
  readonly flowLph: ReadonlyMap<PartId, number>
  /** Undefined for any other zone, or where the bay can't be solved. */
  readonly shut: (part: PartId) => ZoneEffect | undefined
}

const zoneFlows = ({ plan, solution }: Solved): ReadonlyMap<PartId, number> => {
  const flows = new Map<PartId, number>()
  for (const { zone, mouth, piece } of plan.rows) {
    const own = solution.mouthM3S.subarray(mouth, mouth + piece.mouths.from.length)
    const flow = own.reduce((sum, each) => sum + each, 0) * LPH_PER_M3S
    flows.set(zone, (flows.get(zone) ?? 0) + flow)
  }
  return flows
}

const openZones = ({ rows }: Plan, flowLph: ReadonlyMap<PartId, number>): readonly PartId[] =>
  rows
    .filter(({ built, valve }) => valve !== undefined && (flowLph.get(built.part) ?? 0) > 0)
    .map(({ built }) => built.part)

const effectOf = (
  part: PartId,
  zones: readonly PartId[],
  before: ReadonlyMap<PartId, number>,
  after: ReadonlyMap<PartId, number>,
): ZoneEffect => {
  const others = zones.filter((zone) => zone !== part)
  const changes = new Map(others.map((zone) => [zone, (after.get(zone) ?? 0) / (before.get(zone) ?? 1) - 1]))
  let most: ZoneEffect['most']
  for (const [zone, change] of changes)
    if (!most || Math.abs(change) > Math.abs(most.change)) most = { part: zone, change }
  return { part, changes, most, isTooMuch: most !== undefined && Math.abs(most.change) > MOST_CHANGE }
}

/**
 * What shutting each zone does to the others, found by shutting it: one solution for the bay and one for each zone that is
 * asked for. Undefined where the bay has no water or can't be solved.
 */
export const zoneEffects = (inputs: WaterInputs, whatIf: WhatIf = AS_DRAWN): ZoneEffects | undefined => {
  const plan = planOf(inputs)
  const solved = plan.levels > 0 ? solvedBay(plan, whatIf) : undefined
  if (!solved || 'sentence' in solved) return undefined
  const flowLph = zoneFlows(solved)
  const zones = openZones(plan, flowLph)
  return {
    zones,
    flowLph: new Map(zones.map((zone) => [zone, flowLph.get(zone) ?? 0])),
    shut: (part) => {
      if (!zones.includes(part)) return undefined
      const without = solvedBay(plan, {
        ...whatIf,
        valves: new Map([...(whatIf.valves ?? []), [part, false]]),
      })
      return 'sentence' in without ? undefined : effectOf(part, zones, flowLph, zoneFlows(without))
    },
  }
}
