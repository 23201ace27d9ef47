import type { Mouths, Network, Pipes, Pumps, Valves } from '../../solvers/water/network'
import { bayNetwork } from './bayNetwork'
import type { Plan, PlacedRow } from './plan'
import type { WhatIf } from './whatIf'

/** A zone with valves of its own. */
export type Valved = PlacedRow & {
  readonly valve: number
  readonly valves: NonNullable<PlacedRow['feed']['valves']>
}

/** The zones that stand open, in the order of the bay's parts. */
export const openZones = ({ rows }: Plan): readonly Valved[] =>
  rows.flatMap((row) => {
    const { valves } = row.feed
    return valves?.isOpen && row.valve !== undefined ? [{ ...row, valves, valve: row.valve }] : []
  })

const shifted = (nodes: Int32Array, levels: number, by: number): Int32Array =>
  nodes.map((node) => (node < levels ? node : node + by))

const shiftedEnds = <T extends Pipes | Valves | Pumps>(links: T, levels: number, by: number): T => ({
  ...links,
  from: shifted(links.from, levels, by),
  to: shifted(links.to, levels, by),
})

const shiftedMouths = (mouths: Mouths, levels: number, by: number): Mouths => ({
  ...mouths,
  from: shifted(mouths.from, levels, by),
})

/**
 * The bay's network cut apart at its valves: behind each open one stands an open level of its own, and before it the main
 * gives off what the zone is to take. Main and zones are then solved at once and each by itself. The new levels come
 * after the bay's own, zone by zone; their heads and `joints` are to be filled in.
 */
export const cutAtValves = (plan: Plan, zones: readonly Valved[], whatIf: WhatIf): Network => {
  const { levels } = plan
  const by = zones.length
  const whole = bayNetwork(plan, whatIf)
  const valves = shiftedEnds(whole.valves, levels, by)
  zones.forEach(({ valve }, i) => {
    valves.from[valve] = levels + i
    valves.lossK[valve] = 0
  })
  const heads = new Float64Array(levels + by)
  heads.set(whole.levels)
  return {
    levels: heads,
    joints: whole.joints,
    pipes: shiftedEnds(whole.pipes, levels, by),
    valves,
    pumps: shiftedEnds(whole.pumps, levels, by),
    mouths: shiftedMouths(whole.mouths, levels, by),
  }
}
